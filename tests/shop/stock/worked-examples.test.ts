/** Cutting plans against worked examples of the literature: optimum met and proven. */
import { describe, expect, test } from 'vitest';
import { planOf, requestOf } from './ask.ts';

/** Paper rolls of 5600 mm: an encyclopaedia's example; with kerf, derived from its linear relaxation (73.07 and 73.39). */
const paperRolls = [
  [1380, 22],
  [1520, 25],
  [1560, 12],
  [1710, 14],
  [1820, 18],
  [1880, 18],
  [1930, 20],
  [2000, 10],
  [2050, 12],
  [2100, 14],
  [2140, 16],
  [2150, 18],
  [2200, 20],
] as const;

describe('thirteen widths of paper from rolls of 5600 mm', () => {
  test.each([
    [73, 0],
    [74, 1],
    [74, 2],
    [74, 3],
    [74, 5],
    [74, 10],
  ])('%i rolls with a kerf of %i', async (rolls, kerfMm) => {
    const plan = await planOf(requestOf(5600, paperRolls, { kerfMm }));
    expect(plan).toMatchObject({ sticksUsed: rolls, value: rolls, bound: rolls, proven: true, needMm: 407_160 });
    expect(plan.wastePct).toBeCloseTo(100 * (1 - 407_160 / (rolls * 5600)), 2);
  });
});

describe('examples of textbooks and manuals', () => {
  test.each([
    // Chvátal, Linear Programming (1983), chapter 13; the second in tenths of an inch.
    {
      source: 'Chvátal 100 in',
      stick: 100,
      optimum: 453,
      pieces: [
        [45, 97],
        [36, 610],
        [31, 395],
        [14, 211],
      ],
    },
    {
      source: 'Chvátal 91 in',
      stick: 91,
      optimum: 44,
      pieces: [
        [25.5, 78],
        [22.5, 40],
        [20, 30],
        [15, 30],
      ],
    },
    // Fourer, Gay & Kernighan, AMPL, 2nd edition (2003), chapter 14.
    {
      source: 'AMPL 110 in',
      stick: 110,
      optimum: 47,
      pieces: [
        [20, 48],
        [45, 35],
        [50, 24],
        [55, 10],
        [75, 8],
      ],
    },
    {
      source: 'five sizes of 115',
      stick: 115,
      optimum: 60,
      pieces: [
        [25, 50],
        [40, 36],
        [50, 24],
        [55, 8],
        [70, 30],
      ],
    },
    {
      source: 'twenty widths of 100',
      stick: 100,
      optimum: 334,
      pieces: [
        [75, 189],
        [53.8, 33],
        [53, 36],
        [51, 41],
        [50.2, 35],
        [32.2, 37],
        [30.8, 44],
        [29.8, 49],
        [20.1, 37],
        [16.2, 36],
        [14.5, 42],
        [11, 33],
        [8.6, 47],
        [8.2, 35],
        [6.6, 49],
        [5.1, 42],
      ],
    },
  ] as const)('$source: $optimum', async ({ stick, pieces, optimum }) => {
    expect(await planOf(requestOf(stick, pieces))).toMatchObject({ value: optimum, bound: optimum, proven: true });
  });
});

/** Instances with a known optimum: sticks of 1000 cut into three pieces of 250 to 499 each, nothing left over. */
describe('triplets without waste', () => {
  test.each([1, 2, 3, 4, 5, 6])('forty sticks, seed %i', async (seed) => {
    let state = seed;
    const random = (below: number): number => {
      // Minimal standard generator (Park & Miller 1988).
      state = (state * 48_271) % 2_147_483_647;
      return state % below;
    };
    const pieces: [number, number][] = Array.from({ length: 40 }, () => {
      const first = 380 + random(116);
      const second = 250 + random(1000 - first - 500 + 1);
      return [first, second, 1000 - first - second];
    }).flatMap((lengths) => lengths.map((length): [number, number] => [length, 1]));
    const plan = await planOf(requestOf(1000, pieces));
    expect(plan).toMatchObject({ value: 40, bound: 40, proven: true, wastePct: 0 });
  });
});

/** Sticks of strip in millimetres and tenths: what a shop really asks. Worked by hand. */
describe('kerf, trim and lengths that just fit', () => {
  test('three pieces and two kerfs fill a stick to the last', async () => {
    const plan = await planOf(requestOf(1020, [[332, 6]], { kerfMm: 2, endTrimMm: 10 }));
    expect(plan.sticks).toEqual([
      { lengthMm: 1020, cuts: [{ mark: 'P1', lengthMm: 332, n: 3 }], onHand: false, count: 2, offcutMm: 0 },
    ]);
  });

  test('a ten-thousandth too much and only two fit', async () => {
    const plan = await planOf(requestOf(1020, [[332.0001, 6]], { kerfMm: 2, endTrimMm: 10 }));
    expect(plan).toMatchObject({ sticksUsed: 3, proven: true });
  });

  test('pieces of one length keep their marks', async () => {
    const plan = await planOf(
      requestOf(900, [
        [300, 4],
        [300, 5],
      ]),
    );
    expect(plan).toMatchObject({ sticksUsed: 3, wastePct: 0, proven: true });
  });

  test('lengths of a lattice, to the ten-thousandth', async () => {
    const step = 36 * (Math.sqrt(3) / 2);
    const pieces = Array.from({ length: 12 }, (_, row): [number, number] => [row * step + 40.1234, 6]);
    const plan = await planOf(requestOf(2400, pieces, { kerfMm: 1.2, endTrimMm: 15 }));
    expect(plan).toMatchObject({ proven: true });
  });
});
