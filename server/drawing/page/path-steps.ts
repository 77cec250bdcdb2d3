/** Steps of paths: chains of corners, arcs as cubic curves. Paper millimetres, y down; angles counter-clockwise as seen on the page. */
import { type Point, radians } from '../../geometry/point.ts';
import type { PathStep } from './page-model.ts';

export const chain = (points: readonly Point[]): PathStep[] =>
  points.map(({ x, y }, index) => [index === 0 ? 'M' : 'L', x, y]);

export const ring = (points: readonly Point[]): PathStep[] => [...chain(points), ['Z']];

/** A closed ring of x, y pairs with y up, its origin moved to `at` on the page. */
export function ringSteps(coordinates: readonly number[], at: Point): PathStep[] {
  const points: Point[] = [];
  for (let index = 0; index + 1 < coordinates.length; index += 2) {
    points.push({ x: at.x + (coordinates[index] ?? 0), y: at.y - (coordinates[index + 1] ?? 0) });
  }
  return ring(points);
}

/** The largest part of a circle that one cubic follows closely: within 0.03 % of the radius. */
const quarter = 90;

/**
 * An arc about `centre` from the heading `start` over `sweep` degrees. A cubic whose handles are 4/3·tan(part/4)
 * radii long has the arc's ends, tangents and middle (common practice).
 */
export function arc(centre: Point, radius: number, start: number, sweep: number): PathStep[] {
  const parts = Math.max(1, Math.ceil(Math.abs(sweep) / quarter));
  const part = sweep / parts;
  const handle = (4 / 3) * Math.tan(radians(part) / 4) * radius;
  const at = (angle: number): Point => ({
    x: centre.x + radius * Math.cos(radians(angle)),
    y: centre.y - radius * Math.sin(radians(angle)),
  });
  const along = (angle: number): Point => ({ x: -Math.sin(radians(angle)), y: -Math.cos(radians(angle)) });
  const from = at(start);
  const curves = Array.from({ length: parts }, (_, index): PathStep => {
    const [a, b] = [start + index * part, start + (index + 1) * part];
    const [p, q, u, v] = [at(a), at(b), along(a), along(b)];
    return ['C', p.x + u.x * handle, p.y + u.y * handle, q.x - v.x * handle, q.y - v.y * handle, q.x, q.y];
  });
  return [['M', from.x, from.y], ...curves];
}

export const circle = (centre: Point, radius: number): PathStep[] => [...arc(centre, radius, 0, 360), ['Z']];
