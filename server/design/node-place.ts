/** Places of a motif's nodes: how they are constructed, and where that is in the polygon of a cell or part. */
import { centroidOf } from '../geometry/polygons.ts';
import { leftDistance } from '../geometry/lines.ts';
import {
  add,
  between,
  cross,
  distance,
  type Point,
  quarterTurn,
  scale,
  subtract,
  turned,
  unit,
} from '../geometry/point.ts';
import { arithmeticTolerance, isZeroLength, placeTolerance } from '../geometry/tolerance.ts';

/** A point of a cell. Corners and edges count from 1; edge n runs from corner n to the next. */
export type NodePlace =
  | { readonly kind: 'corner'; readonly corner: number }
  | { readonly kind: 'along'; readonly edge: number; readonly fraction: number }
  | { readonly kind: 'centroid' }
  | { readonly kind: 'incentre' }
  | { readonly kind: 'between'; readonly first: NodePlace; readonly second: NodePlace; readonly fraction: number }
  | { readonly kind: 'mirrored'; readonly place: NodePlace; readonly over: NodeLine }
  | { readonly kind: 'turned'; readonly place: NodePlace; readonly angle: number; readonly about: NodePlace }
  | { readonly kind: 'intersection'; readonly first: NodeLine; readonly second: NodeLine };

/** The line without ends through two places. */
export type NodeLine = readonly [from: NodePlace, to: NodePlace];

/** Where a node lies, or null when the polygon has no such corner or edge. */
export function placeNode(place: NodePlace, ring: readonly Point[]): Point | null {
  switch (place.kind) {
    case 'corner':
      return ring[place.corner - 1] ?? null;
    case 'along': {
      const from = ring[place.edge - 1];
      const to = ring[place.edge % ring.length];
      return from && to ? between(from, to, place.fraction) : null;
    }
    case 'centroid':
      return centroidOf(ring);
    case 'incentre':
      return incentreOf(ring);
    case 'between': {
      const first = placeNode(place.first, ring);
      const second = placeNode(place.second, ring);
      return first && second ? between(first, second, place.fraction) : null;
    }
    case 'mirrored': {
      const point = placeNode(place.place, ring);
      const line = placeLine(place.over, ring);
      return point && line && mirroredOver(point, line);
    }
    case 'turned': {
      const point = placeNode(place.place, ring);
      const about = placeNode(place.about, ring);
      return point && about && add(about, turned(subtract(point, about), place.angle));
    }
    case 'intersection': {
      const first = placeLine(place.first, ring);
      const second = placeLine(place.second, ring);
      return first && second && meetingOf(first, second);
    }
  }
}

/** Why a place that `placeNode` finds nowhere is none, and what to do: the innermost that fails. */
export function withoutPlace(place: NodePlace, ring: readonly Point[]): string {
  switch (place.kind) {
    case 'corner':
      return `it has no corner ${place.corner}; use its corners 1 to ${ring.length}`;
    case 'along':
      return `it has no edge ${place.edge}; use its edges 1 to ${ring.length}`;
    case 'incentre':
      return 'no one circle touches all its sides; use its centroid';
    case 'centroid':
    case 'between':
    case 'mirrored':
    case 'turned':
    case 'intersection': {
      const broken = placesWithin(place).find((inner) => !placeNode(inner, ring));
      if (broken) return withoutPlace(broken, ring);
      return 'two of the lines that it is placed by never meet, or have one point for both ends; choose other lines';
    }
  }
}

/** The places by which a place is found. */
function placesWithin(place: NodePlace): readonly NodePlace[] {
  switch (place.kind) {
    case 'between':
      return [place.first, place.second];
    case 'mirrored':
      return [place.place, ...place.over];
    case 'turned':
      return [place.place, place.about];
    case 'intersection':
      return [...place.first, ...place.second];
    case 'corner':
    case 'along':
    case 'centroid':
    case 'incentre':
      return [];
  }
}

/** A line by a point and the unit vector along it. */
interface Line {
  readonly from: Point;
  readonly along: Point;
}

/** Null where one of the two places is none, or both are one. */
function placeLine([start, end]: NodeLine, ring: readonly Point[]): Line | null {
  const from = placeNode(start, ring);
  const to = placeNode(end, ring);
  return from && to && distance(from, to) > placeTolerance ? { from, along: unit(subtract(to, from)) } : null;
}

function mirroredOver(point: Point, { from, along }: Line): Point {
  const aside = leftDistance(point, from, along);
  return subtract(point, scale(quarterTurn(along), 2 * aside));
}

/** Where two lines meet; null for parallel ones. */
function meetingOf(first: Line, second: Line): Point | null {
  const across = cross(first.along, second.along);
  if (Math.abs(across) <= arithmeticTolerance) return null;
  const reach = cross(subtract(second.from, first.from), second.along) / across;
  return add(first.from, scale(first.along, reach));
}

/**
 * Centre of the inscribed circle: where the bisectors of the first two corners meet, if every side is
 * equally far from there (Euclid IV.4 for the triangle). Null for a polygon without such a circle.
 */
function incentreOf(ring: readonly Point[]): Point | null {
  const bisectors = ring.slice(0, 2).map((corner, index) => {
    const next = unit(subtract(ring[index + 1] ?? corner, corner));
    const before = unit(subtract(ring[(index + ring.length - 1) % ring.length] ?? corner, corner));
    return { corner, along: unit(add(next, before)) };
  });
  const [first, second] = bisectors;
  if (!first || !second) return null;
  const reach = cross(subtract(second.corner, first.corner), second.along) / cross(first.along, second.along);
  const centre = add(first.corner, scale(first.along, reach));
  const distances = ring.map((corner, index) =>
    leftDistance(centre, corner, unit(subtract(ring[(index + 1) % ring.length] ?? corner, corner))),
  );
  return distances.every((each) => isZeroLength(each - (distances[0] ?? each))) ? centre : null;
}
