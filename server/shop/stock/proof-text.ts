/** How good a cutting plan is, in words: its goal, and where that is not proven the bound and its own figure. */
import { moneyText } from '../../words/figures.ts';
import type { PlanStock } from '../shop-plan.ts';

/** `figure` writes a length in mm. */
export function proofText(stock: PlanStock, figure: (length: number) => string): string {
  const { objective, value, bound, proven, currency } = stock;
  if (objective === 'sticks')
    return `${
      proven
        ? 'proven fewest'
        : `not proven; no plan takes less than ${Math.ceil(bound)} bought sticks, this one ${value}`
    }${lengthText(stock, figure)}`;
  return proven
    ? 'proven cheapest'
    : `not proven; no plan costs less than ${moneyText(bound, currency)}, this one ${moneyText(value, currency)}`;
}

/** The second aim, where the lengths of the sticks can be chosen. */
function lengthText({ length }: PlanStock, figure: (length: number) => string): string {
  if (!length) return '';
  return length.proven
    ? ' and shortest'
    : `; so few are not proven shortest: none is below ${figure(length.boundMm)} in all, this is ${figure(length.valueMm)}`;
}
