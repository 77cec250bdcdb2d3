/** Whether closed lines make an outline: free of crossings, each round an area, one outer line with holes in it. */
import { measure, words } from '../../../grammar/words.ts';
import { problemAt } from '../../../grammar/problems/problem-catalogue.ts';
import { flattenContour } from '../../geometry/flatten-path.ts';
import { contourArea } from '../../geometry/measure-path.ts';
import type { Contour } from '../../geometry/path.ts';
import { reversed } from '../../geometry/path-parts.ts';
import { between, type Point } from '../../geometry/point.ts';
import { type Region, regionHolds, regionOf } from '../../geometry/region.ts';
import { areaTolerance } from '../../geometry/tolerance.ts';
import type { DesignContext } from '../design-context.ts';
import { contourOf } from './drawn-segment.ts';
import type { DrawnChain, DrawnSegment } from './drawn-segment.ts';
import { findCrossing } from './self-crossing.ts';
import type { RingEdge } from './self-crossing.ts';

export function reportCrossing(chains: readonly DrawnChain[], context: DesignContext): boolean {
  const crossing = findCrossing(chains.flatMap(edgesOf));
  if (!crossing) return false;
  const [first, second] = [crossing.first, crossing.second].sort((a, b) => a.owner.range.start - b.owner.range.start);
  if (!first || !second) return false;
  const { x, y } = crossing.at;
  const message = words`The outline crosses or touches itself near ${measure.place({ x, y })}. Move the ends or controls so that it goes round once.`;
  const related =
    first.owner.range === second.owner.range ? [] : [{ range: first.owner.range, message: 'It meets this part.' }];
  context.report(problemAt('outlineCrossesItself', second.owner.range, message, related));
  return true;
}

function edgesOf(chain: DrawnChain, ring: number): RingEdge<DrawnSegment>[] {
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

export function reportEmpty(chains: readonly DrawnChain[], context: DesignContext): boolean {
  const empty = chains.find((chain) => Math.abs(contourArea(contourOf(chain))) <= areaTolerance);
  const range = empty?.at(-1)?.range;
  if (!range) return false;
  context.report(problemAt('outlineNotClosed', range, 'This encloses no area. Draw round an area of wood.'));
  return true;
}

/** Closed lines by area, the largest first. */
export const bySize = (chains: readonly DrawnChain[]): DrawnChain[] =>
  [...chains].sort(
    (first, second) => Math.abs(contourArea(contourOf(second))) - Math.abs(contourArea(contourOf(first))),
  );

/** A point of a closed line where it touches no other: two may have a corner in common, but never an edge. */
function pointOf({ rings }: Region): Point | null {
  const [first, second] = rings[0] ?? [];
  return first && second ? between(first, second, 0.5) : null;
}

/** Every line but the largest must lie inside it and outside the others; the first that doesn't, null where all do. */
export function strayChain(sorted: readonly DrawnChain[]): DrawnChain | null {
  if (sorted.length < 2) return null;
  const [outer, ...holes] = sorted.map((chain) => regionOf([flattenContour(contourOf(chain))]));
  const stray = holes.findIndex((hole, index) => {
    const point = pointOf(hole);
    if (!point || !outer) return false;
    return !regionHolds(outer, point) || holes.some((other, place) => place < index && regionHolds(other, point));
  });
  return sorted[stray + 1] && stray >= 0 ? (sorted[stray + 1] ?? null) : null;
}

/** Lines in an even number of others counter-clockwise, those in an odd number (holes) clockwise. */
export function orientedContours(chains: readonly DrawnChain[]): Contour[] {
  const contours = chains.map(contourOf);
  if (contours.length < 2) return contours.map((contour) => oriented(contour, true));
  const regions = contours.map((contour) => regionOf([flattenContour(contour)]));
  return contours.map((contour, index) => {
    const own = regions[index];
    const point = own && pointOf(own);
    const around = regions.filter((region, other) => other !== index && point && regionHolds(region, point));
    return oriented(contour, around.length % 2 === 0);
  });
}

/** The contour counter-clockwise, or clockwise. */
const oriented = (contour: Contour, counterClockwise: boolean): Contour =>
  contourArea(contour) > 0 === counterClockwise ? contour : [...contour].reverse().map(reversed);
