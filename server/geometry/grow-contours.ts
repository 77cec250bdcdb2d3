/** Contours grown or shrunk by a distance, with their lines and circular arcs kept as such. */
import { flattenContour } from './flatten-path.ts';
import { type GrownCorners, grownRings } from './grow-rings.ts';
import type { ArcSegment, Contour, PathSegment } from './path.ts';
import { endDirection, startDirection } from './path-parts.ts';
import { add, angleOf, cross, degrees, dot, type Point, quarterTurn, scale } from './point.ts';
import { restoredContours } from './restore-curves.ts';

/**
 * Outer contours counter-clockwise, holes clockwise; `by` is negative inwards. Empty when nothing is left. The parallel of a
 * line is a line and of a circular arc an arc; that of any other curve comes as chords within the flattening tolerance.
 */
export function grownContours(contours: readonly Contour[], by: number, corners: GrownCorners): Contour[] {
  const rings = grownRings(contours.map(flattenContour), by, corners);
  return restoredContours(
    rings,
    contours.flatMap((contour) => parallels(contour, by)),
  );
}

/** What the grown line is made of: every line and circular arc moved outwards, and an arc about every corner. */
function parallels(contour: Contour, by: number): PathSegment[] {
  return contour.flatMap((segment, index) => {
    const next = contour[(index + 1) % contour.length] ?? segment;
    return [...parallel(segment, by), ...cornerArc(segment, next, by)];
  });
}

/** Outside is on the right of the way round. */
const outward = (along: Point): Point => scale(quarterTurn(along), -1);

function parallel(segment: PathSegment, by: number): PathSegment[] {
  const [start, end] = [startDirection(segment), endDirection(segment)];
  if (!start || !end) return [];
  const from = add(segment.from, scale(outward(start), by));
  const to = add(segment.to, scale(outward(end), by));
  if (segment.kind === 'line') return [{ kind: 'line', from, to }];
  if (segment.kind !== 'arc' || segment.radiusX !== segment.radiusY) return [];
  const radius = segment.radiusX + Math.sign(segment.sweep) * by;
  return radius > 0 ? [{ ...segment, from, to, radiusX: radius, radiusY: radius }] : [];
}

/** The arc that keeps its distance from a corner. */
function cornerArc(segment: PathSegment, next: PathSegment, by: number): ArcSegment[] {
  const [before, after] = [endDirection(segment), startDirection(next)];
  if (!before || !after) return [];
  const sweep = degrees(Math.atan2(cross(before, after), dot(before, after)));
  const radius = Math.abs(by);
  const start = scale(outward(before), by);
  return [
    {
      kind: 'arc',
      from: add(segment.to, start),
      to: add(segment.to, scale(outward(after), by)),
      centre: segment.to,
      radiusX: radius,
      radiusY: radius,
      tilt: 0,
      startAngle: angleOf(start),
      sweep,
    },
  ];
}
