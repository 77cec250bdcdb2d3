/** Asking for cutting plans in tests, and checking an answer against the request by itself. */
import { expect } from 'vitest';
import { loadSolver } from '../../../server/machine/load-solver.ts';
import { cutOneStock } from '../../../server/shop/stock/cut-one-stock.ts';
import { startWatch, type WatchOptions } from '../../../server/machine/start-watch.ts';
import type { StickChoice, StockAnswer, StockPlan, StockRequest } from '../../../server/shop/stock/stock-request.ts';

const solver = loadSolver();

export async function ask(request: StockRequest, options: Partial<WatchOptions> = {}): Promise<StockAnswer> {
  return cutOneStock(request, await solver, startWatch({ seconds: 30, ...options }));
}

export async function planOf(request: StockRequest): Promise<StockPlan> {
  const { plan } = await ask(request);
  if (!plan) throw new Error('no plan');
  expectSound(request, plan);
  return plan;
}

export const endless = (lengthMm: number, price: number | null = null): StickChoice => ({
  lengthMm,
  price,
  onHand: null,
});

/** A request for pieces of the given lengths and numbers, marked P1, P2 …, from one endless length of stick. */
export function requestOf(
  stick: number,
  pieces: readonly (readonly [length: number, total: number])[],
  more: Partial<StockRequest> = {},
): StockRequest {
  return {
    stock: 'ash',
    kerfMm: 0,
    endTrimMm: 0,
    breathMm: { cut: 0, stick: 0 },
    sticks: [endless(stick)],
    pieces: pieces.map(([lengthMm, total], index) => ({ mark: `P${index + 1}`, lengthMm, total })),
    ...more,
  };
}

/** No stick over-filled, every mark cut exactly as often as asked, no more sticks than there are, sums right. */
export function expectSound(request: StockRequest, plan: StockPlan): void {
  const cut = new Map<string, number>();
  const used = new Map<number, number>();
  for (const { lengthMm, cuts, count, offcutMm } of plan.sticks) {
    const pieces = cuts.reduce((sum, { n }) => sum + n, 0);
    const filled =
      cuts.reduce((sum, piece) => sum + piece.lengthMm * piece.n, 0) +
      (pieces - 1) * (request.kerfMm + request.breathMm.cut) +
      2 * request.endTrimMm +
      request.breathMm.stick;
    expect(pieces).toBeGreaterThan(0);
    expect(offcutMm).toBeGreaterThanOrEqual(0);
    expect(filled + offcutMm).toBeCloseTo(lengthMm, 3);
    for (const { mark, n } of cuts) cut.set(mark, (cut.get(mark) ?? 0) + n * count);
    used.set(lengthMm, (used.get(lengthMm) ?? 0) + count);
  }
  const asked = request.pieces.filter(({ total }) => total > 0).map(({ mark, total }) => [mark, total] as const);
  expect([...cut].sort()).toEqual([...asked].sort());
  for (const [lengthMm, count] of used) {
    const choices = request.sticks.filter((choice) => choice.lengthMm === lengthMm);
    expect(count).toBeLessThanOrEqual(choices.reduce((sum, { onHand }) => sum + (onHand ?? Infinity), 0));
  }
  expect(plan.sticksUsed).toBe([...used.values()].reduce((sum, count) => sum + count, 0));
  expect(plan.bound).toBeLessThanOrEqual(plan.value);
  expect(plan.proven).toBe(plan.bound === plan.value);
}
