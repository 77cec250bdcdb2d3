/** Lengths as they are read and shown in inches. One inch is 25.4 mm (international yard and pound agreement, 1959). */
import { describe, expect, test } from 'vitest';
import { inchText, lengthText } from '../../../server/design/values/length-text.ts';
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

describe('a length is shown', () => {
  // sixty-fourths of an inch in millimetres: k · 0.396875
  test.each([
    [88.9, '3 1/2 in'],
    [0.396875, '1/64 in'],
    [25.4 * 12, '12 in'],
    [40, '1 37/64 in (0.003 in under)'],
    [36, '1 27/64 in (0.005 in under)'],
    [20.094, '51/64 in (0.006 in under)'],
    [-88.9, '-3 1/2 in'],
    [0, '0 in'],
  ])('%d mm as %s', (millimetres, text) => {
    expect(inchText(millimetres)).toBe(text);
  });

  test('in the units of its file', () => {
    expect(lengthText(88.9, 'ft')).toBe('3 1/2 in');
    expect(lengthText(88.94, 'cm')).toBe('88.9 mm');
    expect(lengthText(0.05, 'mm', 3)).toBe('0.05 mm');
  });

  test('never further from the true length than half a sixty-fourth, and by the error it tells', () => {
    for (let millimetres = 0.5; millimetres < 60; millimetres += 0.37) {
      const [, whole = '0', above = '0', below = '1', error = '0', side] =
        /^(?:(\d+)(?: |$))?(?:(\d+)\/(\d+) )?in(?: \(([\d.]+) in (over|under)\))?$/.exec(inchText(millimetres)) ?? [];
      const shown = Number(whole) + Number(above) / Number(below);
      const difference = millimetres / 25.4 - shown;
      expect(Math.abs(difference)).toBeLessThanOrEqual(1 / 128);
      expect(Math.abs(difference - (side === 'under' ? -1 : 1) * Number(error))).toBeLessThanOrEqual(0.0005);
    }
  });
});
