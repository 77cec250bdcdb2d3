/** The steps of an outline drawn one after the other. */
import { problemAt } from '../../grammar/problem-catalogue.ts';
import type { Problem } from '../../grammar/problem.ts';
import type { SourceRange } from '../../grammar/source-range.ts';
import type {
  ArcStep,
  OutlineDeclaration,
  OutlineStep,
  PathStep,
  RectangleStep,
  StepEnd,
} from '../../grammar/syntax-tree.ts';
import type { PathSegment } from '../geometry/path.ts';
import { distance } from '../geometry/point.ts';
import type { Point } from '../geometry/point.ts';
import { placeTolerance } from '../geometry/tolerance.ts';
import { arcByRadius, circleAbout } from './arc-geometry.ts';
import type { DesignContext } from './design-context.ts';
import { readPathData } from './path-data.ts';
import { readLength, readPoint } from './read-values.ts';

/** A segment with the words that drew it. */
export interface DrawnSegment {
  readonly segment: PathSegment;
  readonly range: SourceRange;
}

interface Pen {
  readonly start: Point;
  readonly startRange: SourceRange;
  at: Point;
  readonly drawn: DrawnSegment[];
}

/**
 * The closed chains the steps draw, in order; null where a step is broken or a chain stays open, which is reported.
 * Where a step could not be read, gaps say nothing: no chain is closed then.
 */
export function drawSteps(outline: OutlineDeclaration, context: DesignContext): DrawnSegment[][] | null {
  const chains: DrawnSegment[][] = [];
  const pens: Pen[] = [];
  let pen: Pen | null = null;
  for (const step of outline.properties) {
    if (step.kind === 'start') {
      const at = readPoint(step.at, context);
      if (!at) return null;
      pen = { start: at, startRange: step.range, at, drawn: [] };
      pens.push(pen);
    } else if (step.kind === 'line' || step.kind === 'arc' || step.kind === 'curve') {
      if (!pen && !outline.incomplete) context.report(withoutStart(step.keyword));
      if (!pen || !drawOn(pen, step, context)) return null;
    } else {
      pen = null;
      const whole = drawWhole(step, context);
      if (!whole) return null;
      chains.push(...whole);
    }
  }
  if (outline.incomplete) return null;
  const open = pens.filter((drawn) => !closeChain(drawn, context));
  return open.length > 0 ? null : [...pens.map(({ drawn }) => drawn), ...chains];
}

const withoutStart = (keyword: SourceRange): Problem =>
  problemAt('missingProperty', keyword, 'This line begins nowhere. Put `start x, y` before it.');

/** Whether a pen has come back to its start; if not, that is reported. */
function closeChain(pen: Pen, context: DesignContext): boolean {
  const last = pen.drawn.at(-1);
  const gap = distance(pen.at, pen.start);
  if (last && gap <= placeTolerance) return true;
  const message = last
    ? `The outline ends ${gap.toFixed(2)} mm from its start. Close it with \`line to start\`.`
    : 'Nothing is drawn from this start. Add lines, arcs or curves that come back to it.';
  const related = last ? [{ range: pen.startRange, message: 'It starts here.' }] : [];
  context.report(problemAt('outlineNotClosed', last?.range ?? pen.startRange, message, related));
  return false;
}

/** Draws one step on; false where it is broken. A step of no length draws nothing. */
function drawOn(
  pen: Pen,
  step: Extract<OutlineStep, { kind: 'line' | 'arc' | 'curve' }>,
  context: DesignContext,
): boolean {
  const from = pen.at;
  const to = endOf(step.to, pen, context);
  const segment = to && segmentOf(step, from, to, context);
  if (!to || !segment) return false;
  const idle = segment.kind === 'line' && from.x === to.x && from.y === to.y;
  if (!idle) pen.drawn.push({ segment, range: step.range });
  pen.at = to;
  return true;
}

/** An end that is at the start within the tolerance is the start itself. */
function endOf(end: StepEnd, pen: Pen, context: DesignContext): Point | null {
  const to = end ? readPoint(end, context) : pen.start;
  return to && distance(to, pen.start) <= placeTolerance ? pen.start : to;
}

function segmentOf(
  step: Extract<OutlineStep, { kind: 'line' | 'arc' | 'curve' }>,
  from: Point,
  to: Point,
  context: DesignContext,
): PathSegment | null {
  if (step.kind === 'line') return { kind: 'line', from, to };
  if (step.kind === 'arc') return arcOf(step, from, to, context);
  const [one, two] = step.controls;
  const first = readPoint(one, context);
  if (!two) return first && { kind: 'quadratic', from, control: first, to };
  const second = readPoint(two, context);
  return first && second && { kind: 'cubic', from, control1: first, control2: second, to };
}

function arcOf(step: ArcStep, from: Point, to: Point, context: DesignContext): PathSegment | null {
  const radius = readLength(step.radius, 'radius', 'positive', context);
  if (radius === null) return null;
  const arc = arcByRadius(from, to, radius, step.turn, step.large);
  if (!arc) {
    const apart = distance(from, to);
    const message =
      apart === 0
        ? 'An arc cannot end where it begins. Draw a `circle`, or two arcs.'
        : `The ends are ${apart.toFixed(2)} mm apart, so the radius must be ${(apart / 2).toFixed(2)} mm or more. Give a larger one.`;
    context.report(problemAt('impossibleArc', apart === 0 ? step.range : step.radius.range, message));
  }
  return arc;
}

/** The chains of a step that is closed in itself; null where it is broken. */
function drawWhole(
  step: Extract<OutlineStep, { kind: 'circle' | 'rectangle' | 'path' }>,
  context: DesignContext,
): DrawnSegment[][] | null {
  if (step.kind === 'path') return drawPath(step, context);
  const at = step.at ? readPoint(step.at, context) : { x: 0, y: 0 };
  const segments = step.kind === 'circle' ? circle() : rectangle(step, at, context);
  return segments && [segments.map((segment) => ({ segment, range: step.range }))];

  function circle(): PathSegment[] | null {
    const radius = step.kind === 'circle' ? readLength(step.radius, 'radius', 'positive', context) : null;
    return at && radius !== null ? circleAbout(at, radius) : null;
  }
}

function rectangle(step: RectangleStep, at: Point | null, context: DesignContext): PathSegment[] | null {
  const width = readLength(step.width, 'width', 'positive', context);
  const height = readLength(step.height, 'height', 'positive', context);
  if (!at || width === null || height === null) return null;
  const [left, right] = [at.x - width / 2, at.x + width / 2];
  const [bottom, top] = [at.y - height / 2, at.y + height / 2];
  const corners = [
    { x: left, y: bottom },
    { x: right, y: bottom },
    { x: right, y: top },
    { x: left, y: top },
  ];
  return corners.map((from, index) => ({ kind: 'line', from, to: corners[(index + 1) % corners.length] ?? from }));
}

function drawPath({ data }: PathStep, context: DesignContext): DrawnSegment[][] | null {
  const subpaths = readPathData(data.text);
  if (!subpaths) {
    const message = 'This is no SVG path data. Begin with `M x y` and go on with commands such as L, C, Q, A and Z.';
    context.report(problemAt('badPathData', data.range, message));
    return null;
  }
  const open = subpaths.find(({ start, end, closed }) => !closed && distance(start, end) > placeTolerance);
  if (open || subpaths.length === 0) {
    const message = open
      ? `The path ends ${distance(open.start, open.end).toFixed(2)} mm from its start. Close it with \`Z\`.`
      : 'The path draws nothing. Add lines or curves that enclose an area.';
    context.report(problemAt('outlineNotClosed', data.range, message));
    return null;
  }
  return subpaths.map(({ start, end, segments }) => {
    const closing: PathSegment[] =
      start.x === end.x && start.y === end.y ? [] : [{ kind: 'line', from: end, to: start }];
    return [...segments, ...closing].map((segment) => ({ segment, range: data.range }));
  });
}
