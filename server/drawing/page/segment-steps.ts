/** Lines, arcs and curves of an outline as steps of a page's path. Outlines have y up, pages y down. */
import { add, direction, type Point, radians, scale, turned } from '../../geometry/point.ts';
import type { ArcSegment, Contour, PathSegment } from '../../geometry/path.ts';
import type { PathStep } from './page-model.ts';

/** The largest part of an ellipse that one cubic follows closely: within 0.03 % of the radius. */
const quarter = 90;

/** A closed contour, its origin moved to `at` on the page. */
export function contourSteps(contour: Contour, at: Point): PathStep[] {
  const [first] = contour;
  if (!first) return [];
  const onPage = ({ x, y }: Point): [number, number] => [at.x + x, at.y - y];
  return [['M', ...onPage(first.from)], ...contour.flatMap((segment) => segmentSteps(segment, onPage)), ['Z']];
}

function segmentSteps(segment: PathSegment, onPage: (point: Point) => [number, number]): PathStep[] {
  const curve = (control1: Point, control2: Point, to: Point): PathStep => [
    'C',
    ...onPage(control1),
    ...onPage(control2),
    ...onPage(to),
  ];
  switch (segment.kind) {
    case 'line':
      return [['L', ...onPage(segment.to)]];
    case 'cubic':
      return [curve(segment.control1, segment.control2, segment.to)];
    case 'quadratic': {
      // The same curve one degree higher: handles at two thirds of the way to the control point.
      const raised = (end: Point): Point => add(scale(end, 1 / 3), scale(segment.control, 2 / 3));
      return [curve(raised(segment.from), raised(segment.to), segment.to)];
    }
    case 'arc':
      return arcParts(segment).map(([control1, control2, to]) => curve(control1, control2, to));
  }
}

/** Cubics along an arc: handles of 4/3·tan(part/4) of its derivative have its ends, tangents and middle (common practice). */
function arcParts({ centre, radiusX, radiusY, tilt, startAngle, sweep }: ArcSegment): [Point, Point, Point][] {
  const count = Math.max(1, Math.ceil(Math.abs(sweep) / quarter));
  const part = sweep / count;
  const handle = (4 / 3) * Math.tan(radians(part) / 4);
  const at = (angle: number, along: number): Point => {
    const [on, next] = [direction(angle), direction(angle + 90)];
    const unitPoint = { x: on.x + next.x * along, y: on.y + next.y * along };
    return add(centre, turned({ x: radiusX * unitPoint.x, y: radiusY * unitPoint.y }, tilt));
  };
  return Array.from({ length: count }, (_, index) => {
    const [from, to] = [startAngle + index * part, startAngle + (index + 1) * part];
    return [at(from, handle), at(to, -handle), at(to, 0)];
  });
}
