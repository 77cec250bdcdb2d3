/** Strips that are the same piece of wood: laid on one another by a turn in the plane or a flip. */
import type { StripStock } from '../design/design-model.ts';
import { kindLengthTolerance, sameAngle, sameLength } from '../geometry/tolerance.ts';
import type { NotchRun } from './laid-panel.ts';

export interface NotchedStrip {
  readonly stock: StripStock;
  readonly length: number;
  readonly notches: readonly NotchRun[];
}

/** Turned by 180° in the plane: end 2 becomes end 1, slants and sides stay. */
export function turnedStrip(strip: NotchedStrip): NotchedStrip {
  return withNotches(strip, (run) => ({ ...run, first: strip.length - run.first - run.step * (run.count - 1) }));
}

/** Flipped about its own axis: above becomes below, slants lean the other way, ends stay. */
export function flippedStrip(strip: NotchedStrip): NotchedStrip {
  return withNotches(strip, (run) => ({ ...run, angle: 180 - run.angle, from: run.from === 'above' ? 'below' : 'above' }));
}

/** Its mirror image, which no turn or flip need reach. */
export const mirroredStrip = (strip: NotchedStrip): NotchedStrip =>
  withNotches(strip, (run) => ({ ...run, angle: 180 - run.angle }));

function withNotches(strip: NotchedStrip, change: (run: NotchRun) => NotchRun): NotchedStrip {
  return { ...strip, notches: [...strip.notches.map(change)].sort(byPlace) };
}

/** Runs in one order whatever the strip's position: by side, slant, then place. */
export function byPlace(a: NotchRun, b: NotchRun): number {
  if (a.from !== b.from) return a.from < b.from ? -1 : 1;
  if (!sameAngle(a.angle, b.angle)) return a.angle - b.angle;
  return a.first - b.first;
}

/** Every way to lay the strip down. */
export function positionsOf(strip: NotchedStrip): NotchedStrip[] {
  const sorted = withNotches(strip, (run) => run);
  const flipped = flippedStrip(strip);
  return [sorted, turnedStrip(strip), flipped, turnedStrip(flipped)];
}

/** The one of its positions that stands for the kind: the greatest in `comparePositions`. */
export const standardPosition = (strip: NotchedStrip): NotchedStrip =>
  positionsOf(strip).reduce((best, each) => (comparePositions(each, best) > 0 ? each : best));

function comparePositions(a: NotchedStrip, b: NotchedStrip): number {
  for (let index = 0; index < a.notches.length; index++) {
    const [one, two] = [a.notches[index], b.notches[index]];
    if (!one || !two) break;
    if (one.from !== two.from) return one.from === 'above' ? 1 : -1;
    if (!sameAngle(one.angle, two.angle)) return two.angle - one.angle;
    if (Math.abs(one.first - two.first) > kindLengthTolerance) return two.first - one.first;
    if (one.count !== two.count) return one.count - two.count;
  }
  return a.notches.length - b.notches.length;
}

/** Whether two strips in standard position are one kind. */
export function sameStrip(a: NotchedStrip, b: NotchedStrip): boolean {
  return (
    a.stock === b.stock &&
    sameLength(a.length, b.length) &&
    a.notches.length === b.notches.length &&
    a.notches.every((run, index) => {
      const other = b.notches[index];
      return other !== undefined && sameRun(run, other);
    })
  );
}

const sameRun = (a: NotchRun, b: NotchRun): boolean =>
  a.from === b.from &&
  a.count === b.count &&
  sameAngle(a.angle, b.angle) &&
  sameLength(a.first, b.first) &&
  sameLength(a.first + a.step * (a.count - 1), b.first + b.step * (b.count - 1)) &&
  sameLength(a.width, b.width) &&
  sameLength(a.depth, b.depth);

/**
 * The hand of a strip that is not its own mirror image, null for one that is. Right: seen with a notch
 * upward, more slants lean to the right (less than 90° from the axis) than to the left.
 */
export function handOf(strip: NotchedStrip): 'left' | 'right' | null {
  const mirrored = positionsOf(mirroredStrip(strip));
  const standard = standardPosition(strip);
  if (mirrored.some((each) => sameStrip(each, standard))) return null;
  const lean = strip.notches.reduce((sum, run) => {
    const side = run.from === 'above' ? 1 : -1;
    return sum + side * run.count * (sameAngle(run.angle, 90) ? 0 : Math.sign(90 - run.angle));
  }, 0);
  if (lean !== 0) return lean > 0 ? 'right' : 'left';
  const best = mirrored.reduce((one, each) => (comparePositions(each, one) > 0 ? each : one));
  return comparePositions(standard, best) > 0 ? 'right' : 'left';
}
