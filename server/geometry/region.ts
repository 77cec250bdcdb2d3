/** A region bounded by rings, with its edges sorted into bands so that questions about a place stay local. */
import { distance, dot, type Point, subtract } from './point.ts';
import { type Bounds, boundsOf, clipToHalfPlanes, type HalfPlane, isConvexRing } from './polygons.ts';
import { clippingMargin, placeTolerance } from './tolerance.ts';

interface Edge {
  readonly from: Point;
  readonly to: Point;
}

/** Outer rings counter-clockwise, holes clockwise. */
export interface Region {
  readonly rings: readonly (readonly Point[])[];
  readonly bounds: Bounds;
  readonly edges: readonly Edge[];
  /** Edges by horizontal band of `bandHeight`, from the bottom of the bounds. */
  readonly bands: readonly (readonly Edge[])[];
  readonly bandHeight: number;
  readonly isConvex: boolean;
}

export function regionOf(rings: readonly (readonly Point[])[]): Region {
  const bounds = boundsOf(rings.flat());
  const edges = rings.flatMap((ring) =>
    ring.map((from, index): Edge => ({ from, to: ring[(index + 1) % ring.length] ?? from })),
  );
  const bandCount = Math.max(1, Math.ceil(Math.sqrt(edges.length)) * 2);
  const bandHeight = Math.max((bounds.top - bounds.bottom) / bandCount, placeTolerance);
  const bands: Edge[][] = Array.from({ length: bandCount + 1 }, () => []);
  for (const edge of edges) {
    const low = bandOf(Math.min(edge.from.y, edge.to.y) - placeTolerance);
    const high = bandOf(Math.max(edge.from.y, edge.to.y) + placeTolerance);
    for (let band = Math.max(0, low); band <= Math.min(bandCount, high); band++) bands[band]?.push(edge);
  }
  return { rings, bounds, edges, bands, bandHeight, isConvex: rings.length === 1 && isConvexRing(rings[0] ?? []) };

  function bandOf(y: number): number {
    return Math.floor((y - bounds.bottom) / bandHeight);
  }
}

/** Whether `point` lies in the region or within the place tolerance of its boundary (regions are closed). */
export function regionHolds(region: Region, point: Point): boolean {
  const { bounds, bands, bandHeight } = region;
  if (point.y < bounds.bottom - placeTolerance || point.y > bounds.top + placeTolerance) return false;
  if (point.x < bounds.left - placeTolerance || point.x > bounds.right + placeTolerance) return false;
  const band = Math.min(bands.length - 1, Math.max(0, Math.floor((point.y - bounds.bottom) / bandHeight)));
  let inside = false;
  for (const { from, to } of bands[band] ?? []) {
    if (distanceToSegment(point, from, to) <= placeTolerance) return true;
    if (from.y > point.y !== to.y > point.y) {
      const crossing = from.x + ((point.y - from.y) / (to.y - from.y)) * (to.x - from.x);
      if (crossing > point.x) inside = !inside;
    }
  }
  return inside;
}

export function distanceToSegment(point: Point, from: Point, to: Point): number {
  const along = subtract(to, from);
  const squared = dot(along, along);
  if (squared === 0) return distance(point, from);
  const fraction = Math.min(1, Math.max(0, dot(subtract(point, from), along) / squared));
  return Math.hypot(point.x - from.x - along.x * fraction, point.y - from.y - along.y * fraction);
}

/**
 * The region's rings cut to a box and a margin about it. Parts may stay joined by edges that run along
 * the cut and back; they lie in the margin, so what is clipped to the box itself is unharmed.
 */
export function localRings(region: Region, box: Bounds): Point[][] {
  const sides: HalfPlane[] = [
    { normal: { x: 1, y: 0 }, reach: box.right },
    { normal: { x: -1, y: 0 }, reach: -box.left },
    { normal: { x: 0, y: 1 }, reach: box.top },
    { normal: { x: 0, y: -1 }, reach: -box.bottom },
  ];
  return ringsWithin(region, sides);
}

/** The region's rings cut to every half-plane and a margin beyond, with the same reservation as `localRings`. */
export function ringsWithin(region: Region, sides: readonly HalfPlane[]): Point[][] {
  const wider = sides.map(({ normal, reach }) => ({ normal, reach: reach + clippingMargin }));
  return region.rings.map((ring) => clipToHalfPlanes(ring, wider)).filter((ring) => ring.length > 0);
}
