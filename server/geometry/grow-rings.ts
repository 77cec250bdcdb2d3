/** Regions grown or shrunk by a distance (parallel curves), by the Clipper2 library. */
import { EndType, inflatePathsD, JoinType } from 'clipper2-ts';
import type { Point } from './point.ts';
import { clippingDecimals } from './polygons.ts';
import { flatteningTolerance } from './tolerance.ts';

/**
 * What happens outside a corner that grows: `round` keeps every point at the distance (the parallel curve), `sharp`
 * draws the sides on until they meet.
 */
export type GrownCorners = 'round' | 'sharp';

/** A sharp corner further than so many times the distance from the old one is cut square. */
const sharpLimit = 10;

/** `rings` (holes clockwise) grown by `by` mm, shrunk where it is negative; empty when nothing is left. */
export function grownRings(rings: readonly (readonly Point[])[], by: number, corners: GrownCorners): Point[][] {
  const join = corners === 'round' ? JoinType.Round : JoinType.Miter;
  const paths = rings.map((ring) => ring.map(({ x, y }) => ({ x, y })));
  const grown = inflatePathsD(paths, by, join, EndType.Polygon, sharpLimit, clippingDecimals, flatteningTolerance);
  return grown.map((path) => path.map(({ x, y }) => ({ x, y })));
}
