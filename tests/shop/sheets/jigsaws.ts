/** Rectangles cut to pieces: the pieces go back into the rectangle, so the best layout is known by construction. */
import { type Point } from '../../../server/geometry/point.ts';
import { clipToHalfPlane, leftOf, type HalfPlane } from '../../../server/geometry/polygons.ts';
import { unit, subtract } from '../../../server/geometry/point.ts';
import type { NestKind } from '../../../server/shop/sheets/nest-kind.ts';

/** A cut along the line through two points. */
export type Cut = readonly [Point, Point];

/** Every cut goes through all the pieces that it meets. */
export function cutUp(width: number, height: number, cuts: readonly Cut[], turns: readonly number[]): NestKind[] {
  const whole = [
    { x: 0, y: 0 },
    { x: width, y: 0 },
    { x: width, y: height },
    { x: 0, y: height },
  ];
  const rings = cuts.reduce<Point[][]>(
    (pieces, [from, to]) => {
      const side = leftOf(from, unit(subtract(to, from)));
      const other: HalfPlane = { normal: { x: -side.normal.x, y: -side.normal.y }, reach: -side.reach };
      return pieces.flatMap((ring) => [clipToHalfPlane(ring, side), clipToHalfPlane(ring, other)]);
    },
    [whole],
  );
  return rings
    .map((ring) => ring.map(({ x, y }) => ({ x: Math.round(x), y: Math.round(y) })))
    .filter((ring) => ring.length > 2)
    .map((ring, index) => ({ name: `P${index + 1}`, ring, count: 1, turns }));
}
