/** No-fit polygons of every pair of variants, made when first asked for, and how deep a place lies in one. */
import { boundsOf } from '../../geometry/polygons.ts';
import type { Point } from '../../geometry/point.ts';
import type { Variant } from './nest-kind.ts';
import { type NestGap, noFitRings } from './no-fit-polygon.ts';

/** Rings as one row of numbers an edge (x, y, along x, along y, 1 ÷ length²), for the innermost loops. */
export interface NoFit {
  readonly rings: readonly (readonly Point[])[];
  readonly edges: Float64Array;
  readonly left: number;
  readonly right: number;
  readonly bottom: number;
  readonly top: number;
}

/** Numbers to an edge of a no-fit polygon. */
export const edgeSize = 5;

export class NoFitTable {
  private readonly known: (NoFit | undefined)[];
  private readonly count: number;
  readonly variants: readonly Variant[];
  private readonly gap: NestGap;

  constructor(variants: readonly Variant[], gap: NestGap) {
    this.variants = variants;
    this.gap = gap;
    this.count = variants.length;
    this.known = Array.from({ length: this.count * this.count });
  }

  /** Where the origin of `moving` may not lie, seen from the origin of `fixed`. */
  between(fixed: number, moving: number): NoFit {
    return this.known[fixed * this.count + moving] ?? this.make(fixed, moving);
  }

  private make(fixed: number, moving: number): NoFit {
    const rings = this.turnedPair(fixed, moving) ?? this.freshRings(fixed, moving);
    const made = noFitOf(rings);
    this.known[fixed * this.count + moving] = made;
    this.known[moving * this.count + fixed] ??= noFitOf(
      rings.map((ring) => ring.map(({ x, y }) => ({ x: -x, y: -y }))),
    );
    return made;
  }

  private freshRings(fixed: number, moving: number): readonly (readonly Point[])[] {
    return noFitRings(this.variants[fixed]?.ring ?? [], this.variants[moving]?.ring ?? [], this.gap);
  }

  /** The rings of two variants that are a known pair, both turned by the same quarter turns. */
  private turnedPair(fixed: number, moving: number): Point[][] | null {
    for (const quarters of [1, 2, 3]) {
      const [first, second] = [this.quartersBack(fixed, quarters), this.quartersBack(moving, quarters)];
      const known = first === null || second === null ? undefined : this.known[first * this.count + second];
      if (known) return known.rings.map((ring) => ring.map((point) => quarterTurned(point, quarters)));
    }
    return null;
  }

  private quartersBack(variant: number, quarters: number): number | null {
    const from = this.variants[variant];
    const wanted = ((from?.turn ?? 0) - 90 * quarters + 720) % 360;
    const index = this.variants.findIndex(({ kind, turn }) => kind === from?.kind && turn % 360 === wanted);
    return index < 0 ? null : index;
  }
}

function quarterTurned({ x, y }: Point, quarters: number): Point {
  if (quarters === 1) return { x: -y, y: x };
  return quarters === 2 ? { x: -x, y: -y } : { x: y, y: -x };
}

function noFitOf(rings: readonly (readonly Point[])[]): NoFit {
  const { left, right, bottom, top } = boundsOf(rings.flat());
  const edges = rings.flatMap((ring) =>
    ring.flatMap(({ x, y }, index) => {
      const next = ring[(index + 1) % ring.length] ?? { x, y };
      const [alongX, alongY] = [next.x - x, next.y - y];
      const squared = alongX * alongX + alongY * alongY;
      return squared === 0 ? [] : [x, y, alongX, alongY, 1 / squared];
    }),
  );
  return { rings, edges: Float64Array.from(edges), left, right, bottom, top };
}

/** How far a place must move, in any direction, to leave a no-fit polygon; 0 outside. */
export function depthIn({ edges, left, right, bottom, top }: NoFit, x: number, y: number): number {
  if (x <= left || x >= right || y <= bottom || y >= top) return 0;
  let inside = false;
  for (let at = 0; at < edges.length; at += edgeSize) {
    const offY = y - (edges[at + 1] ?? 0);
    const alongY = edges[at + 3] ?? 0;
    if (offY < 0 !== offY < alongY && ((edges[at + 2] ?? 0) * offY) / alongY > x - (edges[at] ?? 0)) inside = !inside;
  }
  return inside ? Math.sqrt(nearestSquared(edges, x, y)) : 0;
}

function nearestSquared(edges: Float64Array, x: number, y: number): number {
  let nearest = Infinity;
  for (let at = 0; at < edges.length; at += edgeSize) {
    const [offX, offY] = [x - (edges[at] ?? 0), y - (edges[at + 1] ?? 0)];
    const [alongX, alongY] = [edges[at + 2] ?? 0, edges[at + 3] ?? 0];
    const share = (offX * alongX + offY * alongY) * (edges[at + 4] ?? 0);
    const held = share < 0 ? 0 : share > 1 ? 1 : share;
    const [awayX, awayY] = [offX - held * alongX, offY - held * alongY];
    const squared = awayX * awayX + awayY * awayY;
    if (squared < nearest) nearest = squared;
  }
  return nearest;
}
