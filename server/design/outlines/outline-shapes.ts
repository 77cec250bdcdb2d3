/** The steps of an outline that are closed lines by themselves. */
import type {
  EllipseStep,
  LoopStep,
  PolygonStep,
  RectangleStep,
  WholeStep,
} from '../../../grammar/tree/outline-syntax.ts';
import type { Expression, PointSyntax } from '../../../grammar/tree/syntax-nodes.ts';
import { problemAt } from '../../../grammar/problems/problem-catalogue.ts';
import type { PathSegment } from '../../geometry/path.ts';
import { add, direction, distance, origin, scale, turned } from '../../geometry/point.ts';
import type { Point } from '../../geometry/point.ts';
import { closedSpline } from '../../geometry/spline.ts';
import { placeTolerance } from '../../geometry/tolerance.ts';
import { circleAbout, ellipseAbout } from './arc-geometry.ts';
import type { DesignContext } from '../design-context.ts';
import { chainOf } from './drawn-segment.ts';
import type { DrawnSegment } from './drawn-segment.ts';
import { readApart } from './outline-pen.ts';
import { drawFromFile } from './drawing-steps.ts';
import { drawPathData } from './draw-path-data.ts';
import { readAngle, readCount, readLength, readPoint } from '../values/read-values.ts';
import { roundChain } from './round-chain.ts';

/** A polygon of more corners is a circle to any saw. */
const mostCorners = 1000;

/** The chains of a step; null where it is broken, which is reported. */
export function drawWhole(step: WholeStep, context: DesignContext): DrawnSegment[][] | null {
  switch (step.kind) {
    case 'path':
      return step.source.kind === 'data'
        ? drawPathData(step.source.data, context)
        : drawFromFile(step.source, step.range, context);
    case 'circle': {
      const at = placeOf(step.at, context);
      const radius = readLength(step.radius, 'radius', 'positive', context);
      return at && radius !== null ? [chainOf(circleAbout(at, radius), step.range)] : null;
    }
    case 'ellipse':
      return asChains(ellipse(step, context), step);
    case 'loop':
      return asChains(loop(step, context), step);
    case 'rectangle':
      return cornered(rectangleCorners(step, context), step, context);
    case 'polygon':
      return cornered(polygonCorners(step, context), step, context);
  }
}

const asChains = (segments: PathSegment[] | null, { range }: WholeStep): DrawnSegment[][] | null =>
  segments && [chainOf(segments, range)];

const placeOf = (at: PointSyntax | null, context: DesignContext): Point | null =>
  at ? readPoint(at, context) : origin;

const turnOf = (turned: Expression | null, context: DesignContext): number | null =>
  turned ? readAngle(turned, 'turn', null, context) : 0;

function ellipse({ at, radii, turned: turn }: EllipseStep, context: DesignContext): PathSegment[] | null {
  const centre = placeOf(at, context);
  const radiusX = readLength(radii.x, 'first radius', 'positive', context);
  const radiusY = readLength(radii.y, 'second radius', 'positive', context);
  const tilt = turnOf(turn, context);
  if (!centre || radiusX === null || radiusY === null || tilt === null) return null;
  return ellipseAbout(centre, radiusX, radiusY, tilt);
}

function loop({ through, range }: LoopStep, context: DesignContext): PathSegment[] | null {
  const points = readApart(through, [], context);
  if (!points) return null;
  const [first, last] = [points[0], points.at(-1)];
  const lastWords = through.at(-1);
  if (first && last && lastWords && points.length > 1 && distance(first, last) <= placeTolerance) {
    const message = 'This is the first point again; the line closes by itself. Take it out.';
    context.report(problemAt('repeatedPoint', lastWords.range, message));
    return null;
  }
  if (points.length >= 3) return closedSpline(points);
  const message = `A closed line needs three points or more, and this has ${String(points.length)}. Add some with \`and\`.`;
  context.report(problemAt('outlineNotClosed', range, message));
  return null;
}

function rectangleCorners(step: RectangleStep, context: DesignContext): Point[] | null {
  const width = readLength(step.width, 'width', 'positive', context);
  const height = readLength(step.height, 'height', 'positive', context);
  const at = placeOf(step.at, context);
  const turn = turnOf(step.turned, context);
  if (!at || width === null || height === null || turn === null) return null;
  const [right, top] = [width / 2, height / 2];
  const corners = [
    { x: -right, y: -top },
    { x: right, y: -top },
    { x: right, y: top },
    { x: -right, y: top },
  ];
  return corners.map((corner) => add(at, turned(corner, turn)));
}

/** One side lies level at the bottom until it is turned. */
function polygonCorners(step: PolygonStep, context: DesignContext): Point[] | null {
  const count = readCount(step.corners, 'number of corners', 3, mostCorners, context);
  const radius = readLength(step.radius, 'radius', 'positive', context);
  const at = placeOf(step.at, context);
  const turn = turnOf(step.turned, context);
  if (!at || count === null || radius === null || turn === null) return null;
  return Array.from({ length: count }, (_, index) =>
    add(at, scale(direction(-90 + turn + ((2 * index - 1) * 180) / count), radius)),
  );
}

/** Straight sides between corners, all corners rounded where that is asked for. */
function cornered(
  corners: readonly Point[] | null,
  step: RectangleStep | PolygonStep,
  context: DesignContext,
): DrawnSegment[][] | null {
  const radius = step.rounded ? readLength(step.rounded, 'radius', 'positive', context) : null;
  if (!corners || (step.rounded && radius === null)) return null;
  const rounded = step.rounded && radius !== null ? { rounded: { radius, range: step.rounded.range } } : {};
  const sides = corners.map((from, index): DrawnSegment => {
    const to = corners[(index + 1) % corners.length] ?? from;
    return { segment: { kind: 'line', from, to }, range: step.range, ...rounded };
  });
  const chain = roundChain(sides, context);
  return chain && [chain];
}
