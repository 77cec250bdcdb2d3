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

/**
 * The stretches of the line through `from` along the unit vector `along` that lie within rings (holes clockwise), as distances
 * from `from`, in order.
 */
export function stretchesWithin(
  rings: readonly (readonly Point[])[],
  from: Point,
  along: Point,
): (readonly [start: number, end: number])[] {
  const crossings = rings
    .flatMap((ring) =>
      ring.flatMap((corner, index): number[] => {
        const next = ring[(index + 1) % ring.length] ?? corner;
        const [here, there] = [leftDistance(corner, from, along), leftDistance(next, from, along)];
        // A corner on the line counts with those on its right, so that the line passes every corner in or out once.
        if (here > 0 === there > 0) return [];
        const [start, end] = [dot(subtract(corner, from), along), dot(subtract(next, from), along)];
        return [start + ((end - start) * here) / (here - there)];
      }),
    )
    .sort((a, b) => a - b);
  return Array.from({ length: Math.floor(crossings.length / 2) }, (_, pair) => [
    crossings[2 * pair] ?? 0,
    crossings[2 * pair + 1] ?? 0,
  ]);
}
