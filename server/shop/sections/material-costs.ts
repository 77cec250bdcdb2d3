/** What the materials of the whole edition cost: every thing bought a row, every line of the price the sum of its rows. */
import type { Words } from '../../../grammar/words.ts';
import type { Design } from '../../design/design.ts';
import type { Money } from '../../design/material-model.ts';
import { sum } from '../../geometry/numbers.ts';
import { oneCurrency, toCoins } from '../money.ts';
import type { PlanStock, ShopPlan } from '../shop-plan.ts';
import type { PlanMaterial, PlanMill, PlanSheet } from './work-sections.ts';

/** The sections that materials are counted from. */
export type BoughtPlan = Pick<ShopPlan<Words>, 'stock' | 'mill' | 'sheets' | 'finish' | 'pours'>;

/** A line of the price for the edition; null money where something in it has no price. */
export interface MaterialCost {
  readonly what: string;
  readonly money: Money | null;
  readonly rows: readonly PlanMaterial[];
}

/** In the order a maker writes them: sticks and boards, sheets, resins, the finish. */
export const materialCosts = (design: Design, { stock, mill, sheets, finish, pours }: BoughtPlan): MaterialCost[] => [
  ...stock.flatMap((each) => woodCosts(each, mill.find(({ stock: name }) => name === each.stock)?.boards ?? null)),
  ...[...new Set(sheets.map(({ sheet }) => sheet))].map((name) =>
    sheetCost(sheets.filter(({ sheet }) => sheet === name)),
  ),
  ...resinCosts(design, pours),
  ...finishCosts(design, finish),
];

type Row = Omit<PlanMaterial, 'line' | 'cost'>;

/** A line of rows that are all priced in one currency. */
function lineOf(what: string, rows: readonly (Row & { readonly currency: string })[]): MaterialCost {
  const { currency } = oneCurrency(rows.map(({ price: amount, currency: code }) => ({ amount, currency: code })));
  const written = rows.map(({ currency: code, ...row }) => ({
    line: what,
    ...row,
    cost: toCoins((row.price * row.quantity) / row.per, code),
  }));
  return currency === null
    ? { what, money: null, rows: [] }
    : { what, money: { amount: sum(written.map(({ cost }) => cost)), currency }, rows: written };
}

const unpriced = (what: string): MaterialCost => ({ what, money: null, rows: [] });

function woodCosts(plan: PlanStock<Words>, boards: PlanMill<Words>['boards']): MaterialCost[] {
  const { stock, buy, rack, currency } = plan;
  const ofRack = rack.length === 0 ? [] : [sticksCost(`${stock} from the rack`, rack, currency)];
  if (!boards) return isBought(plan) ? [sticksCost(`sticks of ${stock}`, buy, currency), ...ofRack] : ofRack;
  const { boards: quantity, price } = boards;
  const what = `boards for ${stock}`;
  const bought =
    price === null || boards.currency === null
      ? unpriced(what)
      : lineOf(what, [{ lengthMm: null, quantity, unit: 'board', price, per: 1, currency: boards.currency }]);
  return [bought, ...ofRack];
}

/** Nothing is, where the rack has all of it, or where no stick could be planned for any of it, which is said elsewhere. */
const isBought = ({ buy, rack, leftOut, needMm }: PlanStock<Words>): boolean =>
  buy.length > 0 || (rack.length === 0 && leftOut.length === 0 && needMm > 0);

function sticksCost(what: string, sticks: PlanStock<Words>['rack'], currency: string | null): MaterialCost {
  if (currency === null || sticks.length === 0 || sticks.some(({ price }) => price === null)) return unpriced(what);
  return lineOf(
    what,
    sticks.map(({ lengthMm, count, price }) => ({
      lengthMm,
      quantity: count,
      unit: 'stick',
      price: price ?? 0,
      per: 1,
      currency,
    })),
  );
}

function sheetCost(sheets: readonly PlanSheet[]): MaterialCost {
  const what = `sheets of ${sheets[0]?.sheet ?? ''}`;
  const rows = sheets.flatMap(({ count, price, currency }) =>
    price === null || currency === null
      ? []
      : [{ lengthMm: null, quantity: count, unit: 'sheet' as const, price, per: 1, currency }],
  );
  return rows.length === sheets.length ? lineOf(what, rows) : unpriced(what);
}

/** By mass, seal coats counted in. */
const resinCosts = ({ resins }: Design, pours: ShopPlan<Words>['pours']): MaterialCost[] =>
  resins.flatMap(({ name, density, price }) => {
    const own = pours.filter(({ resin }) => resin === name);
    if (own.length === 0) return [];
    const what = `resin ${name}`;
    if (!price) return [unpriced(what)];
    const quantity =
      sum(own.map(({ sealMl, layers }) => sealMl + sum(layers.map(({ volumeMl }) => volumeMl)))) * density;
    const { amount, currency } = price.money;
    return [lineOf(what, [{ lengthMm: null, quantity, unit: 'g', price: amount, per: price.per, currency }])];
  });

const millilitresInLitre = 1000;

function finishCosts({ finishes }: Design, finish: ShopPlan<Words>['finish']): MaterialCost[] {
  if (finish?.finish == null) return [];
  const what = `finish ${finish.finish}`;
  const price = finishes.find(({ name }) => name === finish.finish)?.price;
  if (!price) return [unpriced(what)];
  const { volumeMl: quantity } = finish;
  const { amount, currency } = price;
  return [lineOf(what, [{ lengthMm: null, quantity, unit: 'mL', price: amount, per: millilitresInLitre, currency }])];
}
