/** Identity under turn and flip, and what makes a hand. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { NotchRun } from '../../../server/lattice/laid-panel.ts';
import { laidOtherwise, pieceShape, samePiece, standardLie } from '../../../server/lattice/motif/piece-shape.ts';
import {
  flippedStrip,
  handOf,
  mirroredStrip,
  sameStrip,
  standardPosition,
  turnedStrip,
} from '../../../server/lattice/strips/strip-kinds.ts';
import { stripStock } from '../../design-builder.ts';

const stock = stripStock('ash', 3);

const run = fc.record({
  first: fc.integer({ min: 5, max: 200 }),
  step: fc.constantFrom(20, 40),
  count: fc.integer({ min: 1, max: 5 }),
  width: fc.constant(3),
  angle: fc.constantFrom(60, 90, 120),
  depth: fc.constant(5),
  from: fc.constantFrom('above' as const, 'below' as const),
});

const strip = fc.array(run, { minLength: 1, maxLength: 4 }).map((notches) => ({ stock, length: 420, notches }));

const notch = (angle: number, from: NotchRun['from']): NotchRun => ({
  first: 46,
  step: 40,
  count: 5,
  width: 3,
  angle,
  depth: 5,
  from,
});

describe('strips', () => {
  it('turned or flipped are the same kind', () => {
    fc.assert(
      fc.property(strip, (each) => {
        const standard = standardPosition(each);
        for (const moved of [turnedStrip(each), flippedStrip(each), flippedStrip(turnedStrip(each))])
          expect(sameStrip(standardPosition(moved), standard)).toBe(true);
      }),
    );
  });

  it('have a hand exactly when their mirror image is another kind, and the mirror image has the other hand', () => {
    fc.assert(
      fc.property(strip, (each) => {
        const mirrored = mirroredStrip(each);
        const same = sameStrip(standardPosition(mirrored), standardPosition(each));
        expect(handOf(each) === null).toBe(same);
        if (!same) expect([handOf(each), handOf(mirrored)].sort()).toEqual(['left', 'right']);
      }),
    );
  });

  it('of a diamond grid are handed, of a square grid are not (common practice)', () => {
    expect(handOf({ stock, length: 252, notches: [notch(60, 'above')] })).toBe('right');
    expect(handOf({ stock, length: 252, notches: [notch(120, 'above')] })).toBe('left');
    expect(handOf({ stock, length: 252, notches: [notch(90, 'above')] })).toBeNull();
  });
});

describe('pieces', () => {
  const outline = fc
    .tuple(
      fc.integer({ min: 12, max: 60 }),
      fc.integer({ min: 0, max: 4 }),
      fc.integer({ min: 0, max: 4 }),
      fc.integer({ min: 0, max: 4 }),
    )
    .map(([length, a, b, c]) => [
      { x: a, y: -1.5 },
      { x: length - b, y: -1.5 },
      { x: length + 5, y: 0 },
      { x: length - c, y: 1.5 },
      { x: 0, y: 1.5 },
    ]);

  it('turned or flipped are the same kind and come to rest the same way', () => {
    fc.assert(
      fc.property(outline, fc.boolean(), fc.boolean(), (points, turned, flipped) => {
        const shape = pieceShape(stock, points, [{ bevels: [30, 60] }, { bevels: [45, 90] }]);
        const moved = laidOtherwise(shape, { turned, flipped });
        expect(samePiece(standardLie(moved).shape, standardLie(shape).shape)).toBe(true);
        expect(moved.length).toBeCloseTo(shape.length, 9);
      }),
    );
  });

  it('laid otherwise twice are back where they were', () => {
    fc.assert(
      fc.property(outline, fc.boolean(), fc.boolean(), (points, turned, flipped) => {
        const shape = pieceShape(stock, points, [{ bevels: [30, 60] }, { bevels: [45, 90] }]);
        const back = laidOtherwise(laidOtherwise(shape, { turned, flipped }), { turned, flipped });
        expect(samePiece(back, shape)).toBe(true);
      }),
    );
  });
});
