/** Where closed chains of straight edges cross or touch themselves or each other. */
import { between, cross, dot, subtract } from '../../geometry/point.ts';
import type { Point } from '../../geometry/point.ts';

/** An edge of ring `ring`, `place` along it of `count`; `owner` is whatever the caller drew it from. */
export interface RingEdge<Owner> {
  readonly from: Point;
  readonly to: Point;
  readonly ring: number;
  readonly place: number;
  readonly count: number;
  readonly owner: Owner;
}

export interface Crossing<Owner> {
  readonly first: RingEdge<Owner>;
  readonly second: RingEdge<Owner>;
  /** A point both have. */
  readonly at: Point;
}

/**
 * The first crossing found; null where there is none. Neighbours of one ring share their corner and cross only
 * by running back over each other. Edges are swept from left to right (Shamos and Hoey's order), so only those
 * whose widths overlap are compared.
 */
export function findCrossing<Owner>(edges: readonly RingEdge<Owner>[]): Crossing<Owner> | null {
  const sorted = [...edges].sort((first, second) => leftOf(first) - leftOf(second));
  let open: RingEdge<Owner>[] = [];
  for (const edge of sorted) {
    const left = leftOf(edge);
    open = open.filter((other) => Math.max(other.from.x, other.to.x) >= left);
    for (const other of open) {
      const at = commonPoint(edge, other);
      if (at) return { first: other, second: edge, at };
    }
    open.push(edge);
  }
  return null;
}

const leftOf = ({ from, to }: RingEdge<unknown>): number => Math.min(from.x, to.x);

function commonPoint(first: RingEdge<unknown>, second: RingEdge<unknown>): Point | null {
  if (first.ring === second.ring) {
    if ((first.place + 1) % first.count === second.place) return runsBack(first, second) ? second.from : null;
    if ((second.place + 1) % first.count === first.place) return runsBack(second, first) ? first.from : null;
  }
  return meeting(first, second);
}

/** Whether the edge after a corner lies back along the one before it. */
function runsBack(before: RingEdge<unknown>, after: RingEdge<unknown>): boolean {
  const one = subtract(before.to, before.from);
  const other = subtract(after.to, after.from);
  return cross(one, other) === 0 && dot(one, other) < 0;
}

/** A point that two closed straight edges have in common, by the signs of the triangles they make. */
function meeting({ from: a, to: b }: RingEdge<unknown>, { from: c, to: d }: RingEdge<unknown>): Point | null {
  if (Math.max(a.y, b.y) < Math.min(c.y, d.y) || Math.max(c.y, d.y) < Math.min(a.y, b.y)) return null;
  const [ca, cb] = [sideOf(c, d, a), sideOf(c, d, b)];
  const [ac, ad] = [sideOf(a, b, c), sideOf(a, b, d)];
  if (ca * cb < 0 && ac * ad < 0) return between(a, b, ca / (ca - cb));
  if (ca === 0 && isBetween(c, d, a)) return a;
  if (cb === 0 && isBetween(c, d, b)) return b;
  if (ac === 0 && isBetween(a, b, c)) return c;
  return ad === 0 && isBetween(a, b, d) ? d : null;
}

/** Twice the area of the triangle, positive where `point` lies on the left. */
const sideOf = (from: Point, to: Point, point: Point): number => cross(subtract(to, from), subtract(point, from));

const isBetween = (from: Point, to: Point, point: Point): boolean =>
  dot(subtract(from, point), subtract(to, point)) <= 0;
