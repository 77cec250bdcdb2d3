/** Places, directions and parts along one segment of a path. Fractions run from 0 at its start to 1 at its end. */
import { pointOnArc, pointOnCubic, pointOnQuadratic } from './flatten-path.ts';
import type { PathSegment } from './path.ts';
import { between, direction, distance, type Point, quarterTurn, scale, subtract, turned, unit } from './point.ts';
import { placeTolerance } from './tolerance.ts';

export function pointOn(segment: PathSegment, fraction: number): Point {
  switch (segment.kind) {
    case 'line':
      return between(segment.from, segment.to, fraction);
    case 'arc':
      return pointOnArc(segment, fraction);
    case 'quadratic':
      return pointOnQuadratic(segment, fraction);
    case 'cubic':
      return pointOnCubic(segment, fraction);
  }
}

/** The same way back. */
export function reversed(segment: PathSegment): PathSegment {
  const ends = { from: segment.to, to: segment.from };
  if (segment.kind === 'cubic') return { ...segment, ...ends, control1: segment.control2, control2: segment.control1 };
  if (segment.kind !== 'arc') return { ...segment, ...ends };
  return { ...segment, ...ends, startAngle: segment.startAngle + segment.sweep, sweep: -segment.sweep };
}

/** The part from one fraction to another; backwards where the second is the smaller. */
export function partOf(segment: PathSegment, start: number, end: number): PathSegment {
  if (start > end) return reversed(partOf(segment, end, start));
  const [from, to] = [endPoint(segment, start), endPoint(segment, end)];
  switch (segment.kind) {
    case 'line':
      return { kind: 'line', from, to };
    case 'arc': {
      const { startAngle, sweep } = segment;
      return { ...segment, from, to, startAngle: startAngle + sweep * start, sweep: sweep * (end - start) };
    }
    case 'quadratic':
      return { kind: 'quadratic', from, control: blossomOfTwo(segment, start, end), to };
    case 'cubic':
      return {
        kind: 'cubic',
        from,
        control1: blossomOfThree(segment, start, start, end),
        control2: blossomOfThree(segment, start, end, end),
        to,
      };
  }
}

/** Ends stay exactly what they are. */
function endPoint(segment: PathSegment, fraction: number): Point {
  if (fraction === 0) return segment.from;
  return fraction === 1 ? segment.to : pointOn(segment, fraction);
}

/** Control points of a part are blossoms of the curve (Ramshaw; de Casteljau's steps at different parameters). */
function blossomOfTwo(
  { from, control, to }: Extract<PathSegment, { kind: 'quadratic' }>,
  first: number,
  second: number,
): Point {
  return between(between(from, control, first), between(control, to, first), second);
}

function blossomOfThree(
  { from, control1, control2, to }: Extract<PathSegment, { kind: 'cubic' }>,
  first: number,
  second: number,
  third: number,
): Point {
  const middle = between(control1, control2, first);
  return between(
    between(between(from, control1, first), middle, second),
    between(middle, between(control2, to, first), second),
    third,
  );
}

/** Unit vector along the path where a segment begins; null where it has no length. */
export function startDirection(segment: PathSegment): Point | null {
  if (segment.kind === 'arc') return arcDirection(segment, 0);
  const next =
    segment.kind === 'line'
      ? []
      : segment.kind === 'quadratic'
        ? [segment.control]
        : [segment.control1, segment.control2];
  const toward = [...next, segment.to].find((point) => distance(point, segment.from) > placeTolerance);
  return toward ? unit(subtract(toward, segment.from)) : null;
}

/** Unit vector along the path where a segment ends; null where it has no length. */
export function endDirection(segment: PathSegment): Point | null {
  const back = startDirection(reversed(segment));
  return back && scale(back, -1);
}

function arcDirection(arc: Extract<PathSegment, { kind: 'arc' }>, fraction: number): Point | null {
  const along = quarterTurn(direction(arc.startAngle + arc.sweep * fraction));
  const tangent = turned({ x: arc.radiusX * along.x, y: arc.radiusY * along.y }, arc.tilt);
  const way = scale(tangent, Math.sign(arc.sweep));
  return Math.hypot(way.x, way.y) > 0 ? unit(way) : null;
}
