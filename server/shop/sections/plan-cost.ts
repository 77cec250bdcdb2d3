/** What a copy costs and is sold for, line by line. Every line is rounded to the smallest coin, so that a hand adds up the same. */
import type { Design } from '../../design/design.ts';
import type { Money } from '../../design/material-model.ts';
import type { Work } from '../../design/work-model.ts';
import { sum } from '../../geometry/numbers.ts';
import { oneCurrency, toCoins } from '../money.ts';
import { moneyText } from '../../words/figures.ts';
import type { ShopPlan } from '../shop-plan.ts';
import type { PlanCost, PlanCostLine, PlanLabour } from './work-sections.ts';

/** What the prices are for. */
export type PricedPlan = Pick<ShopPlan, 'copies' | 'stock' | 'mill' | 'sheets' | 'finish' | 'boards' | 'pours'>;

/** A material of the whole edition; null money where it has no price. */
interface MaterialCost {
  readonly what: string;
  readonly money: Money | null;
}

/** Nothing is priced without a work; a line without a price is said and left out. */
export function planCost(design: Design, plan: PricedPlan, labour: PlanLabour): PlanCost {
  const { work } = design;
  const nothing: PlanCost = {
    currency: null,
    copies: plan.copies,
    lines: [],
    costPerCopy: null,
    pricePerCopy: null,
    taxPerCopy: null,
    editionPrice: null,
    problems: [],
  };
  if (!work) return nothing;
  const materials = materialsOf(design, plan);
  const amounts = [...materials.map(({ money }) => money), work.hourly, work.packing].flatMap((money) => money ?? []);
  const { currency, mixed } = oneCurrency(amounts);
  if (mixed) return { ...nothing, problems: [mixedText(amounts)] };
  const problems = materials
    .filter(({ money }) => money === null)
    .map(({ what }) => `${what}: no price is stated; it is not in the cost.`);
  problems.push(...unplannedSheets(design, plan));
  if (currency === null) return { ...nothing, problems };
  if (work.hourly && labour.handsOnMin === null) problems.push('No minutes are stated, so no work is in the cost.');
  if (!work.hourly && labour.handsOnMin !== null) problems.push('No hourly rate is stated, so no work is in the cost.');
  const impossible = impossibleShares(work);
  if (impossible.length > 0) return { ...nothing, currency, problems: [...problems, ...impossible] };
  return {
    ...priced(work, plan.copies, currency, costLines(work, plan.copies, currency, materials, labour)),
    problems,
  };
}

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
function impossibleShares({ gain, commission, losses }: Work): string[] {
  const shares = [
    { what: 'margin', share: gain?.kind === 'margin' ? gain.share : 0 },
    { what: 'commission', share: commission },
    { what: 'share of losses', share: losses },
  ];
  return shares
    .filter(({ share }) => share >= 1)
    .map(
      ({ what, share }) => `A ${what} of ${Math.round(100 * share)} % leaves nothing to sell; make it less than 100 %.`,
    );
}

function materialsOf(design: Design, { stock, mill, sheets, finish, pours }: PricedPlan): MaterialCost[] {
  const wood = stock.map(({ stock: name, cost, currency }): MaterialCost => {
    const boards = mill.find((each) => each.stock === name)?.boards;
    if (boards && boards.cost !== null)
      return { what: `boards for ${name}`, money: moneyOf(boards.cost, boards.currency) };
    return { what: `sticks of ${name}`, money: moneyOf(cost, currency) };
  });
  const plates = [...new Set(sheets.map(({ sheet }) => sheet))].map((name): MaterialCost => {
    const moneys = sheets.filter(({ sheet }) => sheet === name).map((each) => moneyOf(each.cost, each.currency));
    const { currency } = oneCurrency(moneys.flatMap((money) => money ?? []));
    const known = currency !== null && moneys.every((money) => money !== null);
    return {
      what: `sheets of ${name}`,
      money: known ? { amount: sum(moneys.map(({ amount }) => amount)), currency } : null,
    };
  });
  const poured = design.resins.flatMap((resin): MaterialCost[] => {
    const own = pours.filter((pour) => pour.resin === resin.name);
    if (own.length === 0) return [];
    const mass =
      sum(own.flatMap(({ sealMl, layers }) => [sealMl, ...layers.map(({ volumeMl }) => volumeMl)])) * resin.density;
    return [
      {
        what: `resin ${resin.name}`,
        money: resin.price && { ...resin.price.money, amount: (resin.price.money.amount * mass) / resin.price.per },
      },
    ];
  });
  const coat = finish?.finish == null ? [] : [finishCost(finish.finish, finish.volumeMl)];
  return [...wood, ...plates, ...poured, ...coat];

  function finishCost(name: string, volumeMl: number): MaterialCost {
    const price = pricePerLitre(name);
    return { what: `finish ${name}`, money: price && { ...price, amount: (price.amount * volumeMl) / 1000 } };
  }

  function pricePerLitre(name: string): Money | null {
    return design.finishes.find((stock) => stock.name === name)?.price ?? null;
  }
}

const moneyOf = (amount: number | null, currency: string | null): Money | null =>
  amount === null || currency === null ? null : { amount, currency };

/** Materials, work and packing of one copy, in the order a maker writes them. */
function costLines(
  { hourly, packing }: Work,
  copies: number,
  currency: string,
  materials: readonly MaterialCost[],
  { handsOnMin }: PlanLabour,
): PlanCostLine[] {
  const coins = (amount: number): number => toCoins(amount, currency);
  const lines = materials.flatMap(({ what, money }): PlanCostLine[] =>
    money ? [{ kind: 'material', what, perCopy: coins(money.amount / copies) }] : [],
  );
  if (hourly && handsOnMin !== null) {
    const hours = handsOnMin / 60 / copies;
    const what = `${hours.toFixed(2)} h at ${moneyText(hourly.amount, currency)}`;
    lines.push({ kind: 'labour', what, perCopy: coins(hours * hourly.amount) });
  }
  if (packing) lines.push({ kind: 'packing', what: 'packing', perCopy: coins(packing.amount) });
  return lines;
}

/**
 * From the cost to the price. Losses: the copies that are sold pay for those that are lost, ÷ (1 − losses). Margin is a
 * share of the price, ÷ (1 − margin); mark-up a share of the cost, × (1 + mark-up). A commission is a share of what the
 * buyer pays, ÷ (1 − commission). Tax comes on top. Common practice.
 */
function priced(
  work: Work,
  copies: number,
  currency: string,
  lines: readonly PlanCostLine[],
): Omit<PlanCost, 'problems'> {
  const coins = (amount: number): number => toCoins(amount, currency);
  const all = [...lines];
  let price = coins(sum(lines.map(({ perCopy }) => perCopy)));
  const raise = (kind: PlanCostLine['kind'], what: string, higher: number): void => {
    const perCopy = coins(coins(higher) - price);
    all.push({ kind, what, perCopy });
    price = coins(price + perCopy);
  };
  if (work.losses > 0) raise('losses', `${percent(work.losses)} of the copies lost`, price / (1 - work.losses));
  const cost = price;
  if (work.gain?.kind === 'margin')
    raise('gain', `margin, ${percent(work.gain.share)} of the price`, price / (1 - work.gain.share));
  if (work.gain?.kind === 'markup')
    raise('gain', `mark-up, ${percent(work.gain.share)} of the cost`, price * (1 + work.gain.share));
  if (work.commission > 0)
    raise(
      'commission',
      `commission, ${percent(work.commission)} of what the buyer pays`,
      price / (1 - work.commission),
    );
  const tax = coins(price * work.tax);
  if (work.tax > 0) all.push({ kind: 'tax', what: `tax, ${percent(work.tax)} on top`, perCopy: tax });
  return {
    currency,
    copies,
    lines: all,
    costPerCopy: cost,
    pricePerCopy: price,
    taxPerCopy: tax,
    editionPrice: coins(price * copies),
  };
}

const percent = (share: number): string => `${Math.round(1000 * share) / 10} %`;
