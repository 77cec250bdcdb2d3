/** Sheets over a drawing: the counts of a worked example, and all of the ground seen, by an independent polygon library. */
import Flatten from '@flatten-js/core';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type SheetRoom, tilePlan } from '../../../server/drawing/template/tile-plan.ts';
import type { Point } from '../../../server/geometry/point.ts';

const box = (width: number, height: number, left = 0, bottom = 0): Point[] => [
  { x: left, y: bottom },
  { x: left + width, y: bottom },
  { x: left + width, y: bottom + height },
  { x: left, y: bottom + height },
];

/** A4 with margins of 10 mm all round and an overlap of 10 mm. */
const upright: SheetRoom = { width: 190, height: 277, overlap: 10 };
const lying: SheetRoom = { width: 277, height: 190, overlap: 10 };

describe('600 × 400 mm on A4', () => {
  // Derived by hand: ceil((600 − 10)/267) · ceil((400 − 10)/180) = 3 · 3, and ceil(590/180) · ceil(390/267) = 4 · 2.
  test('takes 9 lying sheets or 8 upright ones', () => {
    const drawing = [box(600, 400)];
    expect(tilePlan(drawing, lying)).toMatchObject({ columns: 3, rows: 3, count: 9 });
    expect(tilePlan(drawing, upright)).toMatchObject({ columns: 4, rows: 2, count: 8 });
  });
});

describe('sheets', () => {
  test('are numbered row by row from the top left, neighbours an overlap into one another', () => {
    const { sheets } = tilePlan([box(300, 500)], upright);
    expect(sheets.map(({ number, row, column }) => [number, row, column])).toEqual([
      [1, 1, 1],
      [2, 1, 2],
      [3, 2, 1],
      [4, 2, 2],
    ]);
    const [first, second, third] = sheets.map(({ window }) => window);
    expect((first?.right ?? 0) - (second?.left ?? 0)).toBeCloseTo(10, 9);
    expect((third?.top ?? 0) - (first?.bottom ?? 0)).toBeCloseTo(10, 9);
    expect(first?.top).toBeGreaterThan(third?.top ?? Infinity);
  });

  test('that show nothing are left out, and the others stay in order', () => {
    const corner = [
      { x: 0, y: 0 },
      { x: 520, y: 0 },
      { x: 520, y: 60 },
      { x: 60, y: 60 },
      { x: 60, y: 500 },
      { x: 0, y: 500 },
    ];
    const { sheets, count } = tilePlan([corner], upright);
    expect(sheets).toHaveLength(6);
    expect(count).toBe(4);
    expect(sheets.flatMap(({ number }) => number ?? [])).toEqual([1, 2, 3, 4]);
  });

  test('inside a hole are left out too', () => {
    const ring = [box(1000, 1400), box(800, 1200, 100, 100).reverse()];
    const { sheets, count } = tilePlan(ring, upright);
    expect(count).toBeLessThan(sheets.length);
  });

  test('cover all of any ground: what is outside their union is nothing', () => {
    const place = fc.record({
      angle: fc.double({ min: 0, max: 1, noNaN: true }),
      reach: fc.integer({ min: 60, max: 700 }),
    });
    fc.assert(
      fc.property(fc.array(place, { minLength: 3, maxLength: 9 }), (places) => {
        const count = places.length;
        const ring = places.map(({ angle, reach }, index) => {
          const turn = ((index + 0.9 * angle) / count) * 2 * Math.PI;
          return { x: reach * Math.cos(turn), y: reach * Math.sin(turn) };
        });
        const { sheets, columns, rows } = tilePlan([ring], upright);
        expect(sheets).toHaveLength(columns * rows);
        const rest = sheets
          .filter(({ number }) => number !== null)
          .reduce(
            (left, { window: { left: x, right, bottom, top } }) =>
              left.isEmpty()
                ? left
                : Flatten.BooleanOperations.subtract(left, polygon(box(right - x, top - bottom, x, bottom))),
            polygon(ring),
          );
        expect(rest.area()).toBeLessThan(0.05);
      }),
      { numRuns: 25 },
    );
  });
});

const polygon = (ring: readonly Point[]): Flatten.Polygon =>
  new Flatten.Polygon(ring.map(({ x, y }) => Flatten.point(x, y)));
