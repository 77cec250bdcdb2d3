/** Lengths as they are read in inches. One inch is 25.4 mm (international yard and pound agreement, 1959). */
import { describe, expect, test } from 'vitest';
import { designOf, only } from '../design-of.ts';

describe('a length in inches is read', () => {
  test.each([
    ['3in', 76.2],
    ['3"', 76.2],
    ['1/8"', 3.175],
    ['3 1/2"', 88.9],
    ['3-1/2"', 88.9],
    ['3-1/2in', 88.9],
    ['3 - 1/2in', 63.5],
    ['3in-1/2in', 63.5],
    ['0.25"', 6.35],
    ['1ft + 6"', 457.2],
  ])('%s', (written, millimetres) => {
    const { depth } = only(designOf(`units in  strip ash { section face 1/8" depth ${written} }`).strips);
    expect(depth).toBeCloseTo(millimetres, 9);
  });

  test('behind text in quotes as before it', () => {
    const design = designOf('title "3 by 1/2"  strip ash { section face 1/8" depth 3/8"  lengths 36", 48" }');
    expect(design.title).toBe('3 by 1/2');
    expect(only(design.strips).lengths.map(({ length }) => length)).toEqual([36 * 25.4, 48 * 25.4]);
  });
});
