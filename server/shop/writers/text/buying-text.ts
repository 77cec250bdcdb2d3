/** What is bought of a stock, what the rack gives and what goes back into it, in words. */
import type { LengthUnit } from '../../../design/design-model.ts';
import { millimetresIn } from '../../../design/values/quantity.ts';
import { rounded } from '../../../geometry/tolerance.ts';
import { moneyText } from '../../../words/figures.ts';
import { sum } from '../../../geometry/numbers.ts';
import type { PlanStock } from '../../shop-plan.ts';

/** "buy 12 of 900.0 (2 for rejects), 30.00 EUR; from the rack 3 of 600.0"; empty where neither is done. */
export function buyingText({ buy, rack, currency }: PlanStock, figure: (length: number) => string): string {
  const rejects = sum(buy.map((each) => each.rejects));
  const bought = [
    `buy ${buy.map(({ count, lengthMm }) => `${count} of ${figure(lengthMm)}`).join(', ')}`,
    ...(rejects > 0 ? [` (${rejects} for rejects)`] : []),
    ...costText(buy, currency),
  ].join('');
  const taken = `from the rack ${rack.map(({ count, lengthMm }) => `${count} of ${figure(lengthMm)}`).join(', ')}`;
  return [...(buy.length > 0 ? [bought] : []), ...(rack.length > 0 ? [taken] : [])].join('; ');
}

function costText(buy: PlanStock['buy'], currency: string | null): string[] {
  const costs = buy.flatMap(({ cost }) => cost ?? []);
  return costs.length < buy.length ? [] : [`, ${moneyText(sum(costs), currency)}`];
}

const writtenDecimals = 4;

/** The line that says in a file of these units what the rack then holds; empty where nothing is kept. */
export function rackLine({ keep }: PlanStock, units: LengthUnit): string {
  if (!keep || keep.onHand.length === 0) return '';
  const written = (length: number): string => String(rounded(length / millimetresIn[units], writtenDecimals));
  return `on_hand ${keep.onHand.map(({ count, lengthMm }) => `${count} of ${written(lengthMm)}`).join(', ')}`;
}
