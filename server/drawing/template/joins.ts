/**
 * How neighbouring sheets are glued: the later one is cut along its edge and laid on the hatched strip of the one before, its edge
 * on that sheet's line, so that the halves of every cross meet. Items in the drawing's coordinates with y turned down.
 */
import type { Bounds } from '../../geometry/polygons.ts';
import type { PageItem, PathItem } from '../page/page-model.ts';
import { chain } from '../page/path-steps.ts';
import { openLine, textAt } from '../sheet/sheet-lines.ts';
import type { Sheet, TilePlan } from './tile-plan.ts';

/** Two sheets with a common edge, `before` to the left of `after` or above it. */
interface Join {
  readonly name: string;
  readonly way: 'across' | 'down';
  readonly before: Sheet;
  readonly after: Sheet;
}

/** Joins between printed sheets, named A, B, … in the order of the sheets. */
export function joinsOf({ sheets }: TilePlan): Join[] {
  const printed = sheets.filter(({ number }) => number !== null);
  const next = (sheet: Sheet, rows: number, columns: number): Sheet | undefined =>
    printed.find(({ row, column }) => row === sheet.row + rows && column === sheet.column + columns);
  return printed
    .flatMap((before) =>
      (['across', 'down'] as const).flatMap((way) => {
        const after = way === 'across' ? next(before, 0, 1) : next(before, 1, 0);
        return after ? [{ way, before, after }] : [];
      }),
    )
    .map((join, index) => ({ ...join, name: joinName(index) }));
}

const letters = 'ABCDEFGHIJKLMNOPQRSTUVWXYZ';

/** A … Z, then AA, AB, … */
function joinName(index: number): string {
  const last = letters.charAt(index % letters.length);
  return index < letters.length ? last : `${joinName(Math.floor(index / letters.length) - 1)}${last}`;
}

/** Under the drawing: the hatched strips that neighbours are glued on. */
export const glueStrips = (joins: readonly Join[], sheet: Sheet): PageItem[] =>
  joins.filter(({ before }) => before === sheet).flatMap(glueStrip);

/** Over the drawing: edges to cut along, lines to lay an edge on, crosses whose halves meet. */
export const joinMarks = (joins: readonly Join[], sheet: Sheet): PageItem[] =>
  joins.filter(({ before, after }) => before === sheet || after === sheet).flatMap((join) => edgeMarks(join, sheet));

const hatchSpacing = 5;
const wordSize = 2.6;

/** What of `before` lies under `after`. */
function overlapOf({ before, after }: Join): Bounds {
  return {
    left: Math.max(before.window.left, after.window.left),
    right: Math.min(before.window.right, after.window.right),
    bottom: Math.max(before.window.bottom, after.window.bottom),
    top: Math.min(before.window.top, after.window.top),
  };
}

function glueStrip(join: Join): PageItem[] {
  const { left, right, bottom, top } = overlapOf(join);
  const isUpright = join.way === 'across';
  const [length, breadth] = isUpright ? [top - bottom, right - left] : [right - left, top - bottom];
  const count = Math.floor((length - breadth) / hatchSpacing) + 1;
  const hatch = Array.from({ length: count }, (_, index): PathItem => {
    const along = index * hatchSpacing;
    return openLine(
      'guide',
      isUpright
        ? [
            { x: left, y: -top + along + breadth },
            { x: right, y: -top + along },
          ]
        : [
            { x: left + along, y: -bottom },
            { x: left + along + breadth, y: -top },
          ],
    );
  });
  const words = `glue: sheet ${join.after.number ?? ''} lies on this strip`;
  const [x, y] = [(left + right) / 2, -(bottom + top) / 2];
  return [
    ...hatch,
    textAt(words, isUpright ? { x: x + wordSize * 0.35, y } : { x, y: y + wordSize * 0.35 }, {
      size: wordSize,
      anchor: 'middle',
      look: 'strong halo',
      turn: isUpright ? 90 : 0,
    }),
  ];
}

/** Crosses stand at these shares of the common edge. */
const crossShares = [1 / 6, 5 / 6];
const crossReach = 4;
const crossRadius = 2.2;

function edgeMarks(join: Join, sheet: Sheet): PageItem[] {
  const { left, right, bottom, top } = overlapOf(join);
  const isUpright = join.way === 'across';
  const isAfter = join.after === sheet;
  // The edge of the sheet that is laid over.
  const edge = isUpright ? left : -top;
  const [low, high] = isUpright ? [-top, -bottom] : [left, right];
  const place = (along: number, across = 0): { x: number; y: number } =>
    isUpright ? { x: edge + across, y: along } : { x: along, y: edge + across };
  const words = isAfter
    ? `cut along this line, then lay it on sheet ${join.before.number ?? ''}`
    : `edge of sheet ${join.after.number ?? ''} here`;
  const crosses = crossShares.flatMap((share, index) =>
    cross(place(low + (high - low) * share), `${join.name}${index + 1}`, isUpright, isAfter),
  );
  return [
    openLine(isAfter ? 'edge' : 'thin', [place(low), place(high)]),
    textAt(words, place(low + (high - low) * 0.33, isUpright ? -1.1 : -1.2), {
      size: wordSize,
      anchor: 'middle',
      look: 'halo',
      turn: isUpright ? 90 : 0,
    }),
    ...crosses,
  ];
}

/** A diamond and a cross on the edge, named on the side that is kept. */
function cross(
  { x, y }: { readonly x: number; readonly y: number },
  name: string,
  isUpright: boolean,
  isAfter: boolean,
): PageItem[] {
  const away = isAfter ? 1 : -1;
  const at = isUpright
    ? { x: x + away * (crossReach + 1), y: y + 1.2 }
    : { x, y: y + away * (crossReach + 1) + (isAfter ? 2.4 : 0) };
  return [
    openLine('edge', [
      { x: x - crossReach, y },
      { x: x + crossReach, y },
    ]),
    openLine('edge', [
      { x, y: y - crossReach },
      { x, y: y + crossReach },
    ]),
    {
      kind: 'path',
      look: 'edge',
      steps: [
        ...chain([
          { x: x - crossRadius, y },
          { x, y: y - crossRadius },
          { x: x + crossRadius, y },
          { x, y: y + crossRadius },
        ]),
        ['Z'],
      ],
      facts: { join: name },
    },
    textAt(name, at, {
      size: 3.4,
      anchor: isUpright ? (isAfter ? 'start' : 'end') : 'middle',
      look: 'strong halo',
    }),
  ];
}
