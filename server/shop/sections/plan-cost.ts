/** What a copy costs and is sold for, line by line. Every line is rounded to the smallest coin, so that a hand adds up the same. */
import { type Words, measure, words } from '../../../grammar/words.ts';
import type { Design } from '../../design/design.ts';
import type { Money } from '../../design/material-model.ts';
import type { Work } from '../../design/work-model.ts';
import { append, sum } from '../../geometry/numbers.ts';
import { rounded } from '../../geometry/tolerance.ts';
import { type BoughtPlan, type MaterialCost, materialCosts } from './material-costs.ts';
import { oneCurrency, toCoins } from '../money.ts';
import type { ShopPlan } from '../shop-plan.ts';
import type { PlanCost, PlanCostLine, PlanLabour } from './work-sections.ts';

/** What the prices are for. */
export type PricedPlan = BoughtPlan & Pick<ShopPlan<Words>, 'copies' | 'boards'>;

/** Nothing is priced without a work; a line without a price is said and left out. */
export function planCost(design: Design, plan: PricedPlan, labour: PlanLabour): PlanCost<Words> {
  const { work } = design;
  const nothing: PlanCost<Words> = {
    currency: null,
    copies: plan.copies,
    materials: [],
    lines: [],
    costPerCopy: null,
    pricePerCopy: null,
    taxPerCopy: null,
    buyerPaysPerCopy: null,
    direct: null,
    editionPrice: null,
    problems: [],
  };
  if (!work) return nothing;
  const materials = materialCosts(design, plan);
  const amounts = [...materials.map(({ money }) => money), work.hourly, work.packing].flatMap((money) => money ?? []);
  const { currency, mixed } = oneCurrency(amounts);
  if (mixed) return { ...nothing, problems: [mixedText(amounts)] };
  const problems = materials
    .filter(({ money }) => money === null)
    .map(({ what }) => `${what}: no price is stated; it is not in the cost.`);
  append(problems, uncutMarks(plan));
  append(problems, unplannedSheets(design, plan));
  if (currency === null) return { ...nothing, problems };
  if (work.hourly && labour.handsOnMin === null) problems.push('No minutes are stated, so no work is in the cost.');
  if (!work.hourly && labour.handsOnMin !== null) problems.push('No hourly rate is stated, so no work is in the cost.');
  const impossible = impossibleShares(work);
  if (impossible.length > 0) return { ...nothing, currency, problems: [...problems, ...impossible] };
  return {
    ...priced(work, plan.copies, currency, costLines(work, plan.copies, currency, materials, labour)),
    materials: materials.flatMap(({ money, rows }) => (money ? rows : [])),
    problems,
  };
}

/** What no stick could be planned for. */
const uncutMarks = ({ stock }: PricedPlan): string[] =>
  stock
    .filter(({ leftOut }) => leftOut.length > 0)
    .map(
      ({ stock: name, leftOut }) =>
        `sticks of ${name}: none holds ${leftOut.join(', ')}; what those take is not in the cost.`,
    );

/** Boards whose sheets are not laid out. */
function unplannedSheets({ boards }: Design, { sheets }: PricedPlan): string[] {
  const names = [...new Set(boards.map(({ sheet }) => sheet.name))].filter(
    (name) => !sheets.some(({ sheet }) => sheet === name),
  );
  return names.map((name) => `sheets of ${name}: how many are needed is not planned; they are not in the cost.`);
}

function mixedText(amounts: readonly Money[]): string {
  const currencies = [...new Set(amounts.map(({ currency }) => currency))];
  return `Prices are in ${currencies.join(' and ')}; nothing is added up. Give all of them in one currency.`;
}

/** A whole, or more, of the price cannot be given away. */
function impossibleShares(work: Work): string[] {
  const { gain, losses } = work;
  const shares = [
    { what: 'margin', share: gain?.kind === 'margin' ? gain.share : 0 },
    { what: 'commission', share: shareOfPrice(work) },
    { what: 'share of losses', share: losses },
  ];
  return shares
    .filter(({ share }) => share >= 1)
    .map(
      ({ what, share }) => `A ${what} of ${Math.round(100 * share)} % leaves nothing to sell; make it less than 100 %.`,
    );
}

const minutesPerHour = 60;

/** Minutes of a copy are charged as they are written; hours tell them at a glance. */
const timeDecimals = 2;

/** Materials, work and packing of one copy, in the order a maker writes them. */
function costLines(
  { hourly, packing }: Work,
  copies: number,
  currency: string,
  materials: readonly MaterialCost[],
  { handsOnMin }: PlanLabour,
): PlanCostLine<Words>[] {
  const coins = (amount: number): number => toCoins(amount, currency);
  const lines = materials.flatMap(({ what, money }): PlanCostLine<Words>[] =>
    money ? [{ kind: 'material', what, perCopy: coins(money.amount / copies) }] : [],
  );
  if (hourly && handsOnMin !== null) {
    const minutes = rounded(handsOnMin / copies, timeDecimals);
    const hours = rounded(minutes / minutesPerHour, timeDecimals);
    const exactly = hours * minutesPerHour === minutes ? '' : ` (${minutes} min)`;
    const what = words`${measure.number(hours, timeDecimals)} h${exactly} at ${measure.money(hourly.amount, currency)}`;
    lines.push({ kind: 'labour', what, perCopy: coins((minutes / minutesPerHour) * hourly.amount) });
  }
  if (packing) lines.push({ kind: 'packing', what: 'packing', perCopy: coins(packing.amount) });
  return lines;
}

/**
 * From the cost to what the buyer pays. Losses: the copies that are sold pay for those that are lost, ÷ (1 − losses).
 * Margin is a share of the price without commission, ÷ (1 − margin); mark-up a share of the cost, × (1 + mark-up). A
 * commission is a share of the price before tax, ÷ (1 − commission), or of what the buyer pays, ÷ (1 − commission ·
 * (1 + tax)). Tax comes on top. Each sum is exact and written to the coin, each line the difference of two. Common practice.
 */
function priced(
  work: Work,
  copies: number,
  currency: string,
  lines: readonly PlanCostLine<Words>[],
): Omit<PlanCost<Words>, 'materials' | 'problems'> {
  const coins = (amount: number): number => toCoins(amount, currency);
  const all = [...lines];
  let price = coins(sum(lines.map(({ perCopy }) => perCopy)));
  const raise = (kind: PlanCostLine<Words>['kind'], what: string, higher: number): void => {
    all.push({ kind, what, perCopy: coins(coins(higher) - coins(price)) });
    price = higher;
  };
  if (work.losses > 0) raise('losses', `${percent(work.losses)} of the copies lost`, price / (1 - work.losses));
  const cost = coins(price);
  price = cost;
  if (work.gain?.kind === 'margin')
    raise('gain', `margin, ${percent(work.gain.share)} of the price`, price / (1 - work.gain.share));
  if (work.gain?.kind === 'markup')
    raise('gain', `mark-up, ${percent(work.gain.share)} of the cost`, price * (1 + work.gain.share));
  const net = coins(price);
  if (work.commission > 0)
    raise('commission', `commission, ${percent(work.commission)} of ${ofWhat(work)}`, price / (1 - shareOfPrice(work)));
  const withTax = (amount: number): number => coins(amount + coins(amount * work.tax));
  const tax = coins(coins(price) * work.tax);
  if (work.tax > 0) all.push({ kind: 'tax', what: `tax, ${percent(work.tax)} on top`, perCopy: tax });
  return {
    currency,
    copies,
    lines: all,
    costPerCopy: cost,
    pricePerCopy: coins(price),
    taxPerCopy: tax,
    buyerPaysPerCopy: withTax(coins(price)),
    direct: work.commission > 0 ? { pricePerCopy: net, buyerPaysPerCopy: withTax(net) } : null,
    editionPrice: coins(coins(price) * copies),
  };
}

/** The commission as a share of the price before tax. */
const shareOfPrice = ({ commission, commissionOf, tax }: Work): number =>
  commissionOf === 'buyer_price' ? commission * (1 + tax) : commission;

const ofWhat = ({ commissionOf }: Work): string =>
  commissionOf === 'buyer_price' ? 'what the buyer pays, tax in it' : 'the price before tax';

const percent = (share: number): string => `${Math.round(1000 * share) / 10} %`;
