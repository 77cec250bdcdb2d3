/** Nodes of a motif by construction, in a cell's or part's polygon. */
import type { NodePlace } from '../design/design-model.ts';
import { leftDistance } from '../geometry/lines.ts';
import { add, between, cross, type Point, scale, subtract, unit } from '../geometry/point.ts';
import { isZeroLength } from '../geometry/tolerance.ts';
import { centroidOf } from './cell-classes.ts';

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
  }
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
