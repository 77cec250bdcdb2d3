/** The parts of an analysis that a plan is made from. */
import type { Design } from '../design/design.ts';
import type { LaidPanel } from '../lattice/laid-panel.ts';
import type { NestedBlank } from './blanks/nest-blanks.ts';
import type { MarkedKinds } from './marks/marked-kinds.ts';

export interface PlannedDesign {
  readonly revision: string;
  readonly design: Design;
  readonly panels: readonly LaidPanel[];
  readonly blanks: readonly NestedBlank[];
  readonly kinds: MarkedKinds;
  readonly incomplete: boolean;
}
