/** Straight lines and where they meet. */
import { cross, dot, type Point, subtract } from './point.ts';
import { arithmeticTolerance, placeTolerance } from './tolerance.ts';

/** How far `point` lies to the left of the line through `from` along the unit vector `along`. */
export const leftDistance = (point: Point, from: Point, along: Point): number => cross(along, subtract(point, from));

/** Whether `point` lies strictly between the ends of a segment, on it within the place tolerance. */
export function liesWithin(point: Point, from: Point, to: Point): boolean {
  const span = subtract(to, from);
  const reach = Math.hypot(span.x, span.y);
  if (reach <= placeTolerance) return false;
  const along = { x: span.x / reach, y: span.y / reach };
  const position = dot(subtract(point, from), along);
  return (
    Math.abs(leftDistance(point, from, along)) <= placeTolerance &&
    position > placeTolerance &&
    position < reach - placeTolerance
  );
}

/** Where two segments cross away from all their ends, or null. */
export function crossingWithin(a: Point, b: Point, c: Point, d: Point): Point | null {
  const first = subtract(b, a);
  const second = subtract(d, c);
  const across = cross(first, second);
  if (Math.abs(across) <= arithmeticTolerance) return null;
  const fraction = cross(subtract(c, a), second) / across;
  const point = { x: a.x + first.x * fraction, y: a.y + first.y * fraction };
  return liesWithin(point, a, b) && liesWithin(point, c, d) ? point : null;
}
