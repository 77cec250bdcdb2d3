/** Outlines of the design: closed, free of crossings, outer line first. */
import { problemAt } from '../../grammar/problem-catalogue.ts';
import type { OutlineDeclaration } from '../../grammar/syntax-tree.ts';
import { flattenContour } from '../geometry/flatten-path.ts';
import { contourArea } from '../geometry/measure-path.ts';
import type { Contour, PathSegment } from '../geometry/path.ts';
import { regionHolds, regionOf } from '../geometry/region.ts';
import { areaTolerance } from '../geometry/tolerance.ts';
import type { DesignContext } from './design-context.ts';
import type { Outline } from './design-model.ts';
import { drawSteps } from './outline-steps.ts';
import type { DrawnSegment } from './outline-steps.ts';
import { reportMissing } from './pick-properties.ts';
import { findCrossing } from './self-crossing.ts';
import type { RingEdge } from './self-crossing.ts';

/** The outline a declaration draws; null where it is broken, which is reported here or where its text could not be read. */
export function buildOutline(outline: OutlineDeclaration, context: DesignContext): Outline | null {
  const chains = drawSteps(outline, context);
  if (!chains) return null;
  if (chains.length === 0) {
    reportMissing(outline, 'line', 'rectangle 300 x 200', context);
    return null;
  }
  if (reportCrossing(chains, context) || reportEmpty(chains, context)) return null;
  const contours = chains
    .map((chain) => chain.map(({ segment }) => segment))
    .sort((first, second) => Math.abs(contourArea(second)) - Math.abs(contourArea(first)));
  if (reportStray(chains, contours, context)) return null;
  return {
    name: outline.name.text,
    range: outline.range,
    nameRange: outline.name.range,
    contours: contours.map((contour, index) => oriented(contour, index === 0)),
  };
}

function reportCrossing(chains: readonly (readonly DrawnSegment[])[], context: DesignContext): boolean {
  const crossing = findCrossing(chains.flatMap(edgesOf));
  if (!crossing) return false;
  const [first, second] = [crossing.first, crossing.second].sort((a, b) => a.owner.range.start - b.owner.range.start);
  if (!first || !second) return false;
  const { x, y } = crossing.at;
  const message = `The outline crosses or touches itself near ${x.toFixed(1)}, ${y.toFixed(1)}. Move the ends or controls so that it goes round once.`;
  const related =
    first.owner.range === second.owner.range ? [] : [{ range: first.owner.range, message: 'It meets this part.' }];
  context.report(problemAt('outlineCrossesItself', second.owner.range, message, related));
  return true;
}

function edgesOf(chain: readonly DrawnSegment[], ring: number): RingEdge<DrawnSegment>[] {
  const corners = chain.flatMap((owner) => flattenContour([owner.segment]).map((point) => ({ point, owner })));
  return corners.map(({ point, owner }, place) => ({
    from: point,
    to: corners[(place + 1) % corners.length]?.point ?? point,
    ring,
    place,
    count: corners.length,
    owner,
  }));
}

function reportEmpty(chains: readonly (readonly DrawnSegment[])[], context: DesignContext): boolean {
  const empty = chains.find((chain) => Math.abs(contourArea(chain.map(({ segment }) => segment))) <= areaTolerance);
  const range = empty?.at(-1)?.range;
  if (!range) return false;
  context.report(problemAt('outlineNotClosed', range, 'This encloses no area. Draw round an area of wood.'));
  return true;
}

/** Every further line must lie inside the outer one and outside the other holes. */
function reportStray(
  chains: readonly (readonly DrawnSegment[])[],
  contours: readonly Contour[],
  context: DesignContext,
): boolean {
  const [outer, ...holes] = contours.map((contour) => regionOf([flattenContour(contour)]));
  const stray = holes.findIndex((hole, index) => {
    const point = hole.rings[0]?.[0];
    if (!point || !outer) return false;
    return !regionHolds(outer, point) || holes.some((other, place) => place < index && regionHolds(other, point));
  });
  if (stray < 0) return false;
  const segment = contours[stray + 1]?.[0];
  const drawn = chains.flat().find((candidate) => candidate.segment === segment);
  if (!drawn) return false;
  const message =
    'This lies outside the outer line or inside another hole. An outline is one line with holes in it: make a second outline of this.';
  context.report(problemAt('outlineCrossesItself', drawn.range, message));
  return true;
}

/** The contour counter-clockwise, or clockwise. */
function oriented(contour: Contour, counterClockwise: boolean): Contour {
  return contourArea(contour) > 0 === counterClockwise ? contour : [...contour].reverse().map(reversed);
}

function reversed(segment: PathSegment): PathSegment {
  const ends = { from: segment.to, to: segment.from };
  if (segment.kind === 'cubic') return { ...segment, ...ends, control1: segment.control2, control2: segment.control1 };
  if (segment.kind !== 'arc') return { ...segment, ...ends };
  return { ...segment, ...ends, startAngle: segment.startAngle + segment.sweep, sweep: -segment.sweep };
}
