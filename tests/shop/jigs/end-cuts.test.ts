/** Jig and stop of single ends against the figures of geometry, worked out by hand. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { PieceShape } from '../../../server/lattice/laid-panel.ts';
import { laidOtherwise, pieceShape } from '../../../server/lattice/motif/piece-shape.ts';
import { cutsOfEnds, toeToStop } from '../../../server/shop/jigs/end-cuts.ts';
import { stripStock } from '../../design-builder.ts';
import { fittedPiece, pointedPiece } from './pieces.ts';

const cutsOf = (shape: PieceShape) => {
  const ends = cutsOfEnds(shape);
  if (!ends) throw new Error('no cuts');
  return ends;
};

describe('toe to stop beyond the length, face 3', () => {
  /** (3/2)·cot: 1.5·√3, 1.5/√3, 1.5·(1 + √2), 1.5. */
  test.each([
    [30, 2.598],
    [60, 0.866],
    [22.5, 3.621],
    [45, 1.5],
    [90, 0],
  ])('at %d° is %d', (bevel, more) => {
    expect(toeToStop(20, 3, bevel) - 20).toBeCloseTo(more, 3);
  });
});

describe('the ends of a piece', () => {
  test('the hemp arm: hub 60 first, corner 30 last, both turned over', () => {
    const [first, second] = cutsOf(pointedPiece(20.094, 3, [30, 30], [60, 60]));
    expect(first).toMatchObject({ end: 2, bluntness: 120, cuts: [{ jig: 60, side: 'both' }] });
    expect(second).toMatchObject({ end: 1, bluntness: 60, cuts: [{ jig: 30, side: 'both' }] });
    expect(first.cuts[0]?.toe).toBeCloseTo(20.094 + 0.866, 3);
    expect(second.cuts[0]?.toe).toBeCloseTo(20.094 + 2.598, 3);
  });

  test('unequal sides are two settings without a turn over', () => {
    const [first, second] = cutsOf(pointedPiece(26.695, 3, [67.5, 56.25], [22.5, 22.5]));
    expect(first.cuts).toMatchObject([
      { jig: 56.25, side: 'right' },
      { jig: 67.5, side: 'left' },
    ]);
    for (const { jig, toe } of first.cuts) expect(toe).toBeCloseTo(toeToStop(26.695, 3, jig), 9);
    expect(second.cuts).toMatchObject([{ jig: 22.5, side: 'both' }]);
  });

  test('a square end is one cut at the length itself', () => {
    const [first] = cutsOf(pointedPiece(20, 3, [45, 45], [90, 90]));
    expect(first).toMatchObject({ end: 2, bluntness: 180, cuts: [{ jig: 90 }] });
    expect(first.cuts[0]?.toe).toBeCloseTo(20, 9);
  });

  test('one slanted cut is made from its sharp side, its toe at the length', () => {
    const shape = pointedPiece(30, 4, [90, 90], [120, 60]);
    const [first, second] = cutsOf(shape);
    expect(shape.length).toBeCloseTo(30 + 2 / Math.sqrt(3), 9);
    expect(first.end).toBe(1);
    expect(second).toMatchObject({ end: 2, bluntness: 120, cuts: [{ jig: 60, side: 'right' }] });
    expect(second.cuts[0]?.toe).toBeCloseTo(shape.length, 9);
  });

  /** Tip at (20, 1), face 4: the left line meets the floor y = −2 at 23, the right line y = 2 at 21. */
  test('a tip beside the axis moves the toe with it', () => {
    const line = { x: 20, y: 1 };
    const shape = pieceShape(
      stripStock('stock', 4),
      [{ x: 0, y: -2 }, { x: 17, y: -2 }, line, { x: 19, y: 2 }, { x: 0, y: 2 }],
      [{ bevels: [90, 90] }, { bevels: [45, 45] }],
    );
    const [, second] = cutsOf(shape);
    expect(second.cuts).toMatchObject([{ side: 'left' }, { side: 'right' }]);
    expect(second.cuts.map(({ toe }) => toe)).toEqual([expect.closeTo(23, 9), expect.closeTo(21, 9)]);
  });

  test('laid another way the piece has the same settings', () => {
    const bevel = fc.constantFrom(22.5, 30, 45, 60, 67.5);
    const pair = fc.tuple(bevel, bevel);
    fc.assert(
      fc.property(pair, pair, fc.boolean(), fc.boolean(), (first, second, turned, flipped) => {
        const shape = pointedPiece(60, 3, first, second);
        const settings = (each: PieceShape): string[] =>
          cutsOf(each)
            .flatMap(({ cuts, bluntness }) => cuts.map(({ jig, toe }) => `${jig} ${toe.toFixed(6)} ${bluntness}`))
            .sort();
        expect(settings(laidOtherwise(shape, { turned, flipped }))).toEqual(settings(shape));
        for (const { cuts } of cutsOf(shape)) {
          for (const { jig, toe } of cuts) expect(toe).toBeCloseTo(toeToStop(60, 3, jig), 9);
        }
      }),
    );
  });

  test('ends alike keep their order', () => {
    expect(cutsOf(pointedPiece(20, 3, [45, 45], [45, 45])).map(({ end }) => end)).toEqual([1, 2]);
  });

  test('an end fitted to a frame has no setting', () => {
    expect(cutsOfEnds(fittedPiece(20, 3))).toBeNull();
  });
});
