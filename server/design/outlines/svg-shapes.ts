/** Basic shapes and paths of an SVG file as closed lines in their own coordinates, y down (SVG 2, chapters 9 and 10). */
import type { Element } from '@xmldom/xmldom';
import type { PathSegment } from '../../geometry/path.ts';
import type { Point } from '../../geometry/point.ts';
import { scaling, transformedSegment } from '../../geometry/transform-path.ts';
import { circleAbout, ellipseAbout } from './arc-geometry.ts';
import { readPathData } from './path-data.ts';
import { closedSegments, isClosed } from './draw-path-data.ts';
import { readSvgLength, readSvgNumbers } from './svg-lengths.ts';

/** Closed lines, or what keeps an element from being one: said as a clause. */
export type SvgShape =
  | { readonly kind: 'lines'; readonly lines: readonly (readonly PathSegment[])[] }
  | { readonly kind: 'trouble'; readonly trouble: string };

export const drawableElements = ['path', 'rect', 'circle', 'ellipse', 'polygon', 'polyline'] as const;

const trouble = (text: string): SvgShape => ({ kind: 'trouble', trouble: text });

/** The shape of one of the drawable elements. */
export function svgShape(element: Element): SvgShape {
  switch (element.localName ?? '') {
    case 'path':
      return pathShape(element.getAttribute('d') ?? '');
    case 'rect':
      return rectShape(element);
    case 'circle': {
      const radius = lengthOf(element, 'r');
      if (!(radius > 0)) return trouble('has no radius `r` above 0');
      return {
        kind: 'lines',
        lines: [circleAbout({ x: lengthOf(element, 'cx'), y: lengthOf(element, 'cy') }, radius)],
      };
    }
    case 'ellipse': {
      const [radiusX, radiusY] = radiiOf(element);
      if (!(radiusX > 0 && radiusY > 0)) return trouble('has no radii `rx` and `ry` above 0');
      const centre = { x: lengthOf(element, 'cx'), y: lengthOf(element, 'cy') };
      return { kind: 'lines', lines: [ellipseAbout(centre, radiusX, radiusY, 0)] };
    }
    default:
      return pointsShape(element.getAttribute('points') ?? '');
  }
}

/** A length that is not written, or depends on something else, is 0. */
const lengthOf = (element: Element, name: string): number => readSvgLength(element.getAttribute(name)) ?? 0;

/** A radius that is not written is the other one. */
function radiiOf(element: Element): [number, number] {
  const [x, y] = [readSvgLength(element.getAttribute('rx')), readSvgLength(element.getAttribute('ry'))];
  return [Math.max(0, x ?? y ?? 0), Math.max(0, y ?? x ?? 0)];
}

/** Path data is read y up, as our own; here it is turned down again. */
function pathShape(data: string): SvgShape {
  const { subpaths, errorAt } = readPathData(data);
  if (errorAt !== null) return trouble(`has an error in its data, at character ${String(errorAt + 1)}`);
  if (subpaths.length === 0) return trouble('draws nothing');
  if (!subpaths.every(isClosed)) return trouble('has a line that does not come back to its start');
  const down = scaling(1, -1);
  return {
    kind: 'lines',
    lines: subpaths.map((subpath) => closedSegments(subpath).map((segment) => transformedSegment(segment, down))),
  };
}

function pointsShape(text: string): SvgShape {
  const numbers = readSvgNumbers(text);
  if (!numbers || numbers.length < 6 || numbers.length % 2 !== 0)
    return trouble('has no list of three `points` or more');
  const points = numbers.flatMap((x, index): Point[] => {
    const y = numbers[index + 1];
    return index % 2 === 0 && y !== undefined ? [{ x, y }] : [];
  });
  return { kind: 'lines', lines: [closedThrough(points)] };
}

const closedThrough = (points: readonly Point[]): PathSegment[] =>
  points
    .map((from, index): PathSegment => ({ kind: 'line', from, to: points[(index + 1) % points.length] ?? from }))
    .filter(({ from, to }) => from.x !== to.x || from.y !== to.y);

/** Corners are quarters of ellipses, no larger than half the sides (SVG 2, section 10.2). */
function rectShape(element: Element): SvgShape {
  const [width, height] = [lengthOf(element, 'width'), lengthOf(element, 'height')];
  if (!(width > 0 && height > 0)) return trouble('has no `width` and `height` above 0');
  const [left, top] = [lengthOf(element, 'x'), lengthOf(element, 'y')];
  const [right, bottom] = [left + width, top + height];
  const [radiusX, radiusY] = radiiOf(element);
  const [x, y] = [Math.min(radiusX, width / 2), Math.min(radiusY, height / 2)];
  const corner = (centreX: number, centreY: number, startAngle: number): PathSegment => {
    const at = (angle: number): Point => {
      const quarter = ((angle % 360) + 360) % 360;
      return {
        x: centreX + (quarter === 0 ? x : quarter === 180 ? -x : 0),
        y: centreY + (quarter === 90 ? y : quarter === 270 ? -y : 0),
      };
    };
    const arc = { centre: { x: centreX, y: centreY }, radiusX: x, radiusY: y, tilt: 0, startAngle, sweep: 90 };
    return { kind: 'arc', ...arc, from: at(startAngle), to: at(startAngle + 90) };
  };
  if (x === 0 || y === 0) {
    const corners = [
      { x: left, y: top },
      { x: right, y: top },
      { x: right, y: bottom },
      { x: left, y: bottom },
    ];
    return { kind: 'lines', lines: [closedThrough(corners)] };
  }
  const arcs = [
    corner(right - x, top + y, 270),
    corner(right - x, bottom - y, 0),
    corner(left + x, bottom - y, 90),
    corner(left + x, top + y, 180),
  ];
  const line = arcs.flatMap((arc, index): PathSegment[] => {
    const next = arcs[(index + 1) % arcs.length] ?? arc;
    const isOne = arc.to.x === next.from.x && arc.to.y === next.from.y;
    return isOne ? [arc] : [arc, { kind: 'line', from: arc.to, to: next.from }];
  });
  return { kind: 'lines', lines: [line] };
}
