/** How far along a panel's strips its pitch can be measured. */
import { hasSingleLines } from '../../design/builders/grid-check.ts';
import { maximum, minimum } from '../../geometry/numbers.ts';
import { arithmeticTolerance } from '../../geometry/tolerance.ts';
import type { LaidPanel, StripGroup } from '../../lattice/laid-panel.ts';

/**
 * Whole sides of the grid between the first and the last crossing of a strip: ten, or as many as the longest has. 0 where
 * the grid has no pitch.
 */
export function sidesToMeasure({ strips, panel }: LaidPanel): number {
  if (hasSingleLines(panel.grid)) return 0;
  const longest = maximum([0, ...strips.map(crossedLength)]);
  return Math.min(10, Math.floor(longest / panel.grid.side + arithmeticTolerance));
}

function crossedLength({ notches }: StripGroup): number {
  if (notches.length === 0) return 0;
  const last = maximum(notches.map(({ first, step, count }) => first + step * (count - 1)));
  return last - minimum(notches.map(({ first }) => first));
}
