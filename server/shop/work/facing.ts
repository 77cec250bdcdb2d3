/** How two outlines in one plane stand to each other: overlap, or gap and the edge they share. Lengths mm, areas mm². */
import { centroidOf } from '../placed-parts.ts';
import { coarserRing } from '../../geometry/coarser-ring.ts';
import { maximum, minimum, sum } from '../../geometry/numbers.ts';
import { between, direction, distance, dot, type Point } from '../../geometry/point.ts';
import { areaOf, boundsMeet, boundsOf, grownBounds, intersectionOf } from '../../geometry/polygons.ts';
import { distanceToSegment } from '../../geometry/region.ts';
import { drawingTolerance } from '../../geometry/tolerance.ts';

type Rings = readonly (readonly Point[])[];

/** Edges nearer than this are meant to meet, and are glued where they are no further apart than a glue line: common practice. */
const meetingReach = 5;
const glueLine = 0.2;

export interface Facing {
  readonly at: Point;
  /** How deep one reaches into the other; 0 where they do not overlap. */
  readonly overlap: number;
  readonly overlapArea: number;
  /** Least distance between the edges, 0 where they overlap. */
  readonly gap: number;
  /** Length of edge no further from the other than a glue line. */
  readonly contact: number;
}

/** Null where they are too far apart to be meant to meet. Curves are followed within the drawing tolerance. */
export function facingOf(first: Rings, second: Rings): Facing | null {
  const reach = grownBounds(boundsOf(first.flat()), meetingReach);
  if (!boundsMeet(reach, boundsOf(second.flat()))) return null;
  const [one, two] = [first.map(coarserRing), second.map(coarserRing)];
  const common = intersectionOf(one, two);
  const overlapArea = areaOf(common);
  const overlap = maximum([0, ...common.map(leastWidth)]);
  if (overlap > 2 * drawingTolerance)
    return { at: centroidOf(common) ?? { x: 0, y: 0 }, overlap, overlapArea, gap: 0, contact: contactOf(one, two) };
  const { at, gap } = nearest(one, two);
  return gap > meetingReach ? null : { at, overlap: 0, overlapArea: 0, gap, contact: contactOf(one, two) };
}

/** Area that two outlines in different planes share: the face one is glued to the other with. */
export const sharedArea = (first: Rings, second: Rings): number =>
  boundsMeet(boundsOf(first.flat()), boundsOf(second.flat()))
    ? areaOf(intersectionOf(first.map(coarserRing), second.map(coarserRing)))
    : 0;

const halfTurn = 180;

/** The narrowest of a shape's widths in directions a degree apart. */
const leastWidth = (ring: readonly Point[]): number =>
  minimum(
    Array.from({ length: halfTurn }, (_, angle) => {
      const reaches = ring.map((point) => dot(point, direction(angle)));
      return maximum(reaches) - minimum(reaches);
    }),
  );

const edgesOf = (rings: Rings): (readonly [Point, Point])[] =>
  rings.flatMap((ring) => ring.map((from, index) => [from, ring[(index + 1) % ring.length] ?? from] as const));

function nearest(one: Rings, two: Rings): { at: Point; gap: number } {
  const from = (points: Rings, others: Rings): { at: Point; gap: number }[] =>
    points.flat().map((at) => ({ at, gap: distanceTo(at, edgesOf(others)) }));
  return [...from(one, two), ...from(two, one)].reduce((best, each) => (each.gap < best.gap ? each : best), {
    at: { x: 0, y: 0 },
    gap: Infinity,
  });
}

const distanceTo = (point: Point, edges: readonly (readonly [Point, Point])[]): number =>
  minimum(edges.map(([from, to]) => distanceToSegment(point, from, to)));

/** Edges are looked at in steps of about a millimetre. */
function contactOf(one: Rings, two: Rings): number {
  const others = edgesOf(two);
  return sum(
    edgesOf(one).map(([from, to]) => {
      const length = distance(from, to);
      const steps = Math.max(1, Math.ceil(length));
      const near = Array.from({ length: steps }, (_, step) => between(from, to, (step + 0.5) / steps)).filter(
        (point) => distanceTo(point, others) <= glueLine,
      );
      return (near.length * length) / steps;
    }),
  );
}
