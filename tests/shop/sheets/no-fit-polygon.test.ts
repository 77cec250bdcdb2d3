/** No-fit polygons: against worked sums, and against flatten-js on random outlines. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Point } from '../../../server/geometry/point.ts';
import { areaOf, boundsOf } from '../../../server/geometry/polygons.ts';
import { variantsOf } from '../../../server/shop/sheets/nest-kind.ts';
import { noFitRings } from '../../../server/shop/sheets/no-fit-polygon.ts';
import { depthIn, NoFitTable } from '../../../server/shop/sheets/no-fit-table.ts';
import { layoutFaults, placedRing } from './layout-faults.ts';

const touching = { width: 0, arcTolerance: 0 };
const box = (width: number, height: number): Point[] => [
  { x: 0, y: 0 },
  { x: width, y: 0 },
  { x: width, y: height },
  { x: 0, y: height },
];
const everywhere = { left: -1e9, right: 1e9, bottom: -1e9, top: 1e9 };

describe('the no-fit polygon', () => {
  test('of two boxes is a box as wide and high as both together', () => {
    const rings = noFitRings(box(300, 200), box(100, 50), touching);
    expect(boundsOf(rings.flat())).toEqual({ left: -100, right: 300, bottom: -50, top: 200 });
    expect(areaOf(rings)).toBe(400 * 250);
  });

  test('of convex outlines has the area of both and twice their mixed area', () => {
    // Box a × b and right triangle with legs p and q along it: (a + p)(b + q) less the triangle's own empty half.
    const triangle = [
      { x: 0, y: 0 },
      { x: 60, y: 0 },
      { x: 0, y: 40 },
    ];
    expect(areaOf(noFitRings(box(100, 80), triangle, touching))).toBe(160 * 120 - (60 * 40) / 2);
  });

  test('has a hole where one outline fits into a hollow of the other without a way in', () => {
    const hollow = [
      { x: 0, y: 0 },
      { x: 100, y: 0 },
      { x: 100, y: 100 },
      { x: 55, y: 100 },
      { x: 55, y: 80 },
      { x: 80, y: 80 },
      { x: 80, y: 20 },
      { x: 20, y: 20 },
      { x: 20, y: 80 },
      { x: 45, y: 80 },
      { x: 45, y: 100 },
      { x: 0, y: 100 },
    ];
    const table = new NoFitTable(
      variantsOf([
        { name: 'hollow', ring: hollow, count: 1, turns: [0] },
        { name: 'peg', ring: box(30, 30), count: 1, turns: [0] },
      ]),
      touching,
    );
    expect(depthIn(table.between(0, 1), 35, 35)).toBe(0);
    expect(depthIn(table.between(0, 1), 15, 35)).toBe(5);
    expect(depthIn(table.between(1, 0), -35, -35)).toBe(0);
  });

  test('of a piece inside a much larger one is filled', () => {
    const large = box(1000, 1000).concat({ x: 500, y: 500 });
    const table = new NoFitTable(
      variantsOf([
        { name: 'large', ring: large, count: 1, turns: [0] },
        { name: 'small', ring: box(10, 10), count: 1, turns: [0] },
      ]),
      touching,
    );
    expect(depthIn(table.between(0, 1), 700, 500)).toBeGreaterThan(100);
  });

  test('keeps the gap at sides and round corners', () => {
    const rings = noFitRings(box(100, 100), box(100, 100), { width: 10, arcTolerance: 0.5 });
    const { left, right, bottom, top } = boundsOf(rings.flat());
    for (const reach of [-left - 100, right - 100, -bottom - 100, top - 100]) {
      expect(reach).toBeGreaterThanOrEqual(10);
      expect(reach).toBeLessThanOrEqual(11);
    }
    expect(areaOf(rings)).toBeLessThan(222 * 222 - 50);
  });
});

/** A star-shaped outline: corners at growing angles about its origin. */
const outline = fc.array(fc.integer({ min: 300, max: 3000 }), { minLength: 3, maxLength: 9 }).map((radii) =>
  radii.map((radius, index): Point => {
    const angle = (2 * Math.PI * index) / radii.length;
    return { x: Math.round(radius * Math.cos(angle)), y: Math.round(radius * Math.sin(angle)) };
  }),
);

test('places are free or not as flatten-js says of the outlines themselves', () => {
  const place = fc.integer({ min: -6000, max: 6000 });
  fc.assert(
    fc.property(outline, outline, place, place, fc.constantFrom(0, 90, 180, 270), (first, second, x, y, turn) => {
      const kinds = [
        { name: 'A', ring: first, count: 1, turns: [0, 90, 180, 270] },
        { name: 'B', ring: second, count: 1, turns: [0, 90, 180, 270] },
      ];
      const variants = variantsOf(kinds);
      const table = new NoFitTable(variants, touching);
      // Asked for in one turn first, so that the others are made from it.
      table.between(0, 4);
      const [fixed, moving] = [turn / 90, 4 + turn / 90];
      const depth = depthIn(table.between(fixed, moving), x, y);
      const rings = [placedRing(first, { turn, x: 0, y: 0 }), placedRing(second, { turn, x, y })];
      const faults = layoutFaults(rings, everywhere, 0);
      // Within two units of contact, roundings decide.
      if (depth > 2) expect(faults).not.toEqual([]);
      if (depth === 0)
        expect(layoutFaults(rings, everywhere, 0).length === 0 || depthNearby(table, fixed, moving, x, y)).toBe(true);
    }),
    { seed: 11, numRuns: 300 },
  );
});

const depthNearby = (table: NoFitTable, fixed: number, moving: number, x: number, y: number): boolean =>
  [-2, 0, 2].some((dx) => [-2, 0, 2].some((dy) => depthIn(table.between(fixed, moving), x + dx, y + dy) > 0));
