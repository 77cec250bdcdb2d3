/** Paths moved, turned, mirrored, scaled or sheared: lines stay lines, arcs arcs of ellipses, curves curves. */
import type { ArcSegment, PathSegment } from './path.ts';
import { angleOf, cross, degrees, direction, dot, length, type Point } from './point.ts';
import { arithmeticTolerance } from './tolerance.ts';

/** (x, y) ↦ (a·x + c·y + e, b·x + d·y + f), the six numbers of an SVG `matrix`. */
export interface Transform {
  readonly a: number;
  readonly b: number;
  readonly c: number;
  readonly d: number;
  readonly e: number;
  readonly f: number;
}

export const unmoved: Transform = { a: 1, b: 0, c: 0, d: 1, e: 0, f: 0 };

export const moving = (by: Point): Transform => ({ ...unmoved, e: by.x, f: by.y });

export const scaling = (x: number, y: number): Transform => ({ ...unmoved, a: x, d: y });

/** By degrees about the origin; positive from the x axis towards the y axis. */
export function turning(angle: number): Transform {
  const along = direction(angle);
  return { a: along.x, b: along.y, c: -along.y, d: along.x, e: 0, f: 0 };
}

/** In the line through the origin along a unit vector. */
export const mirroring = ({ x, y }: Point): Transform => ({
  a: x * x - y * y,
  b: 2 * x * y,
  c: 2 * x * y,
  d: y * y - x * x,
  e: 0,
  f: 0,
});

/** The same about another point than the origin. */
export const about = (centre: Point, transform: Transform): Transform =>
  followedBy(followedBy(moving({ x: -centre.x, y: -centre.y }), transform), moving(centre));

/** First one, then the other. */
export function followedBy(first: Transform, second: Transform): Transform {
  const column = (x: number, y: number): Point => ({ x: second.a * x + second.c * y, y: second.b * x + second.d * y });
  const [right, up, origin] = [column(first.a, first.b), column(first.c, first.d), column(first.e, first.f)];
  return { a: right.x, b: right.y, c: up.x, d: up.y, e: origin.x + second.e, f: origin.y + second.f };
}

export const transformed = ({ x, y }: Point, { a, b, c, d, e, f }: Transform): Point => ({
  x: a * x + c * y + e,
  y: b * x + d * y + f,
});

export function transformedSegment(segment: PathSegment, transform: Transform): PathSegment {
  const place = (point: Point): Point => transformed(point, transform);
  const ends = { from: place(segment.from), to: place(segment.to) };
  switch (segment.kind) {
    case 'line':
      return { kind: 'line', ...ends };
    case 'quadratic':
      return { kind: 'quadratic', ...ends, control: place(segment.control) };
    case 'cubic':
      return { kind: 'cubic', ...ends, control1: place(segment.control1), control2: place(segment.control2) };
    case 'arc':
      return { ...transformedArc(segment, transform), ...ends };
  }
}

/**
 * The radii become conjugate half diameters u and v of the new ellipse: point(θ) = u cos θ + v sin θ. Its axes lie at
 * θ₀ = ½ atan2(2 u·v, u² − v²), where the distance from the centre is greatest (d/dθ |u cos θ + v sin θ|² = 0).
 */
function transformedArc(arc: ArcSegment, transform: Transform): ArcSegment {
  const straight = { ...transform, e: 0, f: 0 };
  const along = direction(arc.tilt);
  const u = transformed({ x: arc.radiusX * along.x, y: arc.radiusX * along.y }, straight);
  const v = transformed({ x: -arc.radiusY * along.y, y: arc.radiusY * along.x }, straight);
  const lead = Math.atan2(2 * dot(u, v), dot(u, u) - dot(v, v)) / 2;
  const [cosine, sine] = [Math.cos(lead), Math.sin(lead)];
  const long = { x: u.x * cosine + v.x * sine, y: u.y * cosine + v.y * sine };
  const short = { x: v.x * cosine - u.x * sine, y: v.y * cosine - u.y * sine };
  const way = cross(u, v) < 0 ? -1 : 1;
  const isCircle = arc.radiusX === arc.radiusY && isSimilarity(transform);
  return {
    ...arc,
    centre: transformed(arc.centre, transform),
    radiusX: length(long),
    radiusY: isCircle ? length(long) : length(short),
    tilt: angleOf(long),
    startAngle: way * (arc.startAngle - degrees(lead)),
    sweep: way * arc.sweep,
  };
}

/** Whether a transform keeps all angles, so that circles stay circles. */
const isSimilarity = ({ a, b, c, d }: Transform): boolean =>
  Math.abs(a * c + b * d) <= arithmeticTolerance * (a * a + b * b) &&
  Math.abs(a * a + b * b - c * c - d * d) <= arithmeticTolerance * (a * a + b * b);
