/** Areas by flatten-js, which the engine does not use. */
import Flatten from '@flatten-js/core';
import type { Point } from '../server/geometry/point.ts';

export const polygonOf = (points: readonly Point[]): Flatten.Polygon =>
  new Flatten.Polygon(points.map(({ x, y }) => Flatten.point(x, y)));

/** Area of the union. */
export function unionArea(polygons: readonly (readonly Point[])[]): number {
  const [first, ...rest] = polygons.map(polygonOf);
  if (!first) return 0;
  return Math.abs(rest.reduce((union, each) => Flatten.BooleanOperations.unify(union, each), first).area());
}
