/** Outlines enclose the areas they should: expected values are the formulas of plane geometry. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { arcByEnds, arcByRadius } from '../../../server/design/outlines/arc-geometry.ts';
import { pointOnArc } from '../../../server/geometry/flatten-path.ts';
import { contourArea } from '../../../server/geometry/measure-path.ts';
import { distance } from '../../../server/geometry/point.ts';
import { outlineOf } from '../design-of.ts';

const areasOf = (steps: string): number[] => outlineOf(steps).contours.map(contourArea);

const semicircle = (Math.PI * 50 ** 2) / 2;

describe('areas', () => {
  test.each([
    ['start 0, 0  line to 30, 0  line to 0, 40  line to start', 600],
    ['start 0, 0  line to 0, 40  line to 30, 0  line to start', 600],
    ['rectangle 420 x 297 at 10, 20', 124_740],
    ['rectangle 1in x 2in', 2 * 25.4 ** 2],
    ['circle radius 50', 2 * semicircle],
    ['start 0, 0  arc to 100, 0 radius 50 left  line to start', semicircle],
    ['start 0, 0  arc to 100, 0 radius 50 right  line to start', semicircle],
    ['start 0, 0  arc to 100, 0 radius 50 left  arc to start radius 50 left', 2 * semicircle],
    ['start 0, 0  line to 100, 0  line to 100, 100  curve to start by 100, 0', 5000 - (2 / 3) * 5000],
    ['path "M 0 0 H 100 V -50 h -100 Z"', 5000],
    ['path "M0 0 100 0 100 50 0 50"', null],
    ['path "M 0 0 A 50 50 0 0 1 100 0 Z"', semicircle],
    ['path "M 0 0 a 50 25 0 0 0 100 0 z"', semicircle / 2],
    ['path "M 0 0 A 1 1 0 0 1 100 0 Z"', semicircle],
    ['path "M 0 0 C 0 50 100 50 100 0 Z"', 3000],
    ['path "M 0 0 Q 50 100 100 0 T 200 0 L 200 -300 L 0 -300 Z"', 60_000],
    ['path "M 0 0 C 0 -50 50 -50 50 0 S 100 50 100 0 L 100 200 L 0 200 Z"', 20_000],
  ])('%s', (steps, area) => {
    if (area === null) {
      expect(() => areasOf(steps)).toThrow('Close it with `Z`');
      return;
    }
    const [found = 0, ...holes] = areasOf(steps);
    expect(holes).toEqual([]);
    expect(found).toBeCloseTo(area, 6);
  });

  test('the largest line is the outer one, counter-clockwise; holes run clockwise', () => {
    const [outer = 0, ...holes] = areasOf(
      'circle at 20, 0 radius 10  rectangle 100 x 100  path "M -30 0 l 10 0 l 0 10 z"',
    );
    expect(outer).toBeCloseTo(10_000, 6);
    expect(holes.map((area) => Math.round(area * 1000) / 1000)).toEqual([-314.159, -50]);
  });
});

describe('directions', () => {
  test('left turns counter-clockwise: from left to right the arc bulges down', () => {
    const arc = arcByRadius({ x: 0, y: 0 }, { x: 100, y: 0 }, 50, 'left', false);
    expect(arc && pointOnArc(arc, 0.5).y).toBeCloseTo(-50, 9);
  });

  test('path data has y down: its upper half lies above', () => {
    const [segment] = outlineOf('path "M 0 0 L 100 0 L 50 -80 Z"').contours[0] ?? [];
    const ys = outlineOf('path "M 0 0 L 100 0 L 50 -80 Z"')
      .contours.flat()
      .map(({ to }) => to.y);
    expect(segment?.kind).toBe('line');
    expect(Math.max(...ys)).toBe(80);
    expect(Math.min(...ys)).toBe(0);
  });

  test('arcs of path data stay arcs', () => {
    const kinds = outlineOf('path "M 0 0 A 50 30 20 0 1 100 0 Z"')
      .contours.flat()
      .map(({ kind }) => kind);
    expect(kinds.sort()).toEqual(['arc', 'line']);
  });
});

describe('an arc', () => {
  const place = fc.integer({ min: -500, max: 500 });
  const ends = fc
    .record({ from: fc.record({ x: place, y: place }), to: fc.record({ x: place, y: place }) })
    .filter(({ from, to }) => distance(from, to) > 1);

  test('by radius joins its ends on its circle', () => {
    const arcs = fc.record({ ends, more: fc.integer({ min: 0, max: 500 }), left: fc.boolean(), large: fc.boolean() });
    fc.assert(
      fc.property(arcs, ({ ends: { from, to }, more, left, large }) => {
        const radius = distance(from, to) / 2 + more;
        const arc = arcByRadius(from, to, radius, left ? 'left' : 'right', large);
        if (!arc) throw new Error('no arc');
        expect(distance(pointOnArc(arc, 0), from)).toBeLessThan(1e-6);
        expect(distance(pointOnArc(arc, 1), to)).toBeLessThan(1e-6);
        expect(Math.sign(arc.sweep)).toBe(left ? 1 : -1);
        expect(Math.abs(arc.sweep) >= 180 - 1e-4).toBe(large || more === 0);
      }),
    );
  });

  test('by its ends, as path data has it, joins them the way its flags say', () => {
    const arcs = fc.record({
      ends,
      radiusX: fc.integer({ min: 1, max: 900 }),
      radiusY: fc.integer({ min: 1, max: 900 }),
      tilt: fc.integer({ min: -180, max: 180 }),
      large: fc.boolean(),
      sweep: fc.boolean(),
    });
    fc.assert(
      fc.property(arcs, ({ ends: { from, to }, ...arc }) => {
        const drawn = arcByEnds({ from, to, ...arc });
        if (drawn?.kind !== 'arc') throw new Error('no arc');
        expect(distance(pointOnArc(drawn, 0), from)).toBeLessThan(1e-6);
        expect(distance(pointOnArc(drawn, 1), to)).toBeLessThan(1e-6);
        expect(drawn.sweep > 0).toBe(arc.sweep);
        const grown = drawn.radiusX > arc.radiusX;
        if (!grown) expect(Math.abs(drawn.sweep) > 180).toBe(arc.large);
      }),
    );
  });
});
