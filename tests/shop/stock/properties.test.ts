/** Any cutting plan: sound, no worse than first fit, bounded by no more than the optimum, which small cases reach by force. */
import fc from 'fast-check';
import { expect, test } from 'vitest';
import type { StockRequest } from '../../../server/shop/stock/stock-request.ts';
import { planOf } from './ask.ts';

const pieces = (most: number, total: number) =>
  fc
    .array(fc.record({ tenths: fc.integer({ min: 300, max: 5000 }), total: fc.integer({ min: 1, max: total }) }), {
      minLength: 1,
      maxLength: most,
    })
    .map((list) =>
      list.map(({ tenths, total: n }, index) => ({ mark: `P${index + 1}`, lengthMm: tenths / 10, total: n })),
    );

const breath = fc.record({
  cut: fc.integer({ min: 0, max: 5 }).map((count) => count / 10),
  stick: fc.integer({ min: 0, max: 3 }),
});

const oneLength: fc.Arbitrary<StockRequest> = fc.record({
  stock: fc.constant('ash'),
  kerfMm: fc.integer({ min: 0, max: 30 }).map((tenths) => tenths / 10),
  endTrimMm: fc.integer({ min: 0, max: 20 }),
  breathMm: breath,
  sticks: fc.integer({ min: 600, max: 2400 }).map((lengthMm) => [{ lengthMm, price: null, onHand: null }]),
  pieces: pieces(12, 12),
});

/** A few pieces from two or three lengths, one of them long enough and endless, at whole prices. */
const smallPriced: fc.Arbitrary<StockRequest> = fc.record({
  stock: fc.constant('ash'),
  kerfMm: fc.integer({ min: 0, max: 30 }).map((tenths) => tenths / 10),
  endTrimMm: fc.integer({ min: 0, max: 5 }),
  breathMm: breath,
  sticks: fc
    .tuple(
      fc.record({
        lengthMm: fc.integer({ min: 520, max: 1500 }),
        price: fc.integer({ min: 1, max: 9 }),
        onHand: fc.constant(null),
      }),
      fc.array(
        fc.record({
          lengthMm: fc.integer({ min: 300, max: 1500 }),
          price: fc.integer({ min: 0, max: 9 }),
          onHand: fc.integer({ min: 1, max: 2 }),
        }),
        { minLength: 1, maxLength: 2 },
      ),
    )
    .map(([first, others]) => [first, ...others]),
  pieces: pieces(4, 2),
});

const tenths = (value: number): number => Math.round(value * 10);

/** Sticks by first-fit decreasing, written again from its definition. */
function firstFit({ kerfMm, endTrimMm, breathMm, sticks, pieces: demands }: StockRequest): number {
  const cut = tenths(kerfMm) + tenths(breathMm.cut);
  const room = tenths(sticks[0]?.lengthMm ?? 0) - 2 * tenths(endTrimMm) - tenths(breathMm.stick) + cut;
  const weights = demands.flatMap(({ lengthMm, total }) => Array.from({ length: total }, () => tenths(lengthMm) + cut));
  const spaces: number[] = [];
  for (const weight of weights.sort((a, b) => b - a)) {
    const at = spaces.findIndex((space) => space >= weight);
    if (at >= 0) spaces[at] = (spaces[at] ?? 0) - weight;
    else spaces.push(room - weight);
  }
  return spaces.length;
}

const replaced = (values: readonly number[], at: number, value: number): number[] =>
  values.map((before, index) => (index === at ? value : before));

/** The least cost by trying every stick for every piece. */
function leastCost({ kerfMm, endTrimMm, breathMm, sticks, pieces: demands }: StockRequest): number {
  const cut = tenths(kerfMm) + tenths(breathMm.cut);
  const rooms = sticks.map(({ lengthMm }) => tenths(lengthMm) - 2 * tenths(endTrimMm) - tenths(breathMm.stick) + cut);
  const weights = demands
    .flatMap(({ lengthMm, total }) => Array.from({ length: total }, () => tenths(lengthMm) + cut))
    .sort((a, b) => b - a);
  let best = Infinity;
  function place(index: number, spaces: readonly number[], left: readonly number[], cost: number): void {
    if (cost >= best) return;
    const weight = weights[index];
    if (weight === undefined) {
      best = cost;
      return;
    }
    const tried = new Set<number>();
    spaces.forEach((space, at) => {
      if (space < weight || tried.has(space)) return;
      tried.add(space);
      place(index + 1, replaced(spaces, at, space - weight), left, cost);
    });
    rooms.forEach((room, type) => {
      if (room < weight || (left[type] ?? 0) <= 0) return;
      const nowLeft = replaced(left, type, (left[type] ?? 0) - 1);
      place(index + 1, [...spaces, room - weight], nowLeft, cost + (sticks[type]?.price ?? 1));
    });
  }
  place(
    0,
    [],
    sticks.map(({ onHand }) => onHand ?? Infinity),
    0,
  );
  return best;
}

test('one length: sound, and no worse than first-fit decreasing', async () => {
  await fc.assert(
    fc.asyncProperty(oneLength, async (request) => {
      const plan = await planOf(request);
      expect(plan.value).toBeLessThanOrEqual(firstFit(request));
    }),
    { numRuns: 150 },
  );
});

test('few pieces, priced lengths, some on hand: bound ≤ optimum ≤ plan, and equal when proven', async () => {
  let proven = 0;
  await fc.assert(
    fc.asyncProperty(smallPriced, async (request) => {
      const plan = await planOf(request);
      const optimum = leastCost(request);
      expect(plan.bound).toBeLessThanOrEqual(optimum);
      expect(plan.value).toBeGreaterThanOrEqual(optimum);
      if (plan.proven) proven += 1;
    }),
    { numRuns: 150 },
  );
  expect(proven).toBeGreaterThanOrEqual(145);
});

test('few pieces, lengths without prices: the fewest sticks to buy', async () => {
  await fc.assert(
    fc.asyncProperty(smallPriced, async (priced) => {
      const sticks = priced.sticks.map((stick) => ({ ...stick, price: stick.onHand === null ? null : 0 }));
      const request = { ...priced, sticks };
      const plan = await planOf(request);
      expect(plan.bound).toBeLessThanOrEqual(leastCost(request));
      expect(plan.value).toBe(leastCost(request));
    }),
    { numRuns: 150 },
  );
});

test('few pieces, two lengths to buy and some in the rack: of the fewest sticks the least length, by force too', async () => {
  const beyondAllLengths = 100_000;
  await fc.assert(
    fc.asyncProperty(smallPriced, fc.integer({ min: 300, max: 1500 }), async (priced, second) => {
      const sticks = [
        ...priced.sticks.map((stick) => ({ ...stick, price: stick.onHand === null ? null : 0 })),
        { lengthMm: second, price: null, onHand: null },
      ];
      const request = { ...priced, sticks };
      const plan = await planOf(request);
      const asPrices = sticks.map((stick) => ({
        ...stick,
        price: stick.onHand === null ? beyondAllLengths + stick.lengthMm : 0,
      }));
      const least = leastCost({ ...request, sticks: asPrices });
      expect(plan.value).toBe(Math.floor(least / beyondAllLengths));
      if (plan.length === null) return;
      expect(plan.length.valueMm).toBe(least % beyondAllLengths);
      expect(plan.length.boundMm).toBeLessThanOrEqual(plan.length.valueMm);
      expect(plan.length.proven).toBe(true);
    }),
    { numRuns: 150 },
  );
});
