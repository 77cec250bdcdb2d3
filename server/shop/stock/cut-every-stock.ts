/** Cutting plans for a whole shop plan: strips and infill of one stock are cut from the same sticks. Lengths mm. */
import type { Bench, StripStock } from '../../design/design-model.ts';
import { stickBreath } from '../../design/values/defaults.ts';
import { fitTolerance } from '../../geometry/tolerance.ts';
import { oneCurrency } from '../money.ts';
import type { LinearSolver } from './linear-solver.ts';
import { cutOneStock } from './cut-one-stock.ts';
import type { PieceDemand, StickChoice, StockAnswer, StockProblem, StockRequest } from './stock-request.ts';
import { shareOf, type Watch } from './watch.ts';

/** Pieces of one mark and the stock they are cut from. */
export interface StockDemand extends PieceDemand {
  readonly stock: StripStock;
  /** Of what is ripped narrower than its stick, mm. */
  readonly widthMm?: number;
}

/** What one stock is asked for, and the answer. */
export interface StockCutting extends StockAnswer {
  readonly stock: StripStock;
  readonly request: StockRequest;
  /** Of the prices; null where none is stated, or they are in several. */
  readonly currency: string | null;
}

/** A request, what no stick is wide enough for, and whether its prices can be compared. */
export interface PricedRequest {
  readonly stock: StripStock;
  readonly tooWide: readonly Extract<StockProblem, { kind: 'pieceTooWide' }>[];
  readonly request: StockRequest;
  readonly currency: string | null;
  readonly mixedCurrencies: boolean;
}

/** What sticks are cut with: the bench's saw, null where a file has none. */
type SticksBench = Pick<Bench, 'kerf' | 'breath'> | null;

/** One request a stock, in the order the stocks are met. A kerf and a breath of its own go before the bench's. */
export function stockRequests(demands: readonly StockDemand[], bench: SticksBench): PricedRequest[] {
  const stocks = new Map<string, { stock: StripStock; pieces: PieceDemand[]; tooWide: PricedRequest['tooWide'] }>();
  for (const { stock, widthMm, ...piece } of demands) {
    const { pieces, tooWide } = stocks.get(stock.name) ?? { pieces: [], tooWide: [] };
    const isTooWide = widthMm !== undefined && widthMm > stock.face + fitTolerance;
    stocks.set(stock.name, {
      stock,
      pieces: isTooWide ? pieces : [...pieces, piece],
      tooWide: isTooWide
        ? [...tooWide, { kind: 'pieceTooWide', mark: piece.mark, widthMm, faceMm: stock.face }]
        : tooWide,
    });
  }
  return [...stocks.values()].map(({ stock, pieces, tooWide }) => {
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
    return { stock, request, tooWide, currency, mixedCurrencies: mixed };
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
  for (const [done, { stock, request, tooWide, currency, mixedCurrencies }] of requests.entries()) {
    const watch = shareOf(watchFor(request.stock), requests.length - done);
    const { problems, ...answer } = await cutOneStock(request, solver, watch);
    const mixed = mixedCurrencies ? [{ kind: 'mixedCurrencies' } as const] : [];
    cuttings.push({ stock, request, currency, ...answer, problems: [...tooWide, ...problems, ...mixed] });
  }
  return cuttings;
}
