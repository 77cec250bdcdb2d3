/** Regions added, taken away or cut out of each other, by the Clipper2 library. */
import { differenceD, FillRule, type PathsD, unionD } from 'clipper2-ts';
import type { Point } from './point.ts';
import { clippingDecimals, intersectionOf } from './polygons.ts';

export type Combination = 'plus' | 'minus' | 'common';

type Rings = readonly (readonly Point[])[];

/** Both sets of rings with their holes clockwise, and so is the result; corners are rounded to 0.1 µm. */
export function combinedRings(first: Rings, second: Rings, how: Combination): Point[][] {
  if (how === 'common') return intersectionOf(first, second);
  const combine = how === 'plus' ? unionD : differenceD;
  const paths = combine(toPaths(first), toPaths(second), FillRule.NonZero, clippingDecimals);
  return paths.map((path) => path.map(({ x, y }) => ({ x, y })));
}

const toPaths = (rings: Rings): PathsD => rings.map((ring) => ring.map(({ x, y }) => ({ x, y })));
