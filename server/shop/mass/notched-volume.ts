/** Volume of wood left in a notched bar. Lengths in mm, volumes in mm³. */
import { maximum } from '../../geometry/numbers.ts';
import { direction, type Point } from '../../geometry/point.ts';
import { clipToHalfPlanes, leftOf, signedArea } from '../../geometry/polygons.ts';
import type { NotchRun, Polygon } from '../../lattice/laid-panel.ts';
import { placesOfRun } from '../../lattice/strips/notch-runs.ts';

/** A bar seen from the front, convex, its axis along x at y = 0, `depth` thick. */
export interface NotchedBar {
  readonly outline: Polygon;
  readonly depth: number;
  readonly notches: readonly NotchRun[];
  /** Planed away from each face once all is assembled. */
  readonly flush: number;
}

/** One notch as seen from the front: what the blade takes of the outline, and how deep it still is after planing. */
interface Bite {
  readonly place: number;
  readonly reach: number;
  readonly notch: NotchRun;
  readonly shape: Polygon;
  readonly depth: number;
}

/**
 * What is left of `bar`: outline × depth less its notches, two notches of one node that share wood taken off once.
 * Notches from one face that overlap do so in pairs (the two slants of a three-way node), so that the shared volume is
 * that of the pair's common outline, as deep as the shallower; notches from above and below leave each other wood.
 */
export function notchedVolume({ outline, depth, notches, flush }: NotchedBar): number {
  const whole = signedArea(outline) * (depth - 2 * flush);
  return whole - facesBite(outline, notches, flush, 'above') - facesBite(outline, notches, flush, 'below');
}

function facesBite(outline: Polygon, notches: readonly NotchRun[], flush: number, face: NotchRun['from']): number {
  const bites = notches
    .filter(({ from, depth }) => from === face && depth > flush)
    .flatMap((notch) => placesOfRun(notch).map((place) => biteOf(outline, notch, place, flush)))
    .sort((a, b) => a.place - b.place);
  const furthest = Math.max(0, maximum(bites.map(({ reach }) => reach)));
  let taken = 0;
  bites.forEach((bite, index) => {
    taken += signedArea(bite.shape) * bite.depth;
    for (let next = index + 1; next < bites.length; next++) {
      const other = bites[next];
      if (!other || other.place - bite.place > bite.reach + furthest) break;
      taken -= sharedArea(bite, other) * Math.min(bite.depth, other.depth);
    }
  });
  return taken;
}

function biteOf(outline: Polygon, notch: NotchRun, place: number, flush: number): Bite {
  const shape = clipToHalfPlanes(outline, sidesOf(notch, place));
  const reach = Math.max(0, maximum(shape.map(({ x }) => Math.abs(x - place))));
  return { place, reach, notch, shape, depth: notch.depth - flush };
}

const sharedArea = (one: Bite, two: Bite): number =>
  signedArea(clipToHalfPlanes(one.shape, sidesOf(two.notch, two.place)));

/** The two sides of the blade's cut through the axis at `place`. */
function sidesOf({ angle, width }: NotchRun, place: number): ReturnType<typeof leftOf>[] {
  const along = direction(angle);
  const back: Point = { x: -along.x, y: -along.y };
  const half: Point = { x: (along.y * width) / 2, y: (-along.x * width) / 2 };
  return [leftOf({ x: place + half.x, y: half.y }, along), leftOf({ x: place - half.x, y: -half.y }, back)];
}
