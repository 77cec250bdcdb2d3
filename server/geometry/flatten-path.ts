/** Curves → chains of points no further than the flattening tolerance from them. */
import type { ArcSegment, Contour, CubicSegment, PathSegment, QuadraticSegment } from './path.ts';
import { add, between, degrees, direction, type Point, radians, subtract, turned } from './point.ts';
import { flatteningTolerance } from './tolerance.ts';

/** The corners of a polygon that follows `contour`; the first point is not repeated at the end. */
export function flattenContour(contour: Contour): Point[] {
  return contour.flatMap(flattenSegment);
}

/** A segment's start and the points on its way; its end is left out. */
export const flattenSegment = (segment: PathSegment): Point[] => [segment.from, ...innerPoints(segment)];

/** Segments never change, and are flattened again and again: for checks, cuts, regions, drawings. */
const flattened = new WeakMap<PathSegment, readonly Point[]>();

/** Points strictly between a segment's ends. */
function innerPoints(segment: PathSegment): readonly Point[] {
  const known = flattened.get(segment) ?? pointsBetweenEnds(segment);
  flattened.set(segment, known);
  return known;
}

function pointsBetweenEnds(segment: PathSegment): Point[] {
  switch (segment.kind) {
    case 'line':
      return [];
    case 'arc':
      return evenly(arcSteps(segment), (fraction) => pointOnArc(segment, fraction));
    case 'quadratic':
      return evenly(quadraticSteps(segment), (fraction) => pointOnQuadratic(segment, fraction));
    case 'cubic':
      return evenly(cubicSteps(segment), (fraction) => pointOnCubic(segment, fraction));
  }
}

function evenly(steps: number, pointAt: (fraction: number) => Point): Point[] {
  return Array.from({ length: steps - 1 }, (_, index) => pointAt((index + 1) / steps));
}

/** Sagitta of a chord over angle a on radius r is r(1 − cos(a/2)). */
function arcSteps(arc: ArcSegment): number {
  const radius = Math.max(arc.radiusX, arc.radiusY);
  const largest = 2 * Math.acos(Math.max(0, 1 - flatteningTolerance / radius));
  return Math.max(1, Math.ceil(Math.abs(radians(arc.sweep)) / largest));
}

/** A quadratic leaves its chord by at most |second difference| / (4n²) when cut into n equal parts of its parameter. */
function quadraticSteps({ from, control, to }: QuadraticSegment): number {
  const bend = Math.hypot(from.x - 2 * control.x + to.x, from.y - 2 * control.y + to.y);
  return Math.max(1, Math.ceil(Math.sqrt(bend / (4 * flatteningTolerance))));
}

/** The chord error of n parts is at most max|B″|/(8n²), and |B″| is at most 6 × the larger second difference. */
function cubicSteps({ from, control1, control2, to }: CubicSegment): number {
  const bend = Math.max(
    Math.hypot(from.x - 2 * control1.x + control2.x, from.y - 2 * control1.y + control2.y),
    Math.hypot(control1.x - 2 * control2.x + to.x, control1.y - 2 * control2.y + to.y),
  );
  return Math.max(1, Math.ceil(Math.sqrt((6 * bend) / (8 * flatteningTolerance))));
}

export function pointOnArc(arc: ArcSegment, fraction: number): Point {
  const along = direction(arc.startAngle + arc.sweep * fraction);
  return add(arc.centre, turned({ x: arc.radiusX * along.x, y: arc.radiusY * along.y }, arc.tilt));
}

export function pointOnQuadratic({ from, control, to }: QuadraticSegment, fraction: number): Point {
  return between(between(from, control, fraction), between(control, to, fraction), fraction);
}

export function pointOnCubic({ from, control1, control2, to }: CubicSegment, fraction: number): Point {
  const middle = between(control1, control2, fraction);
  return between(
    between(between(from, control1, fraction), middle, fraction),
    between(middle, between(control2, to, fraction), fraction),
    fraction,
  );
}

/** A circular arc from `from` to `to` about `centre`, counter-clockwise when `sweep` is positive. */
export function circularArc(from: Point, to: Point, centre: Point, sweep: number): ArcSegment {
  const radius = Math.hypot(from.x - centre.x, from.y - centre.y);
  const start = subtract(from, centre);
  return {
    kind: 'arc',
    from,
    to,
    centre,
    radiusX: radius,
    radiusY: radius,
    tilt: 0,
    startAngle: degrees(Math.atan2(start.y, start.x)),
    sweep,
  };
}
