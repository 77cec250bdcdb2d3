/**
 * No-fit polygons: where the origin of one outline may not lie because it would overlap another, the Minkowski sum of
 * the one and the mirrored other (Art 1966; Cuninghame-Green 1989 for convex outlines: their edges in order of angle).
 */
import { EndType, FillRule, inflatePaths, JoinType, minkowskiSum, type Paths64, union } from 'clipper2-ts';
import { cross, type Point, subtract } from '../../geometry/point.ts';
import { isConvexRing } from '../../geometry/polygons.ts';

/** What two outlines keep between them, whole units. */
export interface NestGap {
  readonly width: number;
  /** How far a round corner's chords may leave its arc; corners are sharp where it is 0. */
  readonly arcTolerance: number;
}

/** A corner sharper than this many gaps is cut off, when corners are not round. */
const sharpLimit = 2;

/**
 * The rings (holes clockwise) inside which the origin of `moving` makes it come nearer than the gap to `fixed`, whose
 * origin lies at 0, 0. Both are simple, counter-clockwise, in whole units.
 */
export function noFitRings(fixed: readonly Point[], moving: readonly Point[], gap: NestGap): Point[][] {
  const opposite = moving.map(({ x, y }) => ({ x: 0 - x, y: 0 - y }));
  const sum = isConvexRing(fixed) && isConvexRing(opposite) ? [convexSum(fixed, opposite)] : solidSum(fixed, opposite);
  if (gap.width === 0) return toPoints(sum);
  const [join, reach] =
    gap.arcTolerance > 0 ? [JoinType.Round, gap.width + gap.arcTolerance] : [JoinType.Miter, gap.width];
  return toPoints(inflatePaths(sum, reach, join, EndType.Polygon, sharpLimit, gap.arcTolerance));
}

const toPoints = (paths: Paths64): Point[][] => paths.map((path) => path.map(({ x, y }) => ({ x, y })));

/** The sum along both boundaries, with its inside filled: where one outline lies wholly in the other. */
function solidSum(first: readonly Point[], second: readonly Point[]): Paths64 {
  const along = minkowskiSum([...second], [...first], true);
  return union([...along, movedBy(first, second[0]), movedBy(second, first[0])], FillRule.NonZero);
}

const movedBy = (ring: readonly Point[], by: Point | undefined): Point[] =>
  ring.map(({ x, y }) => ({ x: x + (by?.x ?? 0), y: y + (by?.y ?? 0) }));

/** Both rings walked at once from their lowest corners, always along the edge that has turned less. */
function convexSum(first: readonly Point[], second: readonly Point[]): Point[] {
  const [a, b] = [fromLowest(first), fromLowest(second)];
  const at = (ring: readonly Point[], index: number): Point => ring[index % ring.length] ?? { x: 0, y: 0 };
  const sum: Point[] = [];
  for (let i = 0, j = 0; i < a.length || j < b.length;) {
    const [here, there] = [at(a, i), at(b, j)];
    sum.push({ x: here.x + there.x, y: here.y + there.y });
    const turn = cross(subtract(at(a, i + 1), here), subtract(at(b, j + 1), there));
    const stepFirst = j >= b.length || (i < a.length && turn >= 0);
    const stepSecond = i >= a.length || (j < b.length && turn <= 0);
    if (stepFirst) i += 1;
    if (stepSecond) j += 1;
  }
  return sum;
}

function fromLowest(ring: readonly Point[]): Point[] {
  const lowest = ring.reduce((best, { x, y }, index) => {
    const low = ring[best] ?? { x, y };
    return y < low.y || (y === low.y && x < low.x) ? index : best;
  }, 0);
  return [...ring.slice(lowest), ...ring.slice(0, lowest)];
}
