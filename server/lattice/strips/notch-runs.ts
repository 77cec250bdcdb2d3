/** Notches along a strip or piece: how they look when it is turned, flipped or mirrored, and when two rows are the same. */
import { arithmeticTolerance, kindLengthTolerance, sameAngle, sameLength } from '../../geometry/tolerance.ts';
import type { NotchRun } from '../laid-panel.ts';

/** Place of a run's last notch. */
const lastPlace = ({ first, step, count }: NotchRun): number => first + step * (count - 1);

/** Seen after a turn by 180° in the plane: end 2 becomes end 1, slants and sides stay. */
export const turnedRuns = (runs: readonly NotchRun[], length: number): NotchRun[] =>
  runs.map((run) => ({ ...run, first: length - run.first - run.step * (run.count - 1) })).sort(byPlace);

/** Seen after a flip about the axis: above becomes below, slants lean the other way, ends stay. */
export const flippedRuns = (runs: readonly NotchRun[]): NotchRun[] =>
  runs
    .map((run): NotchRun => ({ ...run, angle: 180 - run.angle, from: run.from === 'above' ? 'below' : 'above' }))
    .sort(byPlace);

/** Seen in a mirror, which no turn or flip need reach. */
export const mirroredRuns = (runs: readonly NotchRun[]): NotchRun[] =>
  runs.map((run) => ({ ...run, angle: 180 - run.angle })).sort(byPlace);

/** One order whatever the position: by side, slant, place of the first, place of the last, number. */
export function byPlace(a: NotchRun, b: NotchRun): number {
  if (a.from !== b.from) return a.from < b.from ? -1 : 1;
  if (!sameAngle(a.angle, b.angle)) return a.angle - b.angle;
  if (!sameLength(a.first, b.first)) return a.first - b.first;
  return sameLength(lastPlace(a), lastPlace(b)) ? a.count - b.count : lastPlace(a) - lastPlace(b);
}

/** Which of two ordered rows stands for its kind: positive when it is the first. */
export function compareRuns(a: readonly NotchRun[], b: readonly NotchRun[]): number {
  for (const [index, one] of a.entries()) {
    const two = b[index];
    if (!two) break;
    if (one.from !== two.from) return one.from === 'above' ? 1 : -1;
    if (!sameAngle(one.angle, two.angle)) return two.angle - one.angle;
    if (Math.abs(one.first - two.first) > kindLengthTolerance) return two.first - one.first;
    if (!sameLength(lastPlace(one), lastPlace(two))) return lastPlace(two) - lastPlace(one);
    if (one.count !== two.count) return one.count - two.count;
  }
  return a.length - b.length;
}

export const sameRuns = (a: readonly NotchRun[], b: readonly NotchRun[]): boolean =>
  a.length === b.length &&
  a.every((run, index) => {
    const other = b[index];
    return other !== undefined && sameRun(run, other);
  });

const sameRun = (a: NotchRun, b: NotchRun): boolean =>
  a.from === b.from &&
  a.count === b.count &&
  sameAngle(a.angle, b.angle) &&
  sameLength(a.first, b.first) &&
  sameLength(lastPlace(a), lastPlace(b)) &&
  sameLength(a.width, b.width) &&
  sameLength(a.depth, b.depth);

/** The places of a run, in mm from end 1. */
export const placesOfRun = ({ first, step, count }: NotchRun): number[] =>
  Array.from({ length: count }, (_, index) => first + index * step);

export interface Cut {
  readonly place: number;
  readonly depth: number;
  readonly from: 'above' | 'below';
}

/** Cuts in order of place, gathered into runs of equal depth, side and step. */
export function runsOfCuts(cuts: readonly Cut[], width: number, angle: number): NotchRun[] {
  const runs: NotchRun[] = [];
  let start = 0;
  while (start < cuts.length) {
    const end = endOfRun(cuts, start);
    const [first, last] = [cuts[start], cuts[end]];
    if (!first || !last) break;
    const count = end - start + 1;
    const step = count === 1 ? 0 : (last.place - first.place) / (count - 1);
    runs.push({ first: first.place, step, count, width, angle, depth: first.depth, from: first.from });
    start = end + 1;
  }
  return runs;
}

/** The last cut of the run that begins at `start`. */
function endOfRun(cuts: readonly Cut[], start: number): number {
  const [first, second] = [cuts[start], cuts[start + 1]];
  if (!first || !second) return start;
  const step = second.place - first.place;
  let end = start;
  for (let next = cuts[end + 1]; next; next = cuts[end + 1]) {
    const alike = next.from === first.from && Math.abs(next.depth - first.depth) <= arithmeticTolerance;
    if (!alike || Math.abs(next.place - first.place - step * (end + 1 - start)) > kindLengthTolerance) break;
    end++;
  }
  return end;
}

/**
 * How deep a member on `layer` is cut for one on `other`, and from which side, where the members on
 * `layers` meet. Two halve the depth. Of three each keeps a third: the lowest is cut two thirds deep
 * from above, the highest two thirds from below, the middle one a third for each of the others.
 */
export function lapCut(depth: number, layer: number, other: number, layers: readonly number[]): Omit<Cut, 'place'> {
  const from = layer < other ? 'above' : 'below';
  if (layers.length < 3) return { depth: depth / 2, from };
  const isMiddle = layers.some((each) => each < layer) && layers.some((each) => each > layer);
  return { depth: (depth * (isMiddle ? 1 : 2)) / 3, from };
}
