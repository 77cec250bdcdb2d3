/** Rows and columns of cells: a row lies between two neighbouring strips of the first family. */
import { dot, length, type Point } from '../geometry/point.ts';
import { centroidOf } from './cell-classes.ts';
import type { LineFamily, Period } from './grid-lines.ts';
import type { LaidCell, UnnumberedCell } from './laid-panel.ts';

/**
 * The cells with their row, counted up along the first family's normal, and column, counted along its strips.
 * Of two families the second one's strips part the columns; of three, a column is half a step along the row, so
 * that triangles pointing up and down take turns.
 */
export function* numberedCells(
  cells: Iterable<UnnumberedCell>,
  families: readonly LineFamily[],
  period: Period,
): Generator<LaidCell> {
  const [base, other, ...rest] = families;
  if (!base || !other) return;
  let anchor: number | null = null;
  for (const cell of cells) {
    const middle = centroidOf(cell.opening);
    const along = dot(base.along, middle);
    anchor ??= along;
    const column =
      rest.length === 0
        ? slabOf(other, middle) * Math.sign(dot(other.normal, base.along))
        : Math.round((2 * (along - anchor)) / length(period.first));
    yield { ...cell, row: slabOf(base, middle), column };
  }
}

/** Which space between lines of a family a point lies in. */
const slabOf = ({ normal, offset, spacing }: LineFamily, point: Point): number =>
  Math.floor((dot(normal, point) - offset) / spacing);
