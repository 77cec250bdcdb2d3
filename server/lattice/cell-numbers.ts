/** Rows and columns of cells: a row lies between two neighbouring strips of the first family. Numbered as a map is read, from the top left. */
import { maximum, minimum } from '../geometry/numbers.ts';
import { dot, length, type Point } from '../geometry/point.ts';
import type { ClassScan } from './class-scan.ts';
import type { LineFamily, Period } from './grid-lines.ts';
import type { LatticeMember } from './scan-lattice.ts';

/** Numbers of the cells of one class. */
export interface ClassNumbers {
  /** Row of every cell of a lattice row. */
  readonly rowOf: (latticeRow: number) => number;
  readonly columnOf: (member: LatticeMember) => number;
  /** Columns from one member of a lattice row to the next. */
  readonly columnStep: number;
}

/** How rows and columns go on with the steps of the lattice, before they are numbered. */
interface Steps {
  readonly row: number;
  readonly column: number;
  readonly rowEachRow: number;
  readonly columnEachRow: number;
  readonly columnEachColumn: number;
}

/**
 * For each class its numbers; rows and columns count from 1 at the top and left of all cells met. Of two families the
 * second one's strips part the columns; of three, a column is half a step along the row, so that triangles pointing
 * up and down take turns.
 */
export function numberCells(
  scans: readonly ClassScan[],
  families: readonly LineFamily[],
  period: Period,
): ClassNumbers[] {
  const [base, other, ...rest] = families;
  if (!base || !other) return [];
  const anchor = scans[0] ? dot(base.along, scans[0].middle) : 0;
  const steps = scans.map(({ middle }) =>
    rest.length === 0 ? stepsOfTwo(middle, base, other, period) : stepsOfMore(middle, base, anchor, period),
  );
  const rows = scans.flatMap((scan, index) => rowsMet(scan).map((row) => rowAt(steps[index], row)));
  const columns = scans.flatMap((scan, index) => endsMet(scan).map((member) => columnAt(steps[index], member)));
  const [top, left] = [maximum(rows), minimum(columns)];
  return steps.map((own) => ({
    rowOf: (latticeRow) => top - rowAt(own, latticeRow) + 1,
    columnOf: (member) => columnAt(own, member) - left + 1,
    columnStep: own.columnEachColumn,
  }));
}

const rowAt = (steps: Steps | undefined, latticeRow: number): number =>
  steps ? steps.row + steps.rowEachRow * latticeRow : 0;

const columnAt = (steps: Steps | undefined, { row, column }: LatticeMember): number =>
  steps ? Math.round(steps.column + steps.columnEachRow * row + steps.columnEachColumn * column) : 0;

const rowsMet = ({ inside, boundary }: ClassScan): number[] => [
  ...inside.map(({ row }) => row),
  ...boundary.map(({ member }) => member.row),
];

const endsMet = ({ inside, boundary }: ClassScan): LatticeMember[] => [
  ...inside.flatMap(({ row, first, last }) => [
    { row, column: first },
    { row, column: last },
  ]),
  ...boundary.map(({ member }) => member),
];

function stepsOfTwo(middle: Point, base: LineFamily, other: LineFamily, { first, second }: Period): Steps {
  const forward = Math.sign(dot(other.normal, base.along));
  return {
    row: slabOf(base, middle),
    column: slabOf(other, middle) * forward,
    rowEachRow: wholeSteps(base, second),
    columnEachRow: wholeSteps(other, second) * forward,
    columnEachColumn: wholeSteps(other, first) * forward,
  };
}

function stepsOfMore(middle: Point, base: LineFamily, anchor: number, { first, second }: Period): Steps {
  const half = length(first) / 2;
  return {
    row: slabOf(base, middle),
    column: (dot(base.along, middle) - anchor) / half,
    rowEachRow: wholeSteps(base, second),
    columnEachRow: dot(base.along, second) / half,
    columnEachColumn: Math.round(dot(base.along, first) / half),
  };
}

/** Lines of a family that a move crosses. */
const wholeSteps = ({ normal, spacing }: LineFamily, move: Point): number => Math.round(dot(normal, move) / spacing);

/** Which space between lines of a family a point lies in. */
export const slabOf = ({ normal, offset, spacing }: LineFamily, point: Point): number =>
  Math.floor((dot(normal, point) - offset) / spacing);
