/**
 * Which members of a lattice of equal places lie wholly inside a region, and which meet its boundary.
 * The work grows with the boundary: inside, whole rows are kept as runs.
 */
import { add, cross, distance, length, type Point, scale } from '../../geometry/point.ts';
import { distanceToSegment, type Region, regionHolds } from '../../geometry/region.ts';
import { placeTolerance } from '../../geometry/tolerance.ts';
import type { Period } from './grid-period.ts';

/** Members first, first + step, … last of a row along the period's first translation; `last` is one of them. */
export interface LatticeRun {
  readonly row: number;
  readonly first: number;
  readonly last: number;
  readonly step: number;
}

export interface LatticeMember {
  readonly row: number;
  readonly column: number;
}

export interface LatticeScan {
  readonly inside: readonly LatticeRun[];
  readonly boundary: readonly LatticeMember[];
}

/** A member's place: `start` moved by column × first + row × second translation; without a period there is but one member. */
export const memberPlace = (start: Point, period: Period | null, { row, column }: LatticeMember): Point =>
  period
    ? {
        x: start.x + column * period.first.x + row * period.second.x,
        y: start.y + column * period.first.y + row * period.second.y,
      }
    : start;

/** Members a body of `radius` about whose place is inside, or may meet the boundary. */
export function scanLattice(region: Region, start: Point, period: Period | null, radius: number): LatticeScan {
  if (!period) return scanSingle(region, start, radius);
  const reach = Math.max(radius, length(period.first) / 2) + placeTolerance;
  const rows = boundaryRows(region, start, period, reach);
  const inside: LatticeRun[] = [];
  const boundary: LatticeMember[] = [];
  for (const [row, columns] of [...rows].sort(([a], [b]) => a - b)) {
    const sorted = [...columns].sort((a, b) => a - b);
    sorted.forEach((column, index) => {
      boundary.push({ row, column });
      const next = sorted[index + 1];
      if (next === undefined || next === column + 1) return;
      if (regionHolds(region, memberPlace(start, period, { row, column: column + 1 })))
        inside.push({ row, first: column + 1, last: next - 1, step: 1 });
    });
  }
  return { inside, boundary };
}

function scanSingle(region: Region, place: Point, radius: number): LatticeScan {
  const only = { row: 0, column: 0 };
  const meetsBoundary = region.edges.some(
    ({ from, to }) => distanceToSegment(place, from, to) <= radius + placeTolerance,
  );
  if (meetsBoundary) return { inside: [], boundary: [only] };
  return { inside: regionHolds(region, place) ? [{ row: 0, first: 0, last: 0, step: 1 }] : [], boundary: [] };
}

/** Row → columns of the members within `reach` of any boundary edge. */
function boundaryRows(region: Region, start: Point, period: Period, reach: number): Map<number, Set<number>> {
  const rows = new Map<number, Set<number>>();
  const determinant = cross(period.first, period.second);
  const columnsPerMm = length(period.second) / Math.abs(determinant);
  const rowsPerMm = length(period.first) / Math.abs(determinant);
  for (const { from, to } of region.edges) {
    const parts = Math.max(1, Math.ceil(distance(from, to) / reach));
    const span = distance(from, to) / parts / 2 + reach;
    for (let part = 0; part < parts; part++) markAround(pointAlong(from, to, (part + 0.5) / parts), span);
  }
  return rows;

  function markAround(middle: Point, span: number): void {
    const offset = { x: middle.x - start.x, y: middle.y - start.y };
    const column = cross(offset, period.second) / determinant;
    const row = cross(period.first, offset) / determinant;
    const lastRow = Math.floor(row + span * rowsPerMm);
    for (let r = Math.ceil(row - span * rowsPerMm); r <= lastRow; r++) {
      const columns = rows.get(r) ?? new Set<number>();
      rows.set(r, columns);
      const lastColumn = Math.floor(column + span * columnsPerMm);
      for (let c = Math.ceil(column - span * columnsPerMm); c <= lastColumn; c++) {
        const away = Math.hypot(
          (c - column) * period.first.x + (r - row) * period.second.x,
          (c - column) * period.first.y + (r - row) * period.second.y,
        );
        if (away <= span) columns.add(c);
      }
    }
  }
}

const pointAlong = (from: Point, to: Point, fraction: number): Point =>
  add(from, scale({ x: to.x - from.x, y: to.y - from.y }, fraction));

export const countMembers = (runs: readonly LatticeRun[]): number =>
  runs.reduce((sum, { first, last, step }) => sum + (last - first) / step + 1, 0);

/** Every member of the runs, row by row. */
export function* membersOf(runs: readonly LatticeRun[]): Generator<LatticeMember> {
  for (const { row, first, last, step } of runs) {
    for (let column = first; column <= last; column += step) yield { row, column };
  }
}
