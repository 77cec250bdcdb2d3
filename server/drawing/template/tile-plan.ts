/** How a drawing at full size is cut into sheets that overlap: as few as may be, those without anything on them left out. */
import type { Point } from '../../geometry/point.ts';
import { areaOf, type Bounds, boundsOf, clipToHalfPlanes } from '../../geometry/polygons.ts';
import { areaTolerance } from '../../geometry/tolerance.ts';

/** What one sheet shows, and how much of it the next sheet shows again. */
export interface SheetRoom {
  readonly width: number;
  readonly height: number;
  readonly overlap: number;
}

/** One sheet: rows count from the top, columns from the left, both from 1. */
export interface Sheet {
  /** In the order of printing, from 1; null where nothing is on it and it is not printed. */
  readonly number: number | null;
  readonly row: number;
  readonly column: number;
  /** What it shows, in the drawing's coordinates. */
  readonly window: Bounds;
}

export interface TilePlan {
  readonly rows: number;
  readonly columns: number;
  readonly sheets: readonly Sheet[];
  /** Sheets that are printed. */
  readonly count: number;
}

/** Where the sheets may lie over the drawing, as a share of the room that they leave: the middle first, for it wins a tie. */
const shares = [0.5, 0, 0.25, 0.75, 1];

/**
 * The plan with the fewest sheets on which all of `ground` (holes clockwise) is seen. Sheets lie in one row beside another;
 * where they leave room over, it is tried at several shares on either side.
 */
export function tilePlan(ground: readonly (readonly Point[])[], room: SheetRoom): TilePlan {
  const bounds = boundsOf(ground.flat());
  const columns = sheetsAlong(bounds.right - bounds.left, room.width, room.overlap);
  const rows = sheetsAlong(bounds.top - bounds.bottom, room.height, room.overlap);
  const [spareX, spareY] = [
    columns * (room.width - room.overlap) + room.overlap - (bounds.right - bounds.left),
    rows * (room.height - room.overlap) + room.overlap - (bounds.top - bounds.bottom),
  ];
  const plans = shares.flatMap((across) =>
    shares.map((up) =>
      planAt(ground, room, { x: bounds.left - spareX * across, y: bounds.top + spareY * up }, columns, rows),
    ),
  );
  return plans.reduce((best, plan) => (plan.count < best.count ? plan : best));
}

/** n sheets cover n·(width − overlap) + overlap. */
const sheetsAlong = (length: number, width: number, overlap: number): number =>
  Math.max(1, Math.ceil((length - overlap) / (width - overlap)));

function planAt(
  ground: readonly (readonly Point[])[],
  room: SheetRoom,
  corner: Point,
  columns: number,
  rows: number,
): TilePlan {
  const across = steps(corner.x, room.width, room.overlap, columns, 1);
  const down = steps(corner.y, room.height, room.overlap, rows, -1);
  const printed = neededSheets(ground, across, down);
  let count = 0;
  const sheets = down.flatMap(([top, bottom], row) =>
    across.map(([left, right], column): Sheet => {
      const isPrinted = printed.has(row * columns + column);
      if (isPrinted) count += 1;
      return {
        number: isPrinted ? count : null,
        row: row + 1,
        column: column + 1,
        window: { left, right, bottom, top },
      };
    }),
  );
  return { rows, columns, sheets, count };
}

type Stretch = readonly [start: number, end: number];

function steps(start: number, size: number, overlap: number, count: number, way: 1 | -1): Stretch[] {
  return Array.from({ length: count }, (_, index) => {
    const first = start + way * index * (size - overlap);
    return [first, first + way * size];
  });
}

/** A stretch between neighbouring edges of sheets, and the one or two sheets that show it. */
interface Zone {
  readonly low: number;
  readonly high: number;
  readonly shownBy: readonly number[];
}

/**
 * Sheets that some ground is seen on alone; then, for ground seen on several, the first of them unless one is printed
 * already. Sheets by number: row · columns + column.
 */
function neededSheets(
  ground: readonly (readonly Point[])[],
  across: readonly Stretch[],
  down: readonly Stretch[],
): Set<number> {
  const [columnZones, rowZones] = [zonesOf(across), zonesOf(down)];
  const choices = rowZones.flatMap((rows) => {
    const band = within(ground, { x: 0, y: 1 }, rows);
    return columnZones
      .filter((columns) => Math.abs(areaOf(within(band, { x: 1, y: 0 }, columns))) > areaTolerance)
      .map((columns) => rows.shownBy.flatMap((row) => columns.shownBy.map((column) => row * across.length + column)));
  });
  const printed = new Set<number>();
  for (const choice of choices.sort((a, b) => a.length - b.length)) {
    if (!choice.some((sheet) => printed.has(sheet))) printed.add(choice[0] ?? 0);
  }
  return printed;
}

function zonesOf(stretches: readonly Stretch[]): Zone[] {
  const edges = [...new Set(stretches.flat())].sort((a, b) => a - b);
  return edges.slice(1).map((high, index) => {
    const low = edges[index] ?? high;
    const middle = (low + high) / 2;
    const shownBy = stretches.flatMap(([start, end], sheet) =>
      Math.min(start, end) < middle && middle < Math.max(start, end) ? [sheet] : [],
    );
    return { low, high, shownBy };
  });
}

/** Rings cut to low ≤ normal·p ≤ high. Parts may stay joined by edges that run there and back, which enclose no area. */
const within = (rings: readonly (readonly Point[])[], normal: Point, { low, high }: Zone): Point[][] =>
  rings
    .map((ring) =>
      clipToHalfPlanes(ring, [
        { normal, reach: high },
        { normal: { x: -normal.x, y: -normal.y }, reach: -low },
      ]),
    )
    .filter((ring) => ring.length > 0);
