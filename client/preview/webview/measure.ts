/** Measuring between two points: what has been set, and how it reads. Points are in mm of the drawing. */
import type { LengthUnit } from '../../../server/language/preview-messages.ts';
import { lengthFigure, lengthText } from '../../../server/words/figures.ts';
import type { PagePoint } from './camera.ts';
import type { Snap } from './snap.ts';

export interface Measuring {
  readonly from: PagePoint | null;
  readonly to: PagePoint | null;
  /** Where the next point would be set, and what it holds on to. */
  readonly at: PagePoint | null;
  readonly snap: Snap | null;
}

export const measuringNothing: Measuring = { from: null, to: null, at: null, snap: null };

/** The pointer is at `at`, near `snap`. */
export const pointedAt = (measuring: Measuring, at: PagePoint | null, snap: Snap | null): Measuring => ({
  ...measuring,
  at: snap?.at ?? at,
  snap,
});

/** Sets the next point where the pointer is: the first, the second, or the first of a new measurement. */
export function pointSet(measuring: Measuring): Measuring {
  const { from, to, at } = measuring;
  if (at === null) return measuring;
  return from === null || to !== null ? { ...measuring, from: at, to: null } : { ...measuring, to: at };
}

/** "Distance 69.3 mm, across 60.0, up 34.6"; what to do next where nothing is measured yet. */
export function measuredText({ from, to, at }: Measuring, units: LengthUnit): string {
  const end = to ?? at;
  if (from === null || end === null) return 'Choose the first point: strips’ crossings and ends hold the pointer.';
  const [across, up] = [Math.abs(end.x - from.x), Math.abs(end.y - from.y)];
  const far = lengthText(Math.hypot(across, up), units, 'length');
  return `Distance ${far}, across ${lengthFigure(across, units)}, up ${lengthFigure(up, units)}`;
}
