/** What the tasks of the steps are written from, and how. */
import type { ShopPlan } from './shop-plan.ts';

/** The sections that the tasks speak of. */
export type TaskFigures = Pick<
  ShopPlan,
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

/** "1 stick", "2 sticks". */
export const counted = (count: number, one: string, more = `${one}s`): string => `${count} ${count === 1 ? one : more}`;

/** How good the order of a step's settings is. */
export const orderText = ({ changes, bound, proven, model }: TaskFigures['changes'][number]): string =>
  changes === 0
    ? 'One setting serves all that follows.'
    : `${counted(changes, 'change')} of setting after the first, ${proven ? 'and no order needs fewer' : `at least ${bound}`} (${model}).`;
