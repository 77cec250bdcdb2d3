/** Pieces to cut against breakage, by tables of the cumulative binomial distribution and by exact sums. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { layOutPanel } from '../../../server/lattice/lay-out-panel.ts';
import type { Kit } from '../../../server/design/work-model.ts';
import { markKinds } from '../../../server/shop/marks/mark-kinds.ts';
import { piecesToCut, sparesFor } from '../../../server/shop/marks/spares.ts';
import { cellsShape, fillOf, gridOf, kitOf, panelOf, squareHemp, stripStock, tipOf45 } from '../../design-builder.ts';

/**
 * P(at most k of n fail), four decimals, from the cumulative binomial table that statistics textbooks print ("Table A1,
 * Binomial distribution"): columns p = 0.05, 0.10, 0.20; rows n, k. Those of n = 20 are remembered from the same kind of
 * table and agree with exact sums.
 */
const table: [n: number, k: number, p: number, probability: number][] = [
  [4, 1, 0.1, 0.9477],
  [5, 1, 0.05, 0.9774],
  [6, 1, 0.1, 0.8857],
  [6, 2, 0.2, 0.9011],
  [7, 1, 0.1, 0.8503],
  [7, 2, 0.1, 0.9743],
  [7, 2, 0.2, 0.852],
  [8, 1, 0.05, 0.9428],
  [8, 1, 0.2, 0.5033],
  [20, 2, 0.1, 0.6769],
  [20, 4, 0.1, 0.9568],
  [20, 5, 0.1, 0.9887],
];

/** C(n, k)·p^k·(1 − p)^(n − k) summed in whole numbers: p = tenths / 1000. */
function exactlyEnough(n: number, k: number, thousandths: number): { part: bigint; whole: bigint } {
  const [p, q] = [BigInt(thousandths), BigInt(1000 - thousandths)];
  let part = 0n;
  let choose = 1n;
  for (let i = 0; i <= k; i++) {
    part += choose * p ** BigInt(i) * q ** BigInt(n - i);
    choose = (choose * BigInt(n - i)) / BigInt(i + 1);
  }
  return { part, whole: 1000n ** BigInt(n) };
}

const billion = 1_000_000_000n;

describe('pieces to cut', () => {
  test.each(table)('n %d, k %d, p %d: the table’s %d is just what k spares give', (n, k, breakage, probability) => {
    expect(piecesToCut(n - k, breakage, probability - 0.0001)).toBeLessThanOrEqual(n);
    expect(piecesToCut(n - k, breakage, probability + 0.0001)).toBeGreaterThan(n);
  });

  test('five good ones at 10 % breakage and 95 % confidence: seven', () => {
    expect(piecesToCut(5, 0.1, 0.95)).toBe(7);
  });

  test('the fewest that are enough, by exact sums', () => {
    const make = fc.integer({ min: 1, max: 60 });
    const breakage = fc.integer({ min: 1, max: 400 });
    const confidence = fc.integer({ min: 1, max: 999 });
    fc.assert(
      fc.property(make, breakage, confidence, (needed, thousandths, sure) => {
        const cut = piecesToCut(needed, thousandths / 1000, sure / 1000);
        const isEnough = (n: number, billionths: bigint): boolean => {
          const { part, whole } = exactlyEnough(n, n - needed, thousandths);
          return billion * part >= (BigInt(sure) * (billion / 1000n) + billionths) * whole;
        };
        expect(isEnough(cut, -2n)).toBe(true);
        expect(cut > needed && isEnough(cut - 1, 2n)).toBe(false);
      }),
    );
  });

  test('needs never fall when more are wanted, more break or more is asked for', () => {
    const fraction = fc.double({ min: 0, max: 0.9, noNaN: true });
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 500 }), fraction, fraction, (make, breakage, confidence) => {
        const cut = piecesToCut(make, breakage, confidence);
        expect(cut).toBeGreaterThanOrEqual(make);
        expect(piecesToCut(make + 1, breakage, confidence)).toBeGreaterThan(cut);
        expect(piecesToCut(make, breakage + 0.05, confidence)).toBeGreaterThanOrEqual(cut);
        expect(piecesToCut(make, breakage, confidence + 0.05)).toBeGreaterThanOrEqual(cut);
      }),
    );
  });

  test('an even match of chance and confidence needs no more', () => {
    for (const percent of [1, 5, 8, 10, 20, 30, 40]) {
      expect(piecesToCut(1, percent / 100, 1 - percent / 100)).toBe(1);
    }
  });

  test('nothing breaks, nothing is wanted', () => {
    expect(piecesToCut(100, 0, 0.99)).toBe(100);
    expect(piecesToCut(0, 0.3, 0.99)).toBe(0);
  });

  test('large numbers and near certainty come to an end', () => {
    const cut = piecesToCut(100_000, 0.3, 0.999);
    expect(cut).toBeGreaterThan(100_000 / 0.7);
    expect(cut).toBeLessThan((100_000 / 0.7) * 1.01);
    expect(piecesToCut(10, 0.1, 1 - Number.EPSILON / 2)).toBeLessThan(60);
  });

  test('refuses what is no fraction', () => {
    expect(() => piecesToCut(1, 1, 0.5)).toThrow(RangeError);
    expect(() => piecesToCut(1, -0.1, 0.5)).toThrow(RangeError);
    expect(() => piecesToCut(1, 0.1, 1)).toThrow(RangeError);
    expect(() => piecesToCut(1, Number.NaN, 0.5)).toThrow(RangeError);
  });
});

describe('spares of a mark', () => {
  test('a share, rounded up, and at least one', () => {
    expect(sparesFor(100, { spare: 0.08, breakage: null })).toBe(8);
    expect(sparesFor(101, { spare: 0.08, breakage: null })).toBe(9);
    expect(sparesFor(3, { spare: 0.08, breakage: null })).toBe(1);
    expect(sparesFor(3, { spare: 0, breakage: null })).toBe(1);
    expect(sparesFor(100, { spare: null, breakage: null })).toBe(0);
  });

  test('a breakage goes before a share: five at 10 % and 95 % need two', () => {
    expect(sparesFor(5, { spare: 0.5, breakage: { share: 0.1, confidence: 0.95 } })).toBe(2);
  });

  const stock = stripStock('ash', 3, { spare: 0.1 });
  const panel = (copies: number) =>
    panelOf(gridOf('square', 40, stock), cellsShape(2, 2), {
      copies,
      fills: [fillOf('square', squareHemp([tipOf45]), stock)],
    });
  const kindsOf = (copies: number, workCopies: number, more?: Partial<Kit>) => {
    const design = panel(copies);
    const { panel: laid } = layOutPanel(design, copies * workCopies);
    return markKinds(laid ? [laid] : [], more ? [kitOf(design, more)] : []);
  };

  test('copies of panel and work multiply, and needed + spare = cut', () => {
    const one = kindsOf(1, 1);
    const many = kindsOf(3, 2);
    [...many.pieces, ...many.strips].forEach((kind, index) => {
      const single = [...one.pieces, ...one.strips][index];
      expect(kind.make).toBe(6 * (single?.make ?? 0));
      expect(kind.spare).toBe(Math.ceil(kind.make * 0.1));
      expect(kind.total).toBe(kind.make + kind.spare);
    });
  });

  test('for a class what its kit states, for each mark: twelve bags with one, and five in the box', () => {
    for (const { spare } of kindsOf(12, 1, { students: 12, sparesPerBag: 1, sparesWithTeacher: 5 }).pieces)
      expect(spare).toBe(17);
  });

  test('a kit that states none leaves the stock’s rule', () => {
    for (const { make, spare } of kindsOf(12, 1, { students: 12 }).pieces) expect(spare).toBe(Math.ceil(make * 0.1));
  });
});
