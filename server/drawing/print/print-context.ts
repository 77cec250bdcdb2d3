/** What every part of the printed sheet is made from. */
import type { Words } from '../../../grammar/words.ts';
import type { LengthFigures } from '../../words/figures.ts';
import type { ShopPlan } from '../../shop/shop-plan.ts';
import type { DrawnDesign } from '../sheet-facts.ts';
import type { Typefaces } from '../page/typeface.ts';

export interface PrintContext {
  readonly plan: ShopPlan;
  readonly drawn: DrawnDesign;
  readonly typefaces: Typefaces;
  /** Between the margins of a page, mm. */
  readonly width: number;
  /** Lengths in tables and drawings, in the units of the plan: the foot of the page says them. */
  readonly figures: LengthFigures;
  /** A line of text. */
  readonly say: (said: Words) => string;
}

/** Heights of letters in mm: read at arm's length, from the bench, on a label across the shop. */
export const letterSizes = { small: 3.2, text: 4.2, figure: 4.8, heading: 6, mark: 9 } as const;
