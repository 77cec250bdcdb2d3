/** Where a chain of segments bends most, each way, and how far it turns. Curvatures in 1/mm, positive to the left. */
import { curvatureAt, motionAt } from './path-motion.ts';
import type { PathSegment } from './path.ts';
import { pointOn } from './path-parts.ts';
import { cross, degrees, dot, length, type Point } from './point.ts';
import { placeTolerance } from './tolerance.ts';

export interface Bend {
  readonly at: Point;
  readonly curvature: number;
}

/** The sharpest bend to the left and to the right; null where it never bends that way. */
export interface SharpestBends {
  readonly left: Bend | null;
  readonly right: Bend | null;
}

/** Places a segment is looked at; between the best and its neighbours the sharpest is narrowed down. */
const looks = 64;

export function sharpestBends(segments: readonly PathSegment[]): SharpestBends {
  const sharpest = (side: 1 | -1): Bend | null => {
    const bends = segments.flatMap((segment) => sharpestOf(segment, side) ?? []);
    return bends.reduce<Bend | null>(
      (best, bend) => (best && side * best.curvature >= side * bend.curvature ? best : bend),
      null,
    );
  };
  return { left: sharpest(1), right: sharpest(-1) };
}

function sharpestOf(segment: PathSegment, side: 1 | -1): Bend | null {
  if (segment.kind === 'line') return null;
  const bendAt = (fraction: number): number => side * (curvatureAt(segment, fraction) ?? 0);
  let best = 0;
  for (let look = 1; look <= looks; look += 1) if (bendAt(look / looks) > bendAt(best)) best = look / looks;
  const fraction = highestBetween(bendAt, Math.max(0, best - 1 / looks), Math.min(1, best + 1 / looks));
  const curvature = bendAt(fraction);
  return curvature > 0 ? { at: pointOn(segment, fraction), curvature: side * curvature } : null;
}

/** Thirds are thrown away until the place no longer matters. */
const mostCuts = 60;

function highestBetween(value: (place: number) => number, low: number, high: number): number {
  for (let cut = 0; cut < mostCuts; cut += 1) {
    const [first, second] = [low + (high - low) / 3, high - (high - low) / 3];
    if (value(first) < value(second)) low = first;
    else high = second;
  }
  const inside = (low + high) / 2;
  return [low, high].reduce((best, place) => (value(place) > value(best) ? place : best), inside);
}

/** Degrees by which a segment turns from its start to its end, left positive, whole turns counted. */
export function turningOf(segment: PathSegment): number {
  if (segment.kind === 'line') return 0;
  if (segment.kind === 'arc' && segment.radiusX === segment.radiusY) return segment.sweep;
  const ways = Array.from({ length: looks + 1 }, (_, look) => motionAt(segment, look / looks).velocity).filter(
    (velocity) => length(velocity) > placeTolerance,
  );
  return ways.reduce((total, way, index) => {
    const before = ways[index - 1] ?? way;
    return total + turnBetween(before, way);
  }, 0);
}

/** Degrees from one direction to another, in (−180, 180]. */
export const turnBetween = (before: Point, after: Point): number =>
  degrees(Math.atan2(cross(before, after), dot(before, after)));
