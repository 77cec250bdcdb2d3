/** Cutting plans for a whole shop plan: strips and infill of one stock are cut from the same sticks. Lengths mm. */
import type { StripStock } from '../../design/design-model.ts';
import type { MarkedKinds } from '../marked-kinds.ts';
import type { LinearSolver } from './linear-solver.ts';
import { planSticks } from './plan-sticks.ts';
import type { PieceDemand, StockAnswer, StockRequest } from './stock-request.ts';
import { shareOf, type Watch } from './watch.ts';

/** Wood lost beside the pieces. */
export interface CuttingLosses {
  /** Between two neighbouring pieces. */
  readonly kerfMm: number;
  /** Off each end of a stick. */
  readonly endTrimMm: number;
}

/** What one stock is asked for, and the answer. */
export interface StockCutting extends StockAnswer {
  readonly request: StockRequest;
}

/** One request a stock that says which lengths can be had, in the order the stocks are met: strips first. */
export function stockRequests({ strips, pieces }: MarkedKinds, losses: CuttingLosses): StockRequest[] {
  const demands = [
    ...strips.flatMap(({ mark, groups, total }) =>
      groups.slice(0, 1).map(({ group: { stock, length } }) => ({ stock, mark, lengthMm: length, total })),
    ),
    ...pieces.map(({ mark, shape: { stock, length }, total }) => ({ stock, mark, lengthMm: length, total })),
  ];
  const stocks = new Map<string, { stock: StripStock; pieces: PieceDemand[] }>();
  for (const { stock, ...piece } of demands) {
    const entry = stocks.get(stock.name) ?? { stock, pieces: [] };
    entry.pieces.push(piece);
    stocks.set(stock.name, entry);
  }
  return [...stocks.values()]
    .filter(({ stock }) => stock.lengths.length > 0)
    .map(({ stock, pieces: wanted }) => ({
      stock: stock.name,
      ...losses,
      sticks: [...new Set(stock.lengths.map(({ length }) => length))].map((lengthMm) => ({
        lengthMm,
        price: null,
        onHand: null,
      })),
      pieces: wanted,
    }));
}

/** Answers each request in turn; time that one does not need is left to the next. */
export async function planStock(
  kinds: MarkedKinds,
  losses: CuttingLosses,
  solver: LinearSolver,
  watch: Watch,
): Promise<StockCutting[]> {
  const requests = stockRequests(kinds, losses);
  const cuttings: StockCutting[] = [];
  for (const [done, request] of requests.entries()) {
    const answer = await planSticks(request, solver, shareOf(watch, requests.length - done));
    cuttings.push({ request, ...answer });
  }
  return cuttings;
}
