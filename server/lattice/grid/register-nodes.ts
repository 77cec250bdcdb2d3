/** Nodes by which a template is laid on its lattice: three inside the outline, as far apart as they come. */
import { maximum } from '../../geometry/numbers.ts';
import { cross, direction, dot, type Point, subtract } from '../../geometry/point.ts';
import { grownRings } from '../../geometry/grow-rings.ts';
import { type Region, regionHolds, regionOf } from '../../geometry/region.ts';
import { rounded } from '../../geometry/tolerance.ts';
import { familiesThrough, nodesWithin } from './lattice-nodes.ts';
import type { LineFamily } from './grid-lines.ts';

/** The outermost nodes are looked for in so many directions. */
const directions = 24;

/** Nodes so near to the outline are left alone while there are others: a mark there would stand on the lines. */
const clearOfEdge = 8;

/**
 * The three nodes that span the largest triangle, the lowest first (of equals the leftmost), then counter-clockwise; fewer where
 * there are not so many, or none off one line. Of a three-way grid only nodes count that all three families pass.
 */
export function registerNodes(families: readonly LineFamily[], region: Region): Point[] {
  const inside = nodesWithin(families, region.bounds).filter((node) => regionHolds(region, node));
  const clear = regionOf(grownRings(region.rings, -clearOfEdge, 'round'));
  const apart = inside.filter((node) => regionHolds(clear, node));
  const nodes = apart.length < 3 ? inside : apart;
  const most = Math.max(0, maximum(nodes.map((node) => familiesThrough(families, node).length)));
  const outermost = extremes(nodes.filter((node) => familiesThrough(families, node).length === most));
  const triples = outermost.flatMap((first, index) =>
    outermost
      .slice(index + 1)
      .flatMap((second, later) => outermost.slice(index + later + 2).map((third) => [first, second, third] as const)),
  );
  const largest = triples.reduce<readonly Point[]>(
    (best, triple) => (rounded(spanOf(triple) - spanOf(best), 3) > 0 ? triple : best),
    outermost.slice(0, 2),
  );
  return inOrder(largest);
}

/** Twice the area of the triangle; 0 of fewer than three points. */
function spanOf(points: readonly Point[]): number {
  const [a, b, c] = points;
  return a && b && c ? Math.abs(cross(subtract(b, a), subtract(c, a))) : 0;
}

/** The farthest node in each direction, each once, in the order of the nodes. */
function extremes(nodes: readonly Point[]): Point[] {
  const found = new Set<Point>();
  for (let step = 0; step < directions; step++) {
    const along = direction((360 / directions) * step);
    const farthest = nodes.reduce<Point | null>(
      (best, node) => (best === null || rounded(dot(along, node) - dot(along, best), 3) > 0 ? node : best),
      null,
    );
    if (farthest) found.add(farthest);
  }
  return [...found];
}

function inOrder(points: readonly Point[]): Point[] {
  const sorted = [...points].sort((a, b) => rounded(a.y - b.y, 3) || a.x - b.x);
  const [first, second, third] = sorted;
  if (!first || !second || !third) return sorted;
  return cross(subtract(second, first), subtract(third, first)) > 0 ? sorted : [first, third, second];
}
