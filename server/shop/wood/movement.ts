/** Shrinking and swelling across the grain; along it wood keeps its length for our purposes. */
import { saturationOf, type GrainDirection, type Wood } from './wood.ts';

/** The moistures, in percent, between which Table 13-5's coefficients hold. */
const coefficientRange = { driest: 6, wettest: 14 } as const;

/**
 * Change in mm of a size of `size` mm lying in `direction` when its moisture goes from `before` to `after` percent;
 * negative when it shrinks. Wood Handbook FPL-GTR-190 (2010): eq. 13-2, size × coefficient × difference, with both
 * moistures within 6 to 14 %; else eq. 13-3, from the total shrinkage. Above fibre saturation nothing moves.
 */
export function movementAcross(
  wood: Wood,
  direction: GrainDirection,
  size: number,
  before: number,
  after: number,
): number {
  const inRange = (moisture: number): boolean =>
    moisture >= coefficientRange.driest && moisture <= coefficientRange.wettest;
  if (inRange(before) && inRange(after)) return size * wood.change[direction].value * (after - before);
  return movementByShrinkage(wood.shrinkage[direction].value, saturationOf(wood), size, before, after);
}

/** Eq. 13-3 alone, for a wood of which only the shrinkage from green to ovendry is known, `shrinkage` percent. */
export function movementByShrinkage(
  shrinkage: number,
  saturation: number,
  size: number,
  before: number,
  after: number,
): number {
  const [from, to] = [Math.min(before, saturation), Math.min(after, saturation)];
  return (size * (to - from)) / ((saturation * 100) / shrinkage - saturation + from);
}

/**
 * Shrinkage from green to `moisture` percent, in percent of the green size, of something that shrinks `total` percent
 * to ovendry: linear below fibre saturation, `saturation` percent. Wood Handbook FPL-GTR-282 (2021), eq. 4-9.
 */
export const shrinkageTo = (total: number, moisture: number, saturation: number): number =>
  total * Math.max(0, 1 - moisture / saturation);
