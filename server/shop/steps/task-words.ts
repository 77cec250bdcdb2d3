/** What the tasks of the steps are written from, and how. */
import { type Words, counted } from '../../../grammar/words.ts';
import type { ShopPlan } from '../shop-plan.ts';

/** The sections that the tasks speak of. */
export type TaskFigures = Pick<
  ShopPlan<Words>,
  | 'copies'
  | 'grids'
  | 'panels'
  | 'pieces'
  | 'hinges'
  | 'strips'
  | 'settings'
  | 'changes'
  | 'byHand'
  | 'stock'
  | 'mill'
  | 'frames'
  | 'bands'
  | 'pours'
  | 'sheets'
  | 'boards'
  | 'work'
  | 'hanging'
  | 'finish'
  | 'kit'
>;

/** How good the order of a step's settings is. */
export const orderText = ({ changes, bound, proven, model }: TaskFigures['changes'][number]): Words =>
  changes === 0
    ? 'One setting serves all that follows.'
    : `${counted(changes, 'change')} of setting after the first, ${proven ? 'and no order needs fewer' : `at least ${bound}`} (${model}).`;
