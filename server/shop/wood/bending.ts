/** Bending strips cold. Lengths in mm; radii to the middle of the thickness. */
import type { Wood } from './wood.ts';

/**
 * The tightest radius to which a dry strip of `thickness` should bend: R = t·E / (2·MOR), where the outer fibre's strain
 * t / 2R reaches MOR / E. Pure bending of a thin elastic strip with the figures of Wood Handbook Table 5-3a. Run-out,
 * knots and short grain break earlier: a sample bend decides, and the maker's own tested radius goes first.
 */
export const coldBendingLimit = ({ rupture, elasticity }: Wood, thickness: number): number =>
  coldBendingRadius(thickness, rupture.value, elasticity.value);

/** The same from figures that a file may state: rupture in MPa, elasticity in GPa. */
export const coldBendingRadius = (thickness: number, rupture: number, elasticity: number): number =>
  (thickness * elasticity * 1000) / (2 * rupture);

/** Strain of the outer fibre, as a fraction, of a strip of `thickness` bent to `radius`. */
export const outerStrain = (thickness: number, radius: number): number => thickness / (2 * radius);

/**
 * The radius to which `laminae` equal strips open again that were glued on a form of `radius`: 1/R′ = (1 − 1/n²)/R,
 * elastic, without creep. One strip alone straightens: Infinity. The glued bar is n³ times as stiff as one strip and
 * is unbent by the n strips' own moments, which is where the 1/n² comes from.
 */
export const radiusAfterSpringback = (radius: number, laminae: number): number => radius / (1 - 1 / laminae ** 2);

/** The form's radius for `laminae` strips that shall rest at `radius`. One strip alone has none: 0. */
export const formRadius = (radius: number, laminae: number): number => radius * (1 - 1 / laminae ** 2);
