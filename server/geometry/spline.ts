/**
 * Smooth lines through points: interpolating cubic splines with continuous curvature, as a thin batten held at the points
 * would lie. The parameter of a point grows with the square root of the distance from the one before (centripetal:
 * E. T. Y. Lee, "Choosing nodes in parametric curve interpolation", 1989), which keeps unevenly spaced points free
 * of loops. Open lines end without curvature (natural ends).
 */
import type { CubicSegment } from './path.ts';
import { distance, type Point } from './point.ts';

/** A spline through `points` in order; neighbours must lie apart. */
export function openSpline(points: readonly Point[]): CubicSegment[] {
  const steps = stepsBetween(points);
  const bend = (values: readonly number[]): number[] => naturalBends(steps, values);
  return segmentsOf(points, steps, bend(points.map(({ x }) => x)), bend(points.map(({ y }) => y)));
}

/** A closed spline through three points or more; neighbours, the last and first too, must lie apart. */
export function closedSpline(points: readonly Point[]): CubicSegment[] {
  const [first] = points;
  if (!first) return [];
  const round = [...points, first];
  const steps = stepsBetween(round);
  const bend = (values: readonly number[]): number[] => closedBends(steps, values);
  return segmentsOf(round, steps, bend(points.map(({ x }) => x)), bend(points.map(({ y }) => y)));
}

const stepsBetween = (points: readonly Point[]): number[] =>
  points.slice(1).map((point, index) => Math.sqrt(distance(point, points[index] ?? point)));

/** Hermite to Bézier form: a control point lies a third of the step along the slope. */
function segmentsOf(
  points: readonly Point[],
  steps: readonly number[],
  bendX: readonly number[],
  bendY: readonly number[],
): CubicSegment[] {
  return steps.flatMap((step, index): CubicSegment[] => {
    const [from, to] = [points[index], points[index + 1]];
    if (!from || !to) return [];
    const next = (index + 1) % bendX.length;
    const slope = (start: number, end: number, low: number, high: number): readonly [number, number] => [
      (end - start) / step - (step * (2 * low + high)) / 6,
      (end - start) / step + (step * (low + 2 * high)) / 6,
    ];
    const inX = slope(from.x, to.x, bendX[index] ?? 0, bendX[next] ?? 0);
    const inY = slope(from.y, to.y, bendY[index] ?? 0, bendY[next] ?? 0);
    const third = step / 3;
    return [
      {
        kind: 'cubic',
        from,
        control1: { x: from.x + third * inX[0], y: from.y + third * inY[0] },
        control2: { x: to.x - third * inX[1], y: to.y - third * inY[1] },
        to,
      },
    ];
  });
}

/**
 * Second derivatives at the knots of the natural spline through `values`, `steps` apart:
 * h₍ᵢ₋₁₎M₍ᵢ₋₁₎ + 2(h₍ᵢ₋₁₎ + hᵢ)Mᵢ + hᵢM₍ᵢ₊₁₎ = 6(dᵢ − d₍ᵢ₋₁₎), d the slopes of the chords, M = 0 at both ends
 * (de Boor, A Practical Guide to Splines, chapter IV).
 */
export function naturalBends(steps: readonly number[], values: readonly number[]): number[] {
  const inner = values.slice(1, -1).map((_, index) => rowAt(steps, values, index, index + 1, index + 2));
  return [0, ...solveBand(inner), 0];
}

/** Second derivatives at the knots of the closed spline; `steps` has one entry a value, the last leading back. */
export function closedBends(steps: readonly number[], values: readonly number[]): number[] {
  const count = values.length;
  const rows = values.map((_, index) => rowAt(steps, values, (index + count - 1) % count, index, (index + 1) % count));
  return solveRound(rows);
}

/** below·M₍ᵢ₋₁₎ + here·Mᵢ + above·M₍ᵢ₊₁₎ = right. */
interface BandRow {
  readonly below: number;
  readonly here: number;
  readonly above: number;
  readonly right: number;
}

function rowAt(
  steps: readonly number[],
  values: readonly number[],
  before: number,
  at: number,
  after: number,
): BandRow {
  const [low, high] = [steps[before] ?? 1, steps[at] ?? 1];
  const [left, middle, right] = [values[before] ?? 0, values[at] ?? 0, values[after] ?? 0];
  return {
    below: low,
    here: 2 * (low + high),
    above: high,
    right: 6 * ((right - middle) / high - (middle - left) / low),
  };
}

/** Gauss's elimination along the band (Thomas); the rows are dominated by their middle, so no pivots are needed. */
function solveBand(rows: readonly BandRow[]): number[] {
  const reduced: { here: number; above: number; right: number }[] = [];
  for (const row of rows) {
    const before = reduced.at(-1);
    const share = before ? row.below / before.here : 0;
    reduced.push({
      here: row.here - share * (before?.above ?? 0),
      above: row.above,
      right: row.right - share * (before?.right ?? 0),
    });
  }
  const solved: number[] = [];
  for (const { here, above, right } of reduced.reverse()) solved.unshift((right - above * (solved[0] ?? 0)) / here);
  return solved;
}

/** A band whose first and last rows reach round to each other, by the Sherman–Morrison formula. */
function solveRound(rows: readonly BandRow[]): number[] {
  const [first, last] = [rows[0], rows.at(-1)];
  if (!first || !last) return [];
  const shift = -first.here;
  const band = rows.map((row) => {
    if (row === first) return { ...row, here: row.here - shift };
    return row === last ? { ...row, here: row.here - (last.above * first.below) / shift } : row;
  });
  const plain = solveBand(band);
  const corner = solveBand(
    band.map((row, index) => ({ ...row, right: index === 0 ? shift : index === band.length - 1 ? last.above : 0 })),
  );
  const reach = (values: readonly number[]): number => (values[0] ?? 0) + ((values.at(-1) ?? 0) * first.below) / shift;
  const factor = reach(plain) / (1 + reach(corner));
  return plain.map((value, index) => value - factor * (corner[index] ?? 0));
}
