/** A corner with a curve on at least one side, rounded: the arc's centre is found where both sides are a radius away. */
import { endDirection, partOf, pointOn, startDirection } from '../../geometry/path-parts.ts';
import type { PathSegment } from '../../geometry/path.ts';
import { add, distance, type Point, quarterTurn, scale } from '../../geometry/point.ts';
import { placeTolerance } from '../../geometry/tolerance.ts';

/** The centre of the arc, and the fractions at which it leaves the side before and comes to the side after. */
export interface FittingArc {
  readonly centre: Point;
  readonly end: number;
  readonly start: number;
}

/** Places along a side that are tried before the one between two of them is closed in on. */
const steps = 64;
/** Halvings, or thirds, that leave less of a side than a number can tell. */
const closings = 60;

/**
 * The arc of `radius` on the given side (1 left, −1 right) nearest to the corner; null where the sides are too short or
 * too curved for it. Going back along the first side, the point a radius beside it comes away from the second: where it
 * is a radius from that too, it is the centre (the offsets of both sides cross there).
 */
export function fittingArc(before: PathSegment, after: PathSegment, side: number, radius: number): FittingArc | null {
  const centreAt = (fraction: number): Point | null => {
    const along = directionAt(before, fraction);
    return along && add(pointOn(before, fraction), scale(quarterTurn(along), side * radius));
  };
  const lacks = (fraction: number): number => {
    const centre = centreAt(fraction);
    return centre ? radius - distance(centre, pointOn(after, nearestOn(after, centre))) : 0;
  };
  let near = 1;
  let far = 1 - 1 / steps;
  while (far >= 0 && lacks(far) > 0) [near, far] = [far, far - 1 / steps];
  if (far < 0) return null;
  for (let closing = 0; closing < closings; closing++) {
    const middle = (near + far) / 2;
    if (lacks(middle) > 0) near = middle;
    else far = middle;
  }
  const centre = centreAt(far);
  if (!centre) return null;
  const start = nearestOn(after, centre);
  const isClear = distance(centre, pointOn(before, nearestOn(before, centre))) >= radius - placeTolerance;
  return isClear && start < 1 && Math.abs(lacks(far)) <= placeTolerance ? { centre, end: far, start } : null;
}

/** Along the segment at a fraction of it. */
const directionAt = (segment: PathSegment, fraction: number): Point | null =>
  fraction >= 1 ? endDirection(segment) : startDirection(partOf(segment, fraction, 1));

/** The fraction of a segment at which it is nearest to a point. */
function nearestOn(segment: PathSegment, point: Point): number {
  const apart = (fraction: number): number => distance(pointOn(segment, fraction), point);
  const fractions = Array.from({ length: steps + 1 }, (_, index) => index / steps);
  const best = fractions.reduce((nearest, each) => (apart(each) < apart(nearest) ? each : nearest));
  let [low, high] = [Math.max(0, best - 1 / steps), Math.min(1, best + 1 / steps)];
  for (let closing = 0; closing < closings; closing++) {
    const third = (high - low) / 3;
    if (apart(low + third) < apart(high - third)) high -= third;
    else low += third;
  }
  return (low + high) / 2;
}
