/** Exact areas and lengths of contours. */
import { segmentLength } from './curve-length.ts';
import { sum } from './numbers.ts';
import type { Contour, PathSegment } from './path.ts';
import { cross, distance, type Point, radians, subtract } from './point.ts';

/** Signed area by Green's theorem, mm²: counter-clockwise positive. Exact for every kind of segment. */
export function contourArea(contour: Contour): number {
  return contour.reduce((sum, segment) => sum + areaUnder(segment), 0) / 2;
}

/** ∮ x dy − y dx along one segment. */
function areaUnder(segment: PathSegment): number {
  const { from, to } = segment;
  const chord = cross(from, to);
  switch (segment.kind) {
    case 'line':
      return chord;
    case 'arc': {
      const sweep = radians(segment.sweep);
      const ellipse = segment.radiusX * segment.radiusY * sweep;
      const shift = cross(segment.centre, subtract(to, from));
      return ellipse + shift;
    }
    case 'quadratic':
      return chord + (2 / 3) * cross(subtract(segment.control, from), subtract(to, from));
    case 'cubic': {
      const one = subtract(segment.control1, from);
      const two = subtract(segment.control2, from);
      const end = subtract(to, from);
      return chord + 0.3 * cross(one, two) + 0.3 * cross(one, end) + 0.6 * cross(two, end);
    }
  }
}

/** Length round a contour in mm, along its curves. */
export const contourLength = (contour: Contour): number => sum(contour.map(segmentLength));

/** Length round a closed polygon. */
export function ringLength(ring: readonly Point[]): number {
  return ring.reduce((sum, point, index) => sum + distance(point, ring[(index + 1) % ring.length] ?? point), 0);
}
