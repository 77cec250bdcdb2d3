/** Rows and columns of cells: a row lies between two neighbouring strips of the first family. Numbered as a map is read, from the top left. */
import { maximum, minimum, sum } from '../../geometry/numbers.ts';
import { dot, origin, type Point } from '../../geometry/point.ts';
import type { ClassScan } from './class-scan.ts';
import { areParallel, type LineFamily, spaceAt } from '../grid/grid-lines.ts';
import type { Period } from '../grid/grid-period.ts';
import type { LatticeMember } from '../grid/scan-lattice.ts';

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
 * For each class its numbers; rows and columns count from 1 at the top and left of all cells met. A row lies between
 * lines of the first family and of those parallel to it; along a row, every line of another family begins a new column,
 * so that on a three-way grid triangles pointing up and down take turns.
 */
export function numberCells(
  scans: readonly ClassScan[],
  families: readonly LineFamily[],
  period: Period | null,
): ClassNumbers[] {
  const steps = scans.map(({ middle }) => stepsOf(middle, families, period ?? { first: origin, second: origin }));
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

function stepsOf(middle: Point, families: readonly LineFamily[], { first, second }: Period): Steps {
  const [base] = families;
  const rowLines = families.filter((lines) => base && areParallel(lines, base));
  const columnLines = families.filter((lines) => !rowLines.includes(lines));
  const passed = (lines: readonly LineFamily[], count: (lines: LineFamily, forward: number) => number): number =>
    sum(
      lines.map((each) => {
        const way = base && dot(each.normal, areParallel(each, base) ? base.normal : base.along);
        return count(each, Math.sign(way ?? 1));
      }),
    );
  const along = (move: Point) => (lines: LineFamily, forward: number) => wholeSteps(lines, move) * forward;
  // between lines i and i + 1 counted one way is between −(i + 1) and −i counted the other
  const here = (lines: LineFamily, forward: number): number => {
    const space = slabOf(lines, middle);
    return forward > 0 ? space : -space - 1;
  };
  return {
    row: passed(rowLines, here),
    column: passed(columnLines, here),
    rowEachRow: passed(rowLines, along(second)),
    columnEachRow: passed(columnLines, along(second)),
    columnEachColumn: passed(columnLines, along(first)),
  };
}

/** Lines of a family that a move by a period crosses; single lines make no period. */
const wholeSteps = ({ normal, spacing, places }: LineFamily, move: Point): number =>
  places ? 0 : Math.round(dot(normal, move) / spacing);

/** Which space between lines of a family a point lies in. */
export const slabOf = (lines: LineFamily, point: Point): number => spaceAt(lines, dot(lines.normal, point));
