/** Spares of a class of twelve, by hand: binomial tables, and counting out small classes. */
import { describe, expect, test } from 'vitest';
import { seededRandom } from '../../../server/shop/sheets/seeded-random.ts';
import { boxSuffices, leastBox, withoutBox } from '../../../server/shop/marks/class-spares.ts';

const coasters = [8, 16, 2].map((each) => ({ each, students: 12, breakage: 0.05 }));

describe('a class of twelve, one in twenty breaks', () => {
  /** P(Bin(11, 5 %) ≤ 3)¹² = 0.9984¹² = 0.981, with ten 0.9885¹² = 0.870; 20 and 4 a bag likewise. */
  test('spares in the bags alone: all twelve bags suffice together', () => {
    expect(coasters.map((need) => withoutBox(need, 0.95))).toEqual([132, 240, 48]);
  });

  test('one spare a bag and eight in the box suffice', () => {
    const [strips, bars, crosses] = coasters.map((need) => boxSuffices(need, 1, 8));
    expect(strips).toBeCloseTo(0.9999, 4);
    expect(bars).toBeCloseTo(0.978, 3);
    expect(crosses).toBeCloseTo(1, 3);
  });

  test('the least box for 95 %', () => {
    expect(coasters.map((need) => leastBox(need, 1, 0.95))).toEqual([3, 7, 1]);
  });
});

/** Each of two students needs one piece, a half breaks: none drawn with 1/4, one with 2 · 1/2 · 1/4, two with 2 · 1/2 · 1/8 + 1/16. */
test('counted out: two students, one piece each, every other one breaks', () => {
  const need = { each: 1, students: 2, breakage: 0.5 };
  expect([0, 1, 2].map((box) => boxSuffices(need, 0, box))).toEqual([0.25, 0.5, 0.6875]);
  expect(boxSuffices(need, 1, 0)).toBe(0.75 ** 2);
  expect(leastBox(need, 0, 0.6)).toBe(2);
});

test('nothing breaks, or nearly all does', () => {
  expect(leastBox({ each: 40, students: 30, breakage: 0 }, 0, 0.95)).toBe(0);
  expect(leastBox({ each: 40, students: 30, breakage: 0.99 }, 0, 0.95)).toBeNull();
});

/** By drawing lots, from the definition: 20 000 classes with a generator of fixed seed. */
test('by lots', () => {
  const lot = seededRandom(12_345);
  const drawn = (): number => {
    let [good, cut] = [0, 0];
    while (good < 16) {
      cut++;
      if (lot() >= 0.05) good++;
    }
    return Math.max(0, cut - 17);
  };
  const classes = 20_000;
  let enough = 0;
  for (let count = 0; count < classes; count++) {
    const all = Array.from({ length: 12 }, drawn).reduce((total, each) => total + each, 0);
    if (all <= 8) enough++;
  }
  expect(enough / classes).toBeCloseTo(boxSuffices({ each: 16, students: 12, breakage: 0.05 }, 1, 8), 2);
});
