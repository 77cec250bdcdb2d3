/** The parts of an edge that face another thing. Lengths mm. */
import { flattenContour } from '../../geometry/flatten-path.ts';
import { grownRings } from '../../geometry/grow-rings.ts';
import { stretchesWithin } from '../../geometry/lines.ts';
import type { Contour } from '../../geometry/path.ts';
import { add, distance, type Point, scale, subtract, unit } from '../../geometry/point.ts';
import { placeTolerance } from '../../geometry/tolerance.ts';
import type { FacedPart } from './faced-parts.ts';

/** Every stretch of the contours that comes as near to the part as what is left for fitting, as an open chain of points. */
export function stretchesNear(contours: readonly Contour[], { rings, leave }: FacedPart): Point[][] {
  const near = grownRings(rings, leave, 'round');
  return contours.flatMap((contour) => {
    const corners = flattenContour(contour);
    const chains: Point[][] = [];
    corners.forEach((from, index) => {
      const to = corners[(index + 1) % corners.length] ?? from;
      for (const [start, end] of edgeWithin(near, from, to)) addStretch(chains, start, end);
    });
    return joinedRound(chains);
  });
}

function edgeWithin(rings: readonly (readonly Point[])[], from: Point, to: Point): [Point, Point][] {
  const length = distance(from, to);
  if (length === 0) return [];
  const along = unit(subtract(to, from));
  return stretchesWithin(rings, from, along).flatMap(([start, end]): [Point, Point][] => {
    const [first, last] = [Math.max(0, start), Math.min(length, end)];
    return last - first > placeTolerance ? [[add(from, scale(along, first)), add(from, scale(along, last))]] : [];
  });
}

/** Longer by a stretch that begins where the last one ends; else a chain of its own. */
function addStretch(chains: Point[][], from: Point, to: Point): void {
  const chain = chains.at(-1);
  const end = chain?.at(-1);
  if (chain && end && distance(end, from) <= placeTolerance) chain.push(to);
  else chains.push([from, to]);
}

/** The first and the last chain may be one. */
function joinedRound(chains: readonly Point[][]): Point[][] {
  const [first, last] = [chains[0], chains.at(-1)];
  const [start, end] = [first?.[0], last?.at(-1)];
  if (!first || !last || first === last || !start || !end || distance(start, end) > placeTolerance) return [...chains];
  return [[...last, ...first.slice(1)], ...chains.slice(1, -1)];
}
