/** Arcs as they are written, turned into arcs about a centre. */
import { circularArc } from '../../geometry/flatten-path.ts';
import type { ArcSegment, PathSegment } from '../../geometry/path.ts';
import {
  add,
  angleOf,
  between,
  cross,
  degrees,
  distance,
  dot,
  quarterTurn,
  scale,
  subtract,
  turned,
  unit,
} from '../../geometry/point.ts';
import type { Point } from '../../geometry/point.ts';
import { placeTolerance } from '../../geometry/tolerance.ts';

/**
 * The arc of `radius` from one point to another. `left` turns counter-clockwise along the way, so the centre of
 * a small arc lies on the left. Half the chord over the radius is the sine of half the swept angle (Euclid III).
 * Null where the chord is longer than the circle is wide, or has no length.
 */
export function arcByRadius(
  from: Point,
  to: Point,
  radius: number,
  turn: 'left' | 'right',
  large: boolean,
): ArcSegment | null {
  const half = distance(from, to) / 2;
  if (half === 0 || half > radius + placeTolerance) return null;
  const sine = Math.min(1, half / radius);
  const height = Math.sqrt(Math.max(0, radius ** 2 - half ** 2));
  const small = 2 * degrees(Math.asin(sine));
  const side = (turn === 'left') === large ? -1 : 1;
  const normal = quarterTurn(unit(subtract(to, from)));
  const centre = add(between(from, to, 0.5), scale(normal, side * height));
  const sweep = large ? 360 - small : small;
  const drawn = Math.max(radius, half);
  return { ...circularArc(from, to, centre, turn === 'left' ? sweep : -sweep), radiusX: drawn, radiusY: drawn };
}

/** The arc from one point to another through a third; null where the three lie on one line. */
export function arcThrough(from: Point, through: Point, to: Point): ArcSegment | null {
  const [first, second] = [subtract(through, from), subtract(to, from)];
  const turn = cross(first, second);
  if (Math.abs(turn) <= placeTolerance * distance(from, to) || distance(from, to) <= placeTolerance) return null;
  const [a, b] = [dot(first, first), dot(second, second)];
  const centre = add(from, {
    x: (a * second.y - b * first.y) / (2 * turn),
    y: (b * first.x - a * second.x) / (2 * turn),
  });
  const arriving = angleOf(subtract(to, centre)) - angleOf(subtract(from, centre));
  const left = ((arriving % 360) + 360) % 360;
  return circularArc(from, to, centre, turn > 0 ? left : left - 360);
}

/**
 * The arc whose middle is `rise` from the middle of its chord c: of radius (c²/4 + rise²) / (2·rise) (intersecting
 * chords, Euclid III 35). Beyond half the chord it is the larger part of its circle. Null where the ends coincide.
 */
export function arcByRise(from: Point, to: Point, rise: number, turn: 'left' | 'right'): ArcSegment | null {
  const half = distance(from, to) / 2;
  if (half <= placeTolerance) return null;
  return arcByRadius(from, to, (half ** 2 + rise ** 2) / (2 * rise), turn, rise > half);
}

/** A whole ellipse as two halves, counter-clockwise; `tilt` turns its first radius from the x axis. */
export function ellipseAbout(centre: Point, radiusX: number, radiusY: number, tilt: number): PathSegment[] {
  const end = turned({ x: radiusX, y: 0 }, tilt);
  const [right, left] = [add(centre, end), subtract(centre, end)];
  const half = { kind: 'arc', centre, radiusX, radiusY, tilt, sweep: 180 } as const;
  return [
    { ...half, from: right, to: left, startAngle: 0 },
    { ...half, from: left, to: right, startAngle: 180 },
  ];
}

/** A whole circle as two halves, counter-clockwise. */
export function circleAbout(centre: Point, radius: number): PathSegment[] {
  const right = { x: centre.x + radius, y: centre.y };
  const left = { x: centre.x - radius, y: centre.y };
  return [circularArc(right, left, centre, 180), circularArc(left, right, centre, 180)];
}

/** The ends, radii, tilt in degrees and flags of an SVG `A` command, in its own axes (y down). */
export interface SvgArc {
  readonly from: Point;
  readonly to: Point;
  readonly radiusX: number;
  readonly radiusY: number;
  readonly tilt: number;
  readonly large: boolean;
  readonly sweep: boolean;
}

/**
 * Endpoint to centre form: SVG 2, appendix B.2.4, with the corrections of radii of B.2.5 (SVG 1.1: F.6.5, F.6.6).
 * Null where the ends coincide; a line where a radius is 0.
 */
export function arcByEnds({ from, to, tilt, large, sweep, ...radii }: SvgArc): PathSegment | null {
  if (distance(from, to) === 0) return null;
  const written = { x: Math.abs(radii.radiusX), y: Math.abs(radii.radiusY) };
  if (written.x === 0 || written.y === 0) return { kind: 'line', from, to };
  const halfway = turned(scale(subtract(from, to), 0.5), -tilt);
  const stretch = (halfway.x / written.x) ** 2 + (halfway.y / written.y) ** 2;
  const grow = stretch > 1 ? Math.sqrt(stretch) : 1;
  const radiusX = written.x * grow;
  const radiusY = written.y * grow;
  const area = (radiusX * radiusY) ** 2;
  const cut = (radiusX * halfway.y) ** 2 + (radiusY * halfway.x) ** 2;
  const factor = Math.sqrt(Math.max(0, (area - cut) / cut)) * (large === sweep ? -1 : 1);
  const inner = { x: (factor * radiusX * halfway.y) / radiusY, y: (-factor * radiusY * halfway.x) / radiusX };
  const centre = add(turned(inner, tilt), between(from, to, 0.5));
  const start = { x: (halfway.x - inner.x) / radiusX, y: (halfway.y - inner.y) / radiusY };
  const end = { x: (-halfway.x - inner.x) / radiusX, y: (-halfway.y - inner.y) / radiusY };
  const swept = degrees(Math.atan2(cross(start, end), dot(start, end)));
  const sweepAngle = sweep && swept < 0 ? swept + 360 : !sweep && swept > 0 ? swept - 360 : swept;
  return { kind: 'arc', from, to, centre, radiusX, radiusY, tilt, startAngle: angleOf(start), sweep: sweepAngle };
}
