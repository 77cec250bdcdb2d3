/** Cutting plans for a whole shop plan: strips and infill of one stock are cut from the same sticks. Lengths mm. */
import type { Bench, StripStock } from '../../design/design-model.ts';
import { stickBreath } from '../../design/values/defaults.ts';
import { oneCurrency } from '../money.ts';
import type { LinearSolver } from './linear-solver.ts';
import { cutOneStock } from './cut-one-stock.ts';
import type { PieceDemand, StickChoice, StockAnswer, StockRequest } from './stock-request.ts';
import { shareOf, type Watch } from './watch.ts';

/** Pieces of one mark and the stock they are cut from. */
export interface StockDemand extends PieceDemand {
  readonly stock: StripStock;
}

/** What one stock is asked for, and the answer. */
export interface StockCutting extends StockAnswer {
  readonly request: StockRequest;
  /** Of the prices; null where none is stated, or they are in several. */
  readonly currency: string | null;
}

/** A request, and whether its prices can be compared. */
interface PricedRequest {
  readonly request: StockRequest;
  readonly currency: string | null;
  readonly mixedCurrencies: boolean;
}

/** What sticks are cut with: the bench's saw, null where a file has none. */
type SticksBench = Pick<Bench, 'kerf' | 'breath'> | null;

/** One request a stock, in the order the stocks are met. A kerf and a breath of its own go before the bench's. */
export function stockRequests(demands: readonly StockDemand[], bench: SticksBench): PricedRequest[] {
  const stocks = new Map<string, { stock: StripStock; pieces: PieceDemand[] }>();
  for (const { stock, ...piece } of demands) {
    const entry = stocks.get(stock.name) ?? { stock, pieces: [] };
    entry.pieces.push(piece);
    stocks.set(stock.name, entry);
  }
  return [...stocks.values()].map(({ stock, pieces }) => {
    const prices = stock.lengths.flatMap(({ price }) => price ?? []);
    const { currency, mixed } = oneCurrency(prices);
    const request = {
      stock: stock.name,
      kerfMm: stock.kerf ?? bench?.kerf ?? 0,
      endTrimMm: stock.endTrim,
      breathMm: stock.breath ?? bench?.breath ?? stickBreath,
      sticks: sticksOf(stock, mixed),
      pieces,
    };
    return { request, currency, mixedCurrencies: mixed };
  });
}

/** Sticks in the rack cost nothing more; of two prices for one length the first is taken. */
function sticksOf({ lengths, onHand }: StripStock, mixedCurrencies: boolean): StickChoice[] {
  const bought = lengths
    .filter(({ length }, index) => lengths.findIndex((other) => other.length === length) === index)
    .map(({ length, price }) => ({
      lengthMm: length,
      price: mixedCurrencies ? null : (price?.amount ?? null),
      onHand: null,
    }));
  return [...onHand.map(({ length, count }) => ({ lengthMm: length, price: 0, onHand: count })), ...bought];
}

/** Answers each request in turn; time that one does not need is left to the next. */
export async function cutEveryStock(
  demands: readonly StockDemand[],
  bench: SticksBench,
  solver: LinearSolver,
  watchFor: (stock: string) => Watch,
): Promise<StockCutting[]> {
  const requests = stockRequests(demands, bench);
  const cuttings: StockCutting[] = [];
  for (const [done, { request, currency, mixedCurrencies }] of requests.entries()) {
    const watch = shareOf(watchFor(request.stock), requests.length - done);
    const { problems, ...answer } = await cutOneStock(request, solver, watch);
    const mixed = mixedCurrencies ? [{ kind: 'mixedCurrencies' } as const] : [];
    cuttings.push({ request, currency, ...answer, problems: [...problems, ...mixed] });
  }
  return cuttings;
}
