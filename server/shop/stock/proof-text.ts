/** How good a cutting plan is, in words: its goal, and where that is not proven the bound and its own figure. */
import { type Words, figure, measure, words } from '../../../grammar/words.ts';
import type { PlanStock } from '../shop-plan.ts';

export function proofText(stock: PlanStock<Words>): Words {
  const { objective, value, bound, proven, currency } = stock;
  if (objective === 'sticks')
    return words`${
      proven
        ? 'proven fewest'
        : `not proven; no plan takes less than ${Math.ceil(bound)} bought sticks, this one ${value}`
    }${lengthWords(stock)}`;
  return proven
    ? 'proven cheapest'
    : words`not proven; no plan costs less than ${measure.money(bound, currency)}, this one ${measure.money(value, currency)}`;
}

/** The second aim, where the lengths of the sticks can be chosen. */
function lengthWords({ length }: PlanStock<Words>): Words {
  if (!length) return '';
  return length.proven
    ? ' and shortest'
    : words`; so few are not proven shortest: none is below ${figure.length(length.boundMm)} in all, this is ${figure.length(length.valueMm)}`;
}
