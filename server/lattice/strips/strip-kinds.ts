/** Strips that are the same piece of wood: laid on one another by a turn in the plane or a flip. */
import type { StripStock } from '../../design/design-model.ts';
import { sameAngle, sameLength } from '../../geometry/tolerance.ts';
import type { NotchRun } from '../laid-panel.ts';
import { byPlace, compareRuns, flippedRuns, mirroredRuns, sameRuns, turnedRuns } from './notch-runs.ts';

export interface NotchedStrip {
  readonly stock: StripStock;
  readonly length: number;
  readonly notches: readonly NotchRun[];
}

export const turnedStrip = (strip: NotchedStrip): NotchedStrip => ({
  ...strip,
  notches: turnedRuns(strip.notches, strip.length),
});
export const flippedStrip = (strip: NotchedStrip): NotchedStrip => ({ ...strip, notches: flippedRuns(strip.notches) });
export const mirroredStrip = (strip: NotchedStrip): NotchedStrip => ({
  ...strip,
  notches: mirroredRuns(strip.notches),
});

/** Every way to lay the strip down. */
export function positionsOf(strip: NotchedStrip): NotchedStrip[] {
  const ordered = { ...strip, notches: [...strip.notches].sort(byPlace) };
  const flipped = flippedStrip(strip);
  return [ordered, turnedStrip(strip), flipped, turnedStrip(flipped)];
}

/** The one of its positions that stands for the kind. */
export const standardPosition = (strip: NotchedStrip): NotchedStrip =>
  positionsOf(strip).reduce((best, each) => (compareRuns(each.notches, best.notches) > 0 ? each : best));

/** Whether two strips in standard position are one kind. */
export const sameStrip = (a: NotchedStrip, b: NotchedStrip): boolean =>
  a.stock === b.stock && sameLength(a.length, b.length) && sameRuns(a.notches, b.notches);

/** How many more slants lean to the right than to the left, seen with their notch upward; negative for the left. */
export const leanOf = ({ notches }: Pick<NotchedStrip, 'notches'>): number =>
  notches.reduce((sum, { from, count, angle }) => {
    const side = from === 'above' ? 1 : -1;
    return sum + side * count * (sameAngle(angle, 90) ? 0 : Math.sign(90 - angle));
  }, 0);

/**
 * The hand of a strip that is not its own mirror image, null for one that is. Right: seen with a notch
 * upward, more slants lean to the right (less than 90° from the axis) than to the left.
 */
export function handOf(strip: NotchedStrip): 'left' | 'right' | null {
  const mirrored = positionsOf(mirroredStrip(strip));
  const standard = standardPosition(strip);
  if (mirrored.some((each) => sameStrip(each, standard))) return null;
  const lean = leanOf(strip);
  if (lean !== 0) return lean > 0 ? 'right' : 'left';
  const best = mirrored.reduce((one, each) => (compareRuns(each.notches, one.notches) > 0 ? each : one));
  return compareRuns(standard.notches, best.notches) > 0 ? 'right' : 'left';
}
