/** Parts between dividers, areas worked out by hand: an opening of 37 and dividers of 3. */
import { describe, expect, test } from 'vitest';
import { signedArea } from '../../../server/geometry/polygons.ts';
import type { Point } from '../../../server/geometry/point.ts';
import { dividedParts } from '../../../server/lattice/motif/divided-parts.ts';
import type { Axis } from '../../../server/lattice/motif/piece-ends.ts';

const corners: [Point, Point, Point, Point] = [
  { x: 0, y: 0 },
  { x: 37, y: 0 },
  { x: 37, y: 37 },
  { x: 0, y: 37 },
];
const middle = { x: 18.5, y: 18.5 };
const divider = (from: Point, to: Point): Axis => ({ from, to, face: 3 });
const whole = divider(corners[0], corners[2]);
const half = divider(corners[1], middle);

const areas = (dividers: readonly Axis[]): number[] =>
  dividedParts(corners, dividers)
    .parts.map(signedArea)
    .sort((a, b) => b - a);

// Each half is a right isosceles triangle of this leg; what parts it again lies along its height and begins in a point of 90°.
const leg = 37 - 1.5 * Math.SQRT2;
const halved = leg ** 2 / 2;
const quarter = (halved - 3 * (leg / Math.SQRT2) + 1.5 ** 2) / 2;

describe('a divider that ends on another', () => {
  test.each([
    ['first', [half, whole]],
    ['last', [whole, half]],
  ])('parts only what it runs through, named %s', (_, dividers) => {
    const found = areas(dividers);
    expect(found).toHaveLength(3);
    [halved, quarter, quarter].forEach((area, index) => {
      expect(found[index]).toBeCloseTo(area, 9);
    });
  });

  test('by itself ends inside: it parts nothing, and is told', () => {
    expect(areas([half])).toEqual([37 ** 2]);
    expect(dividedParts(corners, [half]).unfinished).toEqual([0]);
  });
});

test('two that cross make four', () => {
  const found = areas([whole, divider(corners[1], corners[3])]);
  expect(found).toHaveLength(4);
  for (const area of found) expect(area).toBeCloseTo(quarter, 9);
});
