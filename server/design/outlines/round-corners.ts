/** Corners of a path rounded by arcs that touch both sides. */
import { segmentLength } from '../../geometry/curve-length.ts';
import { type FittingArc, fittingArc } from './round-any-corner.ts';
import { circularArc } from '../../geometry/flatten-path.ts';
import { leftDistance } from '../../geometry/lines.ts';
import type { ArcSegment, LineSegment, PathSegment } from '../../geometry/path.ts';
import { endDirection, partOf, startDirection } from '../../geometry/path-parts.ts';
import {
  add,
  angleOf,
  cross,
  degrees,
  distance,
  dot,
  type Point,
  quarterTurn,
  scale,
  subtract,
  unit,
} from '../../geometry/point.ts';
import { directionTolerance, placeTolerance } from '../../geometry/tolerance.ts';

/** The sides of a rounded corner, shortened, and the arc between them. */
export interface RoundedCorner {
  readonly before: PathSegment;
  readonly arc: ArcSegment;
  readonly after: PathSegment;
}

/** `straight`: there is no corner. `tooLarge`: the arc is longer than a side. */
export type CornerTrouble = 'straight' | 'tooLarge';

/** The corner where `before` ends and `after` begins, rounded with `radius`. */
export function roundedCorner(before: PathSegment, after: PathSegment, radius: number): RoundedCorner | CornerTrouble {
  const [arriving, leaving] = [endDirection(before), startDirection(after)];
  if (!arriving || !leaving) return 'straight';
  const side = Math.sign(cross(arriving, leaving));
  if (Math.abs(cross(arriving, leaving)) <= directionTolerance) return 'straight';
  const best =
    isPlain(before) && isPlain(after) ? plainArc(before, after, side, radius) : fittingArc(before, after, side, radius);
  if (!best) return 'tooLarge';
  const [kept, rest] = [partOf(before, 0, best.end), partOf(after, best.start, 1)];
  const sweep = degrees(sweptAngle(subtract(kept.to, best.centre), subtract(rest.from, best.centre), side));
  return { before: kept, arc: circularArc(kept.to, rest.from, best.centre, sweep), after: rest };
}

/** The arc between lines and circles, where their offsets cross; null where it goes beyond a side. */
function plainArc(before: Plain, after: Plain, side: number, radius: number): FittingArc | null {
  const centres = crossings(locus(before, side * radius), locus(after, side * radius));
  const fits = centres.flatMap((centre) => {
    const [end, start] = [touchOn(before, centre), touchOn(after, centre)];
    return end === null || start === null ? [] : [{ centre, end, start }];
  });
  const corner = before.to;
  return fits.sort((a, b) => distance(a.centre, corner) - distance(b.centre, corner))[0] ?? null;
}

/** Halvings of a radius until it is known far better than it can be sawn. */
const radiusHalvings = 30;

/** The largest radius below one that is too large, as far as smaller ones fit; null where none does. */
export function largestFitting(before: PathSegment, after: PathSegment, tooLarge: number): number | null {
  if (before.kind === 'line' && after.kind === 'line') return largestRadius(before, after);
  let [fits, fails] = [0, tooLarge];
  for (let halving = 0; halving < radiusHalvings; halving++) {
    const middle = (fits + fails) / 2;
    if (typeof roundedCorner(before, after, middle) === 'string') fails = middle;
    else fits = middle;
  }
  return fits > placeTolerance ? fits : null;
}

/** The largest radius that rounds the corner between two straight sides: the shorter side times tan(half the corner). */
export function largestRadius(before: LineSegment, after: LineSegment): number {
  const [back, on] = [unit(subtract(before.from, before.to)), unit(subtract(after.to, after.from))];
  const half = Math.acos(Math.max(-1, Math.min(1, dot(back, on)))) / 2;
  return Math.min(distance(before.from, before.to), distance(after.from, after.to)) * Math.tan(half);
}

type Plain = LineSegment | ArcSegment;

const isPlain = (segment: PathSegment): segment is Plain =>
  segment.kind === 'line' || (segment.kind === 'arc' && segment.radiusX === segment.radiusY);

function sweptAngle(from: Point, to: Point, side: number): number {
  const angle = Math.atan2(cross(from, to), dot(from, to));
  return angle * side < 0 ? angle + side * 2 * Math.PI : angle;
}

/** Where a point lies that is so far to the left of a side: on a line, or on a circle. */
type Locus =
  | { readonly kind: 'line'; readonly on: Point; readonly along: Point }
  | { readonly kind: 'circle'; readonly centre: Point; readonly radius: number };

function locus(segment: Plain, left: number): Locus {
  if (segment.kind === 'arc') {
    const { centre, radiusX, sweep } = segment;
    return { kind: 'circle', centre, radius: radiusX - Math.sign(sweep) * left };
  }
  const along = unit(subtract(segment.to, segment.from));
  return { kind: 'line', on: add(segment.from, scale(quarterTurn(along), left)), along };
}

function crossings(first: Locus, second: Locus): Point[] {
  if (first.kind === 'line' && second.kind === 'line') {
    const share = cross(subtract(second.on, first.on), second.along) / cross(first.along, second.along);
    return [add(first.on, scale(first.along, share))];
  }
  if (first.kind === 'circle' && second.kind === 'circle') return circleCrossings(first, second);
  return first.kind === 'line' && second.kind === 'circle'
    ? lineCrossings(first, second)
    : lineCrossings(second as LineLocus, first as CircleLocus);
}

type LineLocus = Extract<Locus, { kind: 'line' }>;
type CircleLocus = Extract<Locus, { kind: 'circle' }>;

function lineCrossings({ on, along }: LineLocus, { centre, radius }: CircleLocus): Point[] {
  const away = leftDistance(centre, on, along);
  if (radius <= 0 || Math.abs(away) > radius) return [];
  const foot = add(on, scale(along, dot(subtract(centre, on), along)));
  const half = Math.sqrt(radius ** 2 - away ** 2);
  return [add(foot, scale(along, half)), add(foot, scale(along, -half))];
}

/** Of two circles d apart the common chord lies (d² + r² − s²)/2d from the first centre. */
function circleCrossings(first: CircleLocus, second: CircleLocus): Point[] {
  const apart = distance(first.centre, second.centre);
  if (first.radius <= 0 || second.radius <= 0 || apart <= placeTolerance) return [];
  const along = unit(subtract(second.centre, first.centre));
  const reach = (apart ** 2 + first.radius ** 2 - second.radius ** 2) / (2 * apart);
  if (Math.abs(reach) > first.radius) return [];
  const half = Math.sqrt(first.radius ** 2 - reach ** 2);
  const foot = add(first.centre, scale(along, reach));
  return [add(foot, scale(quarterTurn(along), half)), add(foot, scale(quarterTurn(along), -half))];
}

/** The fraction of a side at which a circle about `centre` touches it; null beyond its ends. */
function touchOn(segment: Plain, centre: Point): number | null {
  const fraction = segment.kind === 'line' ? onLine(segment, centre) : onArc(segment, centre);
  const slack = placeTolerance / segmentLength(segment);
  return fraction >= -slack && fraction <= 1 + slack ? Math.min(1, Math.max(0, fraction)) : null;
}

function onLine({ from, to }: LineSegment, point: Point): number {
  const along = subtract(to, from);
  return dot(subtract(point, from), along) / dot(along, along);
}

function onArc({ centre, tilt, startAngle, sweep }: ArcSegment, point: Point): number {
  const way = Math.sign(sweep);
  const angle = angleOf(subtract(point, centre)) - tilt - startAngle;
  return ((((angle * way) % 360) + 360) % 360) / Math.abs(sweep);
}
