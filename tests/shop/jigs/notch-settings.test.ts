/** Fence, pin, stop, blade and passes for rows of notches, by hand. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { NotchRun } from '../../../server/lattice/laid-panel.ts';
import { notchSettings, passesFor, type StripBatch } from '../../../server/shop/jigs/notch-settings.ts';

const run = (more: Partial<NotchRun>): NotchRun => ({
  first: 20,
  step: 40,
  count: 5,
  width: 3,
  angle: 90,
  depth: 5,
  from: 'above',
  ...more,
});
const batch = (mark: string, strips: number, ...notches: NotchRun[]): StripBatch => ({ mark, strips, notches });
const saw = { kerf: 3, gang: 10 };

describe('passes', () => {
  test('whole gangs, times notches, times cuts side by side', () => {
    expect(passesFor(25, 9, 3.05, { kerf: 3, gang: 10 })).toBe(3 * 9 * 2);
    expect(passesFor(20, 9, 3, { kerf: 3, gang: 10 })).toBe(2 * 9);
    expect(passesFor(1, 1, 9.6, { kerf: 3.2, gang: 1 })).toBe(3);
    expect(passesFor(25, 9, 3, { kerf: null, gang: 10 })).toBeNull();
  });

  test('never fewer for more strips, more notches, a wider notch or a thinner blade', () => {
    const number = fc.integer({ min: 1, max: 40 });
    const length = fc.integer({ min: 50, max: 1000 }).map((hundredths) => hundredths / 100);
    fc.assert(
      fc.property(number, number, length, length, number, (strips, notches, width, kerf, gang) => {
        const passes = passesFor(strips, notches, width, { kerf, gang }) ?? 0;
        expect(passes * gang * kerf).toBeGreaterThanOrEqual(strips * notches * width * (1 - 1e-9));
        expect(passesFor(strips + 1, notches, width, { kerf, gang })).toBeGreaterThanOrEqual(passes);
        expect(passesFor(strips, notches, width + 1, { kerf, gang })).toBeGreaterThanOrEqual(passes);
        expect(passesFor(strips, notches, width, { kerf: kerf / 2, gang })).toBeGreaterThanOrEqual(passes);
      }),
    );
  });
});

describe('a row of notches', () => {
  test('square: first stop to the near side, pin along the fence and square to the blade alike', () => {
    const { rows } = notchSettings([batch('S', 12, run({}))], saw);
    expect(rows).toMatchObject([
      {
        angle: 90,
        marks: ['S'],
        strips: 12,
        notching: { firstStopMm: 18.5, pinPitchMm: 40, notches: 5, notchWidthMm: 3, bladeHeightMm: 5, passes: 10 },
      },
    ]);
    expect(rows[0]?.notching.pinSquareMm).toBeCloseTo(40, 9);
  });

  /** At 60°: run 3 / sin 60° = 3.4641 along the strip; 40 along the fence is 40·sin 60° = 34.641 square to the blade. */
  test('slanting: turned over for a cut from above, the slant leans the other way', () => {
    const rows = [run({ angle: 60 }), run({ angle: 60, from: 'below' })].map(
      (each) => notchSettings([batch('S', 1, each)], saw).rows[0],
    );
    expect(rows.map((row) => row?.angle)).toEqual([120, 60]);
    for (const row of rows) {
      expect(row?.notching.firstStopMm).toBeCloseTo(20 - 1.73205, 5);
      expect(row?.notching.pinPitchMm).toBe(40);
      expect(row?.notching.pinSquareMm).toBeCloseTo(34.641, 3);
    }
  });

  test('a single notch needs no pin and leaves it alone', () => {
    const { rows, pinChanges } = notchSettings(
      [batch('S1', 1, run({})), batch('S2', 1, run({ count: 1, step: 0, first: 50 }))],
      saw,
    );
    expect(pinChanges).toBe(0);
    expect(rows.find(({ marks }) => marks.includes('S2'))?.notching).toMatchObject({
      pinPitchMm: null,
      pinSquareMm: null,
    });
  });
});

describe('the order of rows', () => {
  test('rows alike are one; a strip with both counts once, its passes twice', () => {
    const { rows } = notchSettings([batch('S1', 10, run({}), run({})), batch('S2', 3, run({}))], saw);
    expect(rows).toMatchObject([{ marks: ['S1', 'S2'], strips: 13, notching: { passes: 15 } }]);
  });

  test('two grids of other pitch: the pin is set anew once, whatever else that costs', () => {
    const rows = [1, 2, 3].flatMap((depth) =>
      [40, 36].map((step) => batch(`S${depth}${step}`, 1, run({ depth, step }))),
    );
    expect(notchSettings(rows, saw)).toMatchObject({ pinChanges: 1, changes: 1 + 4, proven: true });
  });

  test('every strip passes every one of its rows, once', () => {
    const anyRun = fc.record({
      first: fc.constantFrom(10, 20, 30),
      step: fc.constantFrom(36, 40),
      angle: fc.constantFrom(60, 90, 120),
      from: fc.constantFrom('above' as const, 'below' as const),
    });
    fc.assert(
      fc.property(fc.array(fc.array(anyRun, { maxLength: 3 }), { maxLength: 6 }), (all) => {
        const batches = all.map((runs, index) => batch(`S${index}`, index + 1, ...runs.map(run)));
        const { rows, changes, bound, proven } = notchSettings(batches, saw);
        const asked = batches.flatMap(({ notches, strips }) =>
          notches.map(({ count }) => passesFor(strips, count, 3, saw)),
        );
        const sum = (numbers: (number | null)[]): number =>
          numbers.reduce<number>((total, each) => total + (each ?? 0), 0);
        expect(sum(rows.map(({ notching }) => notching.passes))).toBe(sum(asked));
        for (const { mark, notches } of batches) {
          expect(rows.some(({ marks }) => marks.includes(mark))).toBe(notches.length > 0);
        }
        expect(proven).toBe(changes === bound);
      }),
      { numRuns: 40 },
    );
  });
});
