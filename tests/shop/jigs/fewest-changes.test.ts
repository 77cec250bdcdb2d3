/** The order with the fewest changes, against every order of small cases and by hand. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { fewestChanges, type Job } from '../../../server/shop/jigs/fewest-changes.ts';

const job = (settings: number[], after: number[] = []): Job => ({ settings, after });

function costOf(jobs: readonly Job[], weights: readonly number[], order: readonly number[]): number {
  return order.slice(1).reduce((sum, to, index) => {
    const [a, b] = [jobs[order[index] ?? 0], jobs[to]];
    return (
      sum + weights.reduce((all, weight, thing) => all + (a?.settings[thing] === b?.settings[thing] ? 0 : weight), 0)
    );
  }, 0);
}

function keepsPrecedence(jobs: readonly Job[], order: readonly number[]): boolean {
  return order.every((each, place) => (jobs[each]?.after ?? []).every((first) => order.indexOf(first) < place));
}

function permutations(numbers: readonly number[]): number[][] {
  if (numbers.length === 0) return [[]];
  return numbers.flatMap((first) =>
    permutations(numbers.filter((other) => other !== first)).map((rest) => [first, ...rest]),
  );
}

/** Up to seven jobs with few settings; a job may wait only for earlier ones, so there is no circle. */
const smallCase = fc.integer({ min: 1, max: 7 }).chain((count) =>
  fc.tuple(
    fc.array(
      fc.tuple(fc.integer({ min: 0, max: 3 }), fc.integer({ min: 0, max: 3 }), fc.array(fc.nat(6), { maxLength: 2 })),
      {
        minLength: count,
        maxLength: count,
      },
    ),
    fc.tuple(fc.integer({ min: 1, max: 3 }), fc.integer({ min: 1, max: 3 })),
  ),
);

describe('the fewest changes', () => {
  test('is the least of all orders that keep what comes first', () => {
    fc.assert(
      fc.property(smallCase, ([rows, weights]) => {
        const jobs = rows.map(([a, b, after], index) =>
          job(
            [a, b],
            after.filter((first) => first < index),
          ),
        );
        const found = fewestChanges(jobs, weights);
        const orders = permutations([...jobs.keys()]).filter((order) => keepsPrecedence(jobs, order));
        expect(keepsPrecedence(jobs, found.order)).toBe(true);
        expect([...found.order].sort()).toEqual([...jobs.keys()]);
        expect(found.cost).toBe(costOf(jobs, weights, found.order));
        expect(found.cost).toBe(Math.min(...orders.map((order) => costOf(jobs, weights, order))));
        expect(found.proven).toBe(true);
      }),
      { numRuns: 60 },
    );
  });

  test('forty lengths blunt on one jig, then sharp on the other: one change of jig', () => {
    const lengths = Array.from({ length: 40 }, (_, index) => index);
    const jobs = [
      ...lengths.map((length) => job([60, length])),
      ...lengths.map((length) => job([30, 100 + length], [length])),
    ];
    expect(fewestChanges(jobs, [1, 1])).toMatchObject({ cost: 1 + 79, bound: 80, proven: true });
  });

  test('a piece blunt at 60 and one sharp at 60 need three spells of jigs', () => {
    const jobs = [job([60, 1]), job([30, 2], [0]), job([30, 3]), job([60, 4], [2])];
    expect(fewestChanges(jobs, [1, 0])).toMatchObject({ cost: 2, proven: true });
  });

  test('stops that two jigs share are kept in passing', () => {
    expect(fewestChanges([job([1, 1]), job([2, 2]), job([1, 2]), job([2, 1])], [1, 1])).toMatchObject({ cost: 3 });
  });

  test('nothing to do costs nothing; a circle is refused', () => {
    expect(fewestChanges([], [1])).toEqual({ order: [], cost: 0, bound: 0, proven: true });
    expect(() => fewestChanges([job([1], [1]), job([2], [0])], [1])).toThrow(RangeError);
  });

  test('stopped early it still gives a whole order, and an honest bound', () => {
    fc.assert(
      fc.property(smallCase, ([rows, weights]) => {
        const jobs = rows.map(([a, b, after], index) =>
          job(
            [a, b],
            after.filter((first) => first < index),
          ),
        );
        const [exact, early] = [fewestChanges(jobs, weights), fewestChanges(jobs, weights, 1)];
        expect(keepsPrecedence(jobs, early.order)).toBe(true);
        expect(early.order).toHaveLength(jobs.length);
        expect(early.bound).toBeLessThanOrEqual(exact.cost);
        expect(early.cost).toBeGreaterThanOrEqual(exact.cost);
        expect(early.proven).toBe(early.cost === early.bound);
      }),
    );
  });
});
