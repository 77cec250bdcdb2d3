import fc from 'fast-check';
import { expect, test } from 'vitest';
import { bestAssignment } from '../../server/compare/best-assignment.ts';

/** The least total by trying everything: each row takes a free column below the limit, or none at the limit's cost. */
function leastTotal(costs: readonly (readonly number[])[], limit: number, row = 0, taken = new Set<number>()): number {
  const line = costs[row];
  if (!line) return 0;
  let best = limit + leastTotal(costs, limit, row + 1, taken);
  line.forEach((cost, column) => {
    if (taken.has(column) || cost >= limit) return;
    const total = cost + leastTotal(costs, limit, row + 1, new Set([...taken, column]));
    best = Math.min(best, total);
  });
  return best;
}

const table = fc.tuple(fc.integer({ min: 0, max: 5 }), fc.integer({ min: 0, max: 5 })).chain(([rows, columns]) =>
  fc.array(fc.array(fc.integer({ min: 0, max: 12 }), { minLength: columns, maxLength: columns }), {
    minLength: rows,
    maxLength: rows,
  }),
);

test('no pairing costs less, and none uses a column twice (all pairings tried)', () => {
  fc.assert(
    fc.property(table, fc.integer({ min: 1, max: 12 }), (costs, limit) => {
      const paired = bestAssignment(costs, limit);
      const columns = paired.filter((column) => column !== null);
      expect(new Set(columns).size).toBe(columns.length);
      const total = paired.reduce<number>(
        (sum, column, row) => sum + (column === null ? limit : (costs[row]?.[column] ?? NaN)),
        0,
      );
      expect(total).toBe(leastTotal(costs, limit));
    }),
    { numRuns: 300 },
  );
});

test('takes the second best where the best is needed elsewhere', () => {
  // worked by hand: 1 + 2 beats 0 + 9
  expect(
    bestAssignment(
      [
        [0, 1],
        [2, 9],
      ],
      10,
    ),
  ).toEqual([1, 0]);
  expect(bestAssignment([[4]], 4)).toEqual([null]);
  expect(bestAssignment([], 4)).toEqual([]);
});
