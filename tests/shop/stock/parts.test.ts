/** The parts a proof rests on, each against a plain definition: fillings, bounds, listed patterns. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { CuttingTask } from '../../../server/shop/stock/cutting-task.ts';
import { dualBound, nextPossible, provenBySolver } from '../../../server/shop/stock/dual-bound.ts';
import { enumeratePatterns } from '../../../server/shop/stock/enumerate-patterns.ts';
import { fillByTable, type KnapsackItem, tableSize } from '../../../server/shop/stock/knapsack.ts';
import { priceFilling } from '../../../server/shop/stock/price-filling.ts';
import { searchFilling } from '../../../server/shop/stock/search-filling.ts';
import { worthUnit } from '../../../server/shop/stock/worths.ts';
import { planOf, requestOf } from './ask.ts';

const items: fc.Arbitrary<KnapsackItem[]> = fc.array(
  fc.record({
    weight: fc.integer({ min: 1, max: 40 }),
    worth: fc.integer({ min: 0, max: 50 }),
    most: fc.integer({ min: 0, max: 4 }),
  }),
  { minLength: 1, maxLength: 5 },
);

/** Every filling there is, by counting up. */
function allFillings(list: readonly KnapsackItem[], room: number): number[][] {
  return list
    .reduce<{ counts: number[]; space: number }[]>(
      (begun, { weight, most }) =>
        begun.flatMap(({ counts, space }) =>
          Array.from({ length: most + 1 }, (_, n) => ({ counts: [...counts, n], space: space - n * weight })).filter(
            (next) => next.space >= 0,
          ),
        ),
      [{ counts: [], space: room }],
    )
    .map(({ counts }) => counts);
}

const total = (list: readonly KnapsackItem[], counts: readonly number[], of: 'weight' | 'worth'): number =>
  list.reduce((sum, item, index) => sum + item[of] * (counts[index] ?? 0), 0);

describe('the most valuable filling', () => {
  test('is found by the table, by the search, and priced exactly', () => {
    fc.assert(
      fc.property(items, fc.integer({ min: 0, max: 120 }), (list, room) => {
        const best = Math.max(...allFillings(list, room).map((counts) => total(list, counts, 'worth')));
        const nothing = { worth: 0, counts: list.map(() => 0) };
        const found = [
          fillByTable(list, room),
          searchFilling(list, room, nothing, Infinity, 1_000_000),
          priceFilling(list, room),
        ];
        for (const { worth, counts } of found) {
          expect(worth).toBe(best);
          expect(total(list, counts, 'worth')).toBe(best);
          expect(total(list, counts, 'weight')).toBeLessThanOrEqual(room);
          expect(counts.every((count, index) => count <= (list[index]?.most ?? 0))).toBe(true);
        }
        expect(priceFilling(list, room).ceiling).toBe(best);
      }),
    );
  });

  test('of a room divided too finely for a table lies under its ceiling, and fits', () => {
    // Worth as good as proportional to weight: the search gives up, and the table is in coarser units.
    const list = Array.from({ length: 400 }, (_, index) => {
      const weight = 1_000_003 + ((index * 7_919_111) % 5_000_000);
      return { weight, worth: weight + (index % 7), most: 3 };
    });
    const room = 24_000_017;
    expect(tableSize(list, room)).toBeGreaterThan(8_000_000);
    const { worth, counts, ceiling } = priceFilling(list, room);
    expect(total(list, counts, 'weight')).toBeLessThanOrEqual(room);
    expect(total(list, counts, 'worth')).toBe(worth);
    expect(ceiling).toBeGreaterThanOrEqual(worth);
    expect(worth).toBeGreaterThan(0.99 * room);
  });

  test('a search that gives up says so', () => {
    const list = Array.from({ length: 30 }, (_, index) => ({
      weight: 1000 + 7 * index,
      worth: 1000 + 6 * index,
      most: 9,
    }));
    const nothing = { worth: 0, counts: list.map(() => 0) };
    expect(searchFilling(list, 9999, nothing, Infinity, 20).complete).toBe(false);
  });
});

/** Two stick types, the second of them scarce. */
const tasks: fc.Arbitrary<CuttingTask> = fc.record({
  sizes: fc.array(fc.record({ weight: fc.integer({ min: 5, max: 40 }), demand: fc.integer({ min: 1, max: 2 }) }), {
    minLength: 1,
    maxLength: 3,
  }),
  sticks: fc.tuple(
    fc.record({
      room: fc.integer({ min: 40, max: 90 }),
      cost: fc.integer({ min: 1, max: 9 }),
      limit: fc.constant(Infinity),
      counted: fc.constant(true),
    }),
    fc.record({
      room: fc.integer({ min: 5, max: 90 }),
      cost: fc.integer({ min: 0, max: 9 }),
      limit: fc.constant(2),
      counted: fc.boolean(),
    }),
  ),
  mostSticks: fc.constantFrom(Infinity, 6),
});

/** The least cost by trying every pattern for the next stick. */
function leastCost({ sizes, sticks, mostSticks }: CuttingTask): number {
  let best = Infinity;
  function cut(wanted: readonly number[], limits: readonly number[], left: number, cost: number): void {
    if (cost >= best) return;
    if (wanted.every((count) => count <= 0)) {
      best = cost;
      return;
    }
    sticks.forEach((stick, type) => {
      if ((limits[type] ?? 0) <= 0 || (stick.counted && left === 0)) return;
      const list = sizes.map(({ weight }, size) => ({ weight, worth: 1, most: wanted[size] ?? 0 }));
      for (const counts of allFillings(list, stick.room)) {
        if (counts.every((count) => count === 0)) continue;
        const still = wanted.map((count, size) => count - (counts[size] ?? 0));
        const limited = limits.map((limit, at) => (at === type ? limit - 1 : limit));
        cut(still, limited, stick.counted ? left - 1 : left, cost + stick.cost);
      }
    });
  }
  const demands = sizes.map(({ demand }) => demand);
  cut(
    demands,
    sticks.map(({ limit }) => limit),
    mostSticks,
    0,
  );
  return best;
}

test('no worths whatever give a bound above the optimum', () => {
  fc.assert(
    fc.property(
      tasks,
      fc.array(fc.double({ min: 0, max: 3, noNaN: true }), { minLength: 3, maxLength: 3 }),
      (task, shares) => {
        const worths = task.sizes.map((_, size) => Math.floor((shares[size] ?? 0) * worthUnit(task)));
        const list = task.sizes.map(({ weight, demand }, size) => ({ weight, worth: worths[size] ?? 0, most: demand }));
        const ceilings = task.sticks.map(({ room }) => fillByTable(list, room).worth);
        expect(nextPossible(dualBound(task, worths, ceilings).bound)).toBeLessThanOrEqual(leastCost(task));
      },
    ),
    { numRuns: 200 },
  );
});

test('listed patterns are those that take no more piece and are worth enough', () => {
  fc.assert(
    fc.property(items, fc.integer({ min: 0, max: 120 }), fc.integer({ min: 0, max: 60 }), (list, room, least) => {
      const sizes = list.map(({ weight, most }) => ({ weight, demand: most }));
      const task = { sizes, sticks: [{ room, cost: 1, limit: Infinity, counted: true }], mostSticks: Infinity };
      const worths = list.map(({ worth }) => worth);
      const listed = enumeratePatterns(task, { worths, least: [least], mostPatterns: 1e5, mostSteps: 1e6 });
      const full = allFillings(list, room).filter((counts) => {
        const space = room - total(list, counts, 'weight');
        const takesMore = list.some(({ weight, most }, index) => weight <= space && (counts[index] ?? 0) < most);
        return !takesMore && total(list, counts, 'worth') >= least;
      });
      expect(new Set(listed?.map(({ counts }) => counts.join()))).toEqual(new Set(full.map((counts) => counts.join())));
    }),
  );
});

test('too many patterns to list are not listed in part', () => {
  const sizes = Array.from({ length: 20 }, (_, index) => ({ weight: 10 + index, demand: 5 }));
  const task = { sizes, sticks: [{ room: 200, cost: 1, limit: Infinity, counted: true }], mostSticks: Infinity };
  const demand = { worths: sizes.map(({ weight }) => weight), least: [0] };
  expect(enumeratePatterns(task, { ...demand, mostPatterns: 50, mostSteps: 1e6 })).toBeNull();
  expect(enumeratePatterns(task, { ...demand, mostPatterns: 1e6, mostSteps: 50 })).toBeNull();
});

test('bounds round up to whole costs, but never on the rounding of arithmetic or of a solver', () => {
  expect(nextPossible(73.07)).toBe(74);
  expect(nextPossible(73 + 1e-12)).toBe(73);
  expect(nextPossible(-3)).toBe(0);
  expect(provenBySolver(73.9999)).toBe(74);
  expect(provenBySolver(73.0001)).toBe(73);
  expect(provenBySolver(Infinity)).toBe(Infinity);
});

/** Two sticks would hold the length, and the linear relaxation stays below two; no two sticks can be cut so (by hand). */
test('an optimum one above the rounded relaxation is proven', async () => {
  const plan = await planOf(
    requestOf(132, [
      [44, 2],
      [33, 3],
      [12, 6],
    ]),
  );
  expect(plan).toMatchObject({ value: 3, bound: 3, proven: true });
});
