/** How good a cutting plan is, in words: its goal, and where that is not proven the bound and its own figure. */
import { moneyText } from '../money.ts';
import type { PlanStock } from '../shop-plan.ts';

export function proofText({ objective, value, bound, proven, currency }: PlanStock): string {
  if (objective === 'sticks')
    return proven
      ? 'proven fewest'
      : `not proven; no plan takes less than ${Math.ceil(bound)} bought sticks, this one ${value}`;
  return proven
    ? 'proven cheapest'
    : `not proven; no plan costs less than ${moneyText(bound, currency)}, this one ${moneyText(value, currency)}`;
}
