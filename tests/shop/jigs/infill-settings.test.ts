/** Whole orders of infill: what is set when, and that nothing is lost. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { sameLength } from '../../../server/geometry/tolerance.ts';
import { infillSettings, type PieceBatch } from '../../../server/shop/jigs/infill-settings.ts';
import { fittedPiece, pointedPiece } from './pieces.ts';

const arm = (mark: string, length: number, pieces: number, longer = 0): PieceBatch => ({
  mark,
  shape: pointedPiece(length, 3, [30, 30], [60, 60]),
  pieces,
  longer,
});

describe('the settings of infill', () => {
  test('the hemp arm of a three-way grid of 40: 60 jig, then 30 jig, both sides', () => {
    const { settings, changes, bound, proven } = infillSettings([arm('A', 20.094, 342)], 0);
    expect(settings).toMatchObject([
      { jig: 60, flip: true, marks: ['A'], pieces: 342 },
      { jig: 30, flip: true, marks: ['A'], pieces: 342 },
    ]);
    expect(settings.map(({ stop }) => stop)).toEqual([expect.closeTo(20.96, 3), expect.closeTo(22.692, 3)]);
    for (const { caliper } of settings) expect(caliper).toBeCloseTo(20.094, 9);
    expect({ changes, bound, proven }).toEqual({ changes: 2, bound: 2, proven: true });
  });

  test('the blunt end leaves the trim that the sharp end takes', () => {
    const [blunt, sharp] = infillSettings([arm('A', 20, 1)], 1).settings;
    expect(blunt?.caliper).toBeCloseTo(21, 9);
    expect(sharp?.caliper).toBeCloseTo(20, 9);
    expect((blunt?.stop ?? 0) - 21).toBeCloseTo(0.866, 3);
  });

  test('a key is longer at both ends’ settings', () => {
    const [blunt, sharp] = infillSettings([arm('A', 20, 1, 0.1)], 0).settings;
    expect(blunt?.caliper).toBeCloseTo(20.1, 9);
    expect(sharp?.caliper).toBeCloseTo(20.1, 9);
  });

  test('both ends alike are one setting, and pieces count once', () => {
    const shape = pointedPiece(52.326, 3, [45, 45], [45, 45]);
    const { settings, changes } = infillSettings([{ mark: 'D', shape, pieces: 20, longer: 0 }], 0);
    expect(settings).toMatchObject([{ jig: 45, flip: true, marks: ['D'], pieces: 20 }]);
    expect(changes).toBe(0);
  });

  test('every setting says which end and side it cuts', () => {
    const shape = pointedPiece(30, 3, [67.5, 56.25], [22.5, 22.5]);
    const { settings } = infillSettings([{ mark: 'L', shape, pieces: 4, longer: 0 }], 0);
    expect(settings.map(({ jig, ends }) => [jig, ends])).toEqual([
      [56.25, [{ mark: 'L', end: 1, side: 'right' }]],
      [67.5, [{ mark: 'L', end: 1, side: 'left' }]],
      [22.5, [{ mark: 'L', end: 2, side: 'both' }]],
    ]);
  });

  test('an end fitted to a frame is left to the hand', () => {
    const fitted = { mark: 'F', shape: fittedPiece(12, 3), pieces: 2, longer: 0 };
    const order = infillSettings([fitted, arm('A', 20, 3)], 0);
    expect(order.byHand).toEqual(['F']);
    expect(order.settings.flatMap(({ marks }) => marks)).toEqual(['A', 'A']);
  });

  test('many lengths: every jig is taken up once, and every blunt end comes before its sharp one', () => {
    const lengths = fc.uniqueArray(fc.integer({ min: 10, max: 90 }), { minLength: 1, maxLength: 12 });
    fc.assert(
      fc.property(lengths, fc.double({ min: 0, max: 2, noNaN: true }), (all, trim) => {
        const batches = all.map((length) => arm(`A${length}`, length, length));
        const { settings, proven } = infillSettings(batches, trim);
        expect(proven).toBe(true);
        const jigs = settings.map(({ jig }) => jig).filter((jig, index, list) => jig !== list[index - 1]);
        expect(jigs).toEqual([60, 30]);
        for (const { mark, pieces, shape } of batches) {
          const own = settings.filter(({ marks }) => marks.includes(mark));
          expect(own.map(({ jig }) => jig)).toEqual([60, 30]);
          expect(own.every((setting) => setting.pieces >= pieces)).toBe(true);
          expect(sameLength(own[1]?.caliper ?? 0, shape.length)).toBe(true);
        }
      }),
      { numRuns: 30 },
    );
  });
});
