/** Polygons: areas, half-planes, containment; clipping of general polygons by the Clipper2 library. */
import { type PathsD, FillRule, intersectD } from 'clipper2-ts';
import { cross, dot, origin, type Point, quarterTurn, subtract } from './point.ts';
import { arithmeticTolerance, placeTolerance } from './tolerance.ts';

/** The side {p : normal·p ≤ reach} of a line; `normal` is a unit vector pointing out of it. */
export interface HalfPlane {
  readonly normal: Point;
  readonly reach: number;
}

export interface Bounds {
  readonly left: number;
  readonly bottom: number;
  readonly right: number;
  readonly top: number;
}

/** The half-plane on the left of the line through `point` along the unit vector `along`. */
export function leftOf(point: Point, along: Point): HalfPlane {
  const left = quarterTurn(along);
  const normal = { x: -left.x, y: -left.y };
  return { normal, reach: dot(normal, point) };
}

/** Signed area, counter-clockwise positive. */
export function signedArea(ring: readonly Point[]): number {
  let twice = 0;
  ring.forEach((point, index) => {
    twice += cross(point, ring[(index + 1) % ring.length] ?? point);
  });
  return twice / 2;
}

/** The centre of mass of a ring's area. */
export function centroidOf(ring: readonly Point[]): Point {
  const [anchor = origin] = ring;
  let [area, x, y] = [0, 0, 0];
  ring.forEach((point, index) => {
    const a = subtract(point, anchor);
    const b = subtract(ring[(index + 1) % ring.length] ?? point, anchor);
    const part = a.x * b.y - a.y * b.x;
    area += part;
    x += (a.x + b.x) * part;
    y += (a.y + b.y) * part;
  });
  return { x: anchor.x + x / (3 * area), y: anchor.y + y / (3 * area) };
}

/** Area of a set of rings whose holes run clockwise. */
export const areaOf = (rings: readonly (readonly Point[])[]): number =>
  rings.reduce((sum, ring) => sum + signedArea(ring), 0);

/** A convex ring cut to a half-plane (Sutherland and Hodgman's step); empty when nothing is left. */
export function clipToHalfPlane(ring: readonly Point[], { normal, reach }: HalfPlane): Point[] {
  const kept: Point[] = [];
  ring.forEach((point, index) => {
    const next = ring[(index + 1) % ring.length] ?? point;
    const here = dot(normal, point) - reach;
    const there = dot(normal, next) - reach;
    if (here <= arithmeticTolerance) kept.push(point);
    if (
      (here < -arithmeticTolerance && there > arithmeticTolerance) ||
      (here > arithmeticTolerance && there < -arithmeticTolerance)
    ) {
      const fraction = here / (here - there);
      kept.push({ x: point.x + (next.x - point.x) * fraction, y: point.y + (next.y - point.y) * fraction });
    }
  });
  return kept.length >= 3 ? kept : [];
}

/** A convex ring cut to every half-plane in turn. */
export const clipToHalfPlanes = (ring: readonly Point[], sides: readonly HalfPlane[]): Point[] =>
  sides.reduce<Point[]>((rest, side) => clipToHalfPlane(rest, side), [...ring]);

/** The ring without points that repeat their neighbour or lie on the straight between their neighbours. */
export function withoutIdlePoints(ring: readonly Point[]): Point[] {
  let points = ring.filter((point, index) => {
    const next = ring[(index + 1) % ring.length] ?? point;
    return Math.hypot(next.x - point.x, next.y - point.y) > placeTolerance;
  });
  points = points.filter((point, index) => {
    const before = points[(index + points.length - 1) % points.length] ?? point;
    const after = points[(index + 1) % points.length] ?? point;
    const span = subtract(after, before);
    const away = Math.abs(cross(subtract(point, before), span)) / Math.hypot(span.x, span.y);
    return away > arithmeticTolerance * Math.hypot(span.x, span.y) + arithmeticTolerance;
  });
  return points;
}

/** Whether a counter-clockwise ring turns left at every corner. */
export function isConvexRing(ring: readonly Point[]): boolean {
  return ring.every((point, index) => {
    const next = ring[(index + 1) % ring.length] ?? point;
    const after = ring[(index + 2) % ring.length] ?? point;
    return cross(subtract(next, point), subtract(after, next)) >= -arithmeticTolerance;
  });
}

export function boundsOf(points: Iterable<Point>): Bounds {
  let [left, bottom, right, top] = [Infinity, Infinity, -Infinity, -Infinity];
  for (const { x, y } of points) {
    left = Math.min(left, x);
    bottom = Math.min(bottom, y);
    right = Math.max(right, x);
    top = Math.max(top, y);
  }
  return { left, bottom, right, top };
}

export const grownBounds = ({ left, bottom, right, top }: Bounds, by: number): Bounds => ({
  left: left - by,
  bottom: bottom - by,
  right: right + by,
  top: top + by,
});

export const boundsMeet = (a: Bounds, b: Bounds): boolean =>
  a.left <= b.right && b.left <= a.right && a.bottom <= b.top && b.bottom <= a.top;

export const middleOfBounds = ({ left, bottom, right, top }: Bounds): Point => ({
  x: (left + right) / 2,
  y: (bottom + top) / 2,
});

export const ringOfBounds = ({ left, bottom, right, top }: Bounds): Point[] => [
  { x: left, y: bottom },
  { x: right, y: bottom },
  { x: right, y: top },
  { x: left, y: top },
];

/** Decimals kept by the clipping library: 0.1 µm, so that products of coordinates stay exact up to metres. */
export const clippingDecimals = 4;

const toPaths = (rings: readonly (readonly Point[])[]): PathsD =>
  rings.map((ring) => ring.map(({ x, y }) => ({ x, y })));

/** The common part of two sets of rings, holes clockwise. */
export function intersectionOf(first: readonly (readonly Point[])[], second: readonly (readonly Point[])[]): Point[][] {
  const paths = intersectD(toPaths(first), toPaths(second), FillRule.NonZero, clippingDecimals);
  return paths.map((path) => path.map(({ x, y }) => ({ x, y })));
}
