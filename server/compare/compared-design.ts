/** One of the two versions that are compared: what was laid out, and the plan made from it. */
import type { PlannedDesign } from '../shop/planned-design.ts';
import type { ShopPlan } from '../shop/shop-plan.ts';

export interface ComparedDesign extends PlannedDesign {
  readonly plan: ShopPlan;
}
