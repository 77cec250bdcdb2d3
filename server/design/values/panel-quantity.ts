/** How many of a panel are made. */
import type { Panel } from '../design-model.ts';
import type { Design } from '../design.ts';

/**
 * The panel's copies times the work's; of a panel that classes build, at least one for every student. Placements never
 * multiply.
 */
export function panelQuantity({ work, kits }: Pick<Design, 'work' | 'kits'>, panel: Panel): number {
  const students = kits.filter((kit) => kit.panel.name === panel.name).reduce((sum, kit) => sum + kit.students, 0);
  return Math.max(panel.copies * (work?.copies ?? 1), students);
}
