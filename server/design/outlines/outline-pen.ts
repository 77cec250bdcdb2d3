/** The steps of an outline that go on from where the one before ends. */
import { append } from '../../geometry/numbers.ts';
import type { ArcStep, PenStep, SplineStep, StartStep, StepEnd } from '../../../grammar/tree/outline-syntax.ts';
import { measure, words } from '../../../grammar/words.ts';
import type { PointSyntax } from '../../../grammar/tree/syntax-nodes.ts';
import { problemAt } from '../../../grammar/problems/problem-catalogue.ts';
import type { SourceRange } from '../../../grammar/tree/source-range.ts';
import type { PathSegment } from '../../geometry/path.ts';
import { distance } from '../../geometry/point.ts';
import type { Point } from '../../geometry/point.ts';
import { openSpline } from '../../geometry/spline.ts';
import { placeTolerance } from '../../geometry/tolerance.ts';
import { arcByRise, arcByRadius, arcThrough } from './arc-geometry.ts';
import type { DesignContext } from '../design-context.ts';
import type { DrawnSegment } from './drawn-segment.ts';
import { readLength, readPoint } from '../values/read-values.ts';
import { roundChain } from './round-chain.ts';

/** A line being drawn. */
export interface Pen {
  readonly start: Point;
  readonly startRange: SourceRange;
  at: Point;
  readonly drawn: DrawnSegment[];
}

/** Null where its point is broken. */
export function startPen(step: StartStep, context: DesignContext): Pen | null {
  const at = readPoint(step.at, context);
  return at && { start: at, startRange: step.range, at, drawn: [] };
}

/** Draws one step on; false where it is broken. A step of no length draws nothing. */
export function drawOn(pen: Pen, step: PenStep, context: DesignContext): boolean {
  const from = pen.at;
  const to = endOf(step.to, pen, context);
  const segments = to && segmentsOf(step, from, to, context);
  const { rounded } = step;
  const radius = rounded ? readLength(rounded, 'radius', 'positive', context) : null;
  if (!to || !segments || (rounded && radius === null)) return false;
  const drawn = segments
    .filter(({ kind, from: start, to: end }) => kind !== 'line' || start.x !== end.x || start.y !== end.y)
    .map((segment): DrawnSegment => ({ segment, range: step.range }));
  const last = drawn.pop();
  const corner = rounded && radius !== null ? { rounded: { radius, range: rounded.range } } : {};
  append(pen.drawn, drawn);
  if (last) pen.drawn.push({ ...last, ...corner });
  pen.at = to;
  return true;
}

/** The closed line a pen has drawn, its corners rounded; null where it stays open or can't be rounded, which is reported. */
export function closePen(pen: Pen, context: DesignContext): DrawnSegment[] | null {
  const last = pen.drawn.at(-1);
  const gap = distance(pen.at, pen.start);
  if (last && gap <= placeTolerance) return roundChain(pen.drawn, context);
  const message = last
    ? words`The outline ends ${measure.given(gap)} from its start. Close it with \`line to start\`.`
    : 'Nothing is drawn from this start. Add lines, arcs or curves that come back to it.';
  const related = last ? [{ range: pen.startRange, message: 'It starts here.' }] : [];
  context.report(problemAt('outlineNotClosed', last?.range ?? pen.startRange, message, related));
  return null;
}

/** An end that is at the start within the tolerance is the start itself. */
function endOf(end: StepEnd, pen: Pen, context: DesignContext): Point | null {
  const to = end ? readPoint(end, context) : pen.start;
  return to && distance(to, pen.start) <= placeTolerance ? pen.start : to;
}

function segmentsOf(step: PenStep, from: Point, to: Point, context: DesignContext): PathSegment[] | null {
  switch (step.kind) {
    case 'line':
      return [{ kind: 'line', from, to }];
    case 'arc': {
      const arc = arcOf(step, from, to, context);
      return arc && [arc];
    }
    case 'spline':
      return splineOf(step, from, to, context);
    case 'curve': {
      const [one, two] = step.controls;
      const first = readPoint(one, context);
      if (!two) return first && [{ kind: 'quadratic', from, control: first, to }];
      const second = readPoint(two, context);
      return first && second && [{ kind: 'cubic', from, control1: first, control2: second, to }];
    }
  }
}

function arcOf(step: ArcStep, from: Point, to: Point, context: DesignContext): PathSegment | null {
  const { form } = step;
  const apart = distance(from, to);
  if (apart === 0) {
    const message = 'An arc cannot end where it begins. Draw a `circle`, or two arcs.';
    context.report(problemAt('impossibleArc', step.range, message));
    return null;
  }
  switch (form.kind) {
    case 'arc by radius': {
      const radius = readLength(form.radius, 'radius', 'positive', context);
      if (radius === null) return null;
      const arc = arcByRadius(from, to, radius, form.turn, form.large);
      const message = words`The ends are ${measure.given(apart)} apart, so the radius must be ${measure.given(apart / 2)} or more. Give a larger one.`;
      if (!arc) context.report(problemAt('impossibleArc', form.radius.range, message));
      return arc;
    }
    case 'arc through': {
      const point = readPoint(form.point, context);
      if (!point) return null;
      const arc = arcThrough(from, point, to);
      const message =
        'This point lies on the straight line through the ends, so no arc goes through it. Move it aside.';
      if (!arc) context.report(problemAt('impossibleArc', form.point.range, message));
      return arc;
    }
    case 'arc by rise': {
      const rise = readLength(form.rise, 'rise', 'positive', context);
      return rise === null ? null : arcByRise(from, to, rise, form.turn);
    }
  }
}

function splineOf(step: SplineStep, from: Point, to: Point, context: DesignContext): PathSegment[] | null {
  const through = readApart(step.through, [from], context);
  if (!through) return null;
  const last = step.through.at(-1);
  const end = through.at(-1);
  if (last && end && distance(end, to) <= placeTolerance) {
    context.report(problemAt('repeatedPoint', last.range, samePoint));
    return null;
  }
  return openSpline([from, ...through, to]);
}

const samePoint = 'This is the point next to it again. Take it out or move it.';

/** The points, each apart from the one before, the first from the last of `before`; null where one is broken, which is reported. */
export function readApart(
  points: readonly PointSyntax[],
  before: readonly Point[],
  context: DesignContext,
): Point[] | null {
  const read: Point[] = [];
  let isSound = true;
  for (const point of points) {
    const here = readPoint(point, context);
    const last = read.at(-1) ?? before.at(-1);
    if (here && last && distance(here, last) <= placeTolerance) {
      context.report(problemAt('repeatedPoint', point.range, samePoint));
      isSound = false;
    } else if (here) read.push(here);
    else isSound = false;
  }
  return isSound ? read : null;
}
