/** What every part of the printed sheet is made from. */
import type { PaperLength } from '../sheet/paper-figures.ts';
import type { ShopPlan } from '../../shop/shop-plan.ts';
import type { DrawnDesign } from '../sheet-facts.ts';
import type { Typefaces } from '../page/typeface.ts';

export interface PrintContext {
  readonly plan: ShopPlan;
  readonly drawn: DrawnDesign;
  readonly typefaces: Typefaces;
  /** Between the margins of a page, mm. */
  readonly width: number;
  /** Writes a length to 0.1 mm, or to 1/64 in with what that leaves out. */
  readonly figure: PaperLength;
  /** The same to 0.05 mm, for keys. */
  readonly keyFigure: PaperLength;
}

/** Heights of letters in mm: read at arm's length, from the bench, on a label across the shop. */
export const letterSizes = { small: 3.2, text: 4.2, figure: 4.8, heading: 6, mark: 9 } as const;
