/** One of the two versions that are compared: what was laid out, and the plan made from it. */
import type { Words } from '../../grammar/words.ts';
import type { PlannedDesign } from '../shop/planned-design.ts';
import type { ShopPlan } from '../shop/shop-plan.ts';

export interface ComparedDesign extends PlannedDesign {
  /** As the stages say it: words are written for a comparison in the units of the new version. */
  readonly said: ShopPlan<Words>;
  readonly plan: ShopPlan;
}
