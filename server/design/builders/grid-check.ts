/** What a maker measures on a lattice to see that its pitch came out. */
import type { Grid } from '../design-model.ts';

/** A distance to be measured, in words, and what it must be. */
export interface GridCheck {
  readonly what: string;
  readonly millimetres: number;
}

/** Ten sides along a strip; where a family lies at places of its own, from the first to the last of its strips. */
export function gridCheck({ families, side }: Pick<Grid, 'families' | 'side'>): GridCheck {
  const single = families.findIndex(({ positions }) => positions !== null && positions.length > 1);
  const positions = families[single]?.positions ?? [];
  if (single < 0) return { what: 'ten sides along a strip', millimetres: 10 * side };
  return {
    what: `family ${single + 1}, first to last strip across,`,
    millimetres: (positions.at(-1) ?? 0) - (positions[0] ?? 0),
  };
}

/** Whether the grid has no pitch to be spoken of: some family lies at places of its own. */
export const hasSingleLines = ({ families }: Pick<Grid, 'families'>): boolean =>
  families.some(({ positions }) => positions !== null);
