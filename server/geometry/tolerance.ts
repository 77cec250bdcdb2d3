/** Every tolerance and rounding of Halflap, in one place. Lengths in mm, areas in mm², angles in degrees. */

/** Two places this near are one place: containment, closing of contours, coincident crossings. */
export const placeTolerance = 0.001;
export const placeDecimals = 3;

/** Curves are flattened so that no point of the chord is further than this from the curve. */
export const flatteningTolerance = 0.0005;

/** Lengths of curves are integrated until another halving changes them by no more than this, mm. */
export const quadratureTolerance = 1e-9;

/** Drawings leave out corners that lie no further than this from the line between their neighbours: thinner than any pen. */
export const drawingTolerance = 0.05;

/**
 * Curved outlines are nested as polygons that hold them and stand out no further than twice the first of these that
 * leaves few corners enough, or than twice the last.
 */
export const nestingTolerances = [0.1, 0.2, 0.4] as const;

/** How far a nested outline may reach into the margin of a sheet, so that what fits exactly finds its place. */
export const marginTolerance = 0.05;

/** An area this small is no wood: the limit between whole, trimmed and outside. */
export const areaTolerance = 0.01;

/** Two pieces or strips whose measures differ by less are one kind. */
export const kindLengthTolerance = 0.01;
export const kindAngleTolerance = 0.05;

/**
 * How much wider than needed a region is cut out before the clipping library cuts it exactly. Our own cut
 * leaves parts joined by edges that run along it and back; this far out they are cut off with the rest.
 */
export const clippingMargin = 1;

/** What is left over of a size, or two widths of a frame's members, that no one sees or planes away, mm. */
export const fitTolerance = 0.1;

/** Angles nearer than this are the same direction. */
export const directionTolerance = 0.000_001;

/** Numbers that should agree but for rounding in the arithmetic itself. */
export const arithmeticTolerance = 1e-9;

export const isZeroLength = (value: number): boolean => Math.abs(value) <= placeTolerance;
export const sameLength = (a: number, b: number): boolean => Math.abs(a - b) <= kindLengthTolerance;
export const sameAngle = (a: number, b: number): boolean => Math.abs(a - b) <= kindAngleTolerance;

/**
 * Two figures of written plans say the same when rounding alone may part them: the plan's lengths and angles have four
 * decimals, and sums of many carry a millionth part. Whole numbers are counts and must be equal.
 */
const planRoundingTolerance = 0.0002;
const planShareTolerance = 1e-6;
export function samePlanFigure(a: number, b: number): boolean {
  if (Number.isInteger(a) && Number.isInteger(b)) return a === b;
  const greater = Math.max(Math.abs(a), Math.abs(b));
  return Math.abs(a - b) <= Math.max(planRoundingTolerance, planShareTolerance * greater);
}

/** The same of areas, which the plan writes with two decimals. */
export const samePlanArea = (a: number, b: number): boolean =>
  Math.abs(a - b) <= Math.max(2 * areaTolerance, planShareTolerance * Math.max(a, b));

/** Grid steps from one number to another count as whole when this near to a whole number. */
export const stepTolerance = 1e-6;

/** The whole numbers n with low ≤ n ≤ high, ends that miss by rounding alone included. */
export function wholeNumbersBetween(low: number, high: number): { readonly first: number; readonly last: number } {
  return { first: Math.ceil(low - stepTolerance), last: Math.floor(high + stepTolerance) };
}

/** `value` rounded to `decimals`, never −0. */
export function rounded(value: number, decimals: number): number {
  const factor = 10 ** decimals;
  return Math.round(value * factor) / factor + 0;
}

const headingDecimals = 9;

/** How a line of direction `angle` runs: in [0°, 180°), rounding noise taken off, so that almost 180° is 0°. */
export function headingOf(angle: number): number {
  const heading = rounded(((angle % 180) + 180) % 180, headingDecimals);
  return heading === 180 ? 0 : heading;
}
