/** What is bought of each stock, what the rack gives, and what goes back into it. Lengths mm; money in the stock's currency. */
import type { Words } from '../../../grammar/words.ts';
import type { LengthUnit, StripStock } from '../../design/design-model.ts';
import { isImperial } from '../../design/values/length-text.ts';
import { millimetresIn } from '../../design/values/quantity.ts';
import { sum } from '../../geometry/numbers.ts';
import { arithmeticTolerance } from '../../geometry/tolerance.ts';
import { toCoins } from '../money.ts';
import type { CutStock, PlanStock } from '../shop-plan.ts';
import { planLength } from './plan-rounding.ts';
import type { PlanMill } from './work-sections.ts';

/** Sticks of one length, in the order of falling length. */
interface StickCount {
  readonly lengthMm: number;
  readonly count: number;
}

/** So many sticks of each length that, the share of rejects taken out, those that are cut are left; rack sticks apart. */
export const sticksToMill = ({ sticks }: Pick<CutStock, 'sticks'>, rejects: number): StickCount[] =>
  sticksFrom(sticks, false).map(({ lengthMm, count }) => ({ lengthMm, count: withRejects(count, rejects) }));

const withRejects = (count: number, rejects: number): number => Math.ceil(count / (1 - rejects) - arithmeticTolerance);

function sticksFrom(sticks: CutStock['sticks'], onHand: boolean): StickCount[] {
  const own = sticks.filter((stick) => stick.onHand === onHand);
  return [...new Set(own.map(({ lengthMm }) => lengthMm))]
    .sort((a, b) => b - a)
    .map((lengthMm) => ({
      lengthMm,
      count: sum(own.filter((each) => each.lengthMm === lengthMm).map(({ count }) => count)),
    }));
}

/** The stocks with their buying. What is ripped from boards is bought as boards, so no stick of it is. */
export const planBuying = (
  cut: readonly CutStock[],
  stocks: readonly StripStock[],
  mill: readonly PlanMill<Words>[],
  units: LengthUnit,
): PlanStock<Words>[] =>
  cut.map((plan) => {
    const stock = stocks.find(({ name }) => name === plan.stock);
    const isRipped = mill.some((each) => each.stock === plan.stock && each.boards !== null);
    return {
      ...plan,
      buy: stock && !isRipped ? bought(plan, stock) : [],
      rack: stock ? fromRack(plan, stock) : [],
      keep: stock?.keepOffcuts == null ? null : kept(plan, stock, stock.keepOffcuts, units),
    };
  });

function bought(plan: CutStock, stock: StripStock): PlanStock<Words>['buy'] {
  const cut = sticksFrom(plan.sticks, false);
  return sticksToMill(plan, stock.rejects).map(({ lengthMm, count }) => ({
    lengthMm,
    count,
    rejects: count - (cut.find((each) => each.lengthMm === lengthMm)?.count ?? 0),
    ...priced(plan, stock, { lengthMm, count }),
  }));
}

const fromRack = (plan: CutStock, stock: StripStock): PlanStock<Words>['rack'] =>
  sticksFrom(plan.sticks, true).map((sticks) => ({ ...sticks, ...priced(plan, stock, sticks) }));

function priced(
  { currency }: CutStock,
  stock: StripStock,
  { lengthMm, count }: StickCount,
): { price: number | null; cost: number | null } {
  const price = currency === null ? null : priceOfLength(stock, lengthMm);
  return price === null
    ? { price, cost: null }
    : { price: planLength(price), cost: toCoins(planLength(price) * count, currency) };
}

/**
 * The price of a length that is sold. Of one that only lies in the rack: its share of the next longer one that is sold,
 * or of the longest.
 */
function priceOfLength({ lengths }: StripStock, lengthMm: number): number | null {
  const rising = [...lengths].sort((a, b) => a.length - b.length);
  const sold =
    lengths.find(({ length }) => planLength(length) === lengthMm) ??
    rising.find(({ length }) => length > lengthMm) ??
    rising.at(-1);
  if (!sold?.price) return null;
  return planLength(sold.length) === lengthMm ? sold.price.amount : (sold.price.amount * lengthMm) / sold.length;
}

/** What lies in the rack when all is cut: sticks not used, and off-cuts that are long enough, whole millimetres or eighths of an inch. */
function kept(
  plan: CutStock,
  stock: StripStock,
  overMm: number,
  units: LengthUnit,
): NonNullable<PlanStock<Words>['keep']> {
  const step = isImperial(units) ? millimetresIn.in / 8 : 1;
  const used = sticksFrom(plan.sticks, true);
  const left = stock.onHand.map(({ length, count }) => ({
    lengthMm: planLength(length),
    count: count - (used.find(({ lengthMm }) => lengthMm === planLength(length))?.count ?? 0),
  }));
  const offcuts = plan.sticks.map(({ offcutMm, count }) => ({
    lengthMm: planLength(step * Math.floor((offcutMm + plan.endTrimMm - plan.kerfMm) / step + arithmeticTolerance)),
    count,
  }));
  const all = [...left.filter(({ count }) => count > 0), ...offcuts.filter(({ lengthMm }) => lengthMm >= overMm)];
  const lengths = [...new Set(all.map(({ lengthMm }) => lengthMm))].sort((a, b) => b - a);
  return {
    overMm: planLength(overMm),
    onHand: lengths.map((lengthMm) => ({
      lengthMm,
      count: sum(all.filter((each) => each.lengthMm === lengthMm).map(({ count }) => count)),
    })),
  };
}
