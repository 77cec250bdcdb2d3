/**
 * Splines: the natural cubic spline of a textbook (Burden and Faires, Numerical Analysis, section 3.5, example 2: through
 * e⁰ … e³ at 0 … 3; from memory, and re-derivable by hand from its two equations), and what makes a spline one.
 */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { CubicSegment } from '../../server/geometry/path.ts';
import { cross, distance, type Point, scale, subtract, turned } from '../../server/geometry/point.ts';
import { closedBends, closedSpline, naturalBends, openSpline } from '../../server/geometry/spline.ts';

const velocityAtStart = ({ from, control1 }: CubicSegment): Point => scale(subtract(control1, from), 3);
const velocityAtEnd = ({ control2, to }: CubicSegment): Point => scale(subtract(to, control2), 3);
const pullAtStart = ({ from, control1, control2 }: CubicSegment): Point =>
  scale({ x: from.x - 2 * control1.x + control2.x, y: from.y - 2 * control1.y + control2.y }, 6);
const pullAtEnd = ({ control1, control2, to }: CubicSegment): Point =>
  scale({ x: control1.x - 2 * control2.x + to.x, y: control1.y - 2 * control2.y + to.y }, 6);

/** Signed curvature from first and second derivatives. */
const curvature = (velocity: Point, pull: Point): number =>
  cross(velocity, pull) / Math.hypot(velocity.x, velocity.y) ** 3;

const place = fc.integer({ min: -200, max: 200 });
const points = fc
  .array(fc.record({ x: place, y: place }), { minLength: 3, maxLength: 9 })
  .filter((all) => all.every((point, index) => distance(point, all[(index + 1) % all.length] ?? point) > 5));

function isSmooth(before: CubicSegment, after: CubicSegment): void {
  expect(distance(before.to, after.from)).toBe(0);
  const [arriving, leaving] = [velocityAtEnd(before), velocityAtStart(after)];
  const sine = cross(arriving, leaving) / (Math.hypot(arriving.x, arriving.y) * Math.hypot(leaving.x, leaving.y));
  expect(sine).toBeCloseTo(0, 8);
  const [bend, next] = [curvature(arriving, pullAtEnd(before)), curvature(leaving, pullAtStart(after))];
  expect(Math.abs(bend - next)).toBeLessThan(1e-7 * (1 + Math.abs(bend)));
}

describe('the natural spline', () => {
  test('of the textbook: second derivatives 0, 2·0.75685, 2·5.83007, 0', () => {
    const bends = naturalBends([1, 1, 1], [1, Math.E, Math.E ** 2, Math.E ** 3]);
    expect(bends.map((bend) => bend / 2)).toEqual(
      [0, 0.75685, 5.83007, 0].map((bend) => expect.closeTo(bend, 5) as number),
    );
  });

  test('through points on a straight line is that line', () => {
    const line = openSpline([0, 1, 4, 9, 20].map((step) => ({ x: 3 * step, y: -2 * step })));
    for (const { control1, control2 } of line) {
      expect(2 * control1.x + 3 * control1.y).toBeCloseTo(0, 9);
      expect(2 * control2.x + 3 * control2.y).toBeCloseTo(0, 9);
    }
  });

  test('goes through its points with continuous curvature, none at its ends', () => {
    fc.assert(
      fc.property(points, (through) => {
        const spline = openSpline(through);
        expect(spline.map(({ from }) => from)).toEqual(through.slice(0, -1));
        expect(spline.at(-1)?.to).toEqual(through.at(-1));
        spline.slice(1).forEach((after, index) => {
          const before = spline[index];
          if (before) isSmooth(before, after);
        });
        const [first, last] = [spline[0], spline.at(-1)];
        const span = 1e-6;
        expect(first && Math.hypot(pullAtStart(first).x, pullAtStart(first).y)).toBeLessThan(span);
        expect(last && Math.hypot(pullAtEnd(last).x, pullAtEnd(last).y)).toBeLessThan(span);
      }),
      { numRuns: 60 },
    );
  });
});

describe('the closed spline', () => {
  test('solves its own equations', () => {
    const [steps, values] = [
      [1, 2, 1.5, 0.7, 3],
      [4, -1, 2, 8, 5],
    ];
    const bends = closedBends(steps, values);
    const at = (list: readonly number[], index: number): number => list[(index + list.length) % list.length] ?? 0;
    values.forEach((_, index) => {
      const left = (at(values, index) - at(values, index - 1)) / at(steps, index - 1);
      const right = (at(values, index + 1) - at(values, index)) / at(steps, index);
      const sum =
        at(steps, index - 1) * at(bends, index - 1) +
        2 * (at(steps, index - 1) + at(steps, index)) * at(bends, index) +
        at(steps, index) * at(bends, index + 1);
      expect(sum).toBeCloseTo(6 * (right - left), 9);
    });
  });

  test('is smooth all the way round', () => {
    fc.assert(
      fc.property(points, (through) => {
        const spline = closedSpline(through);
        expect(spline).toHaveLength(through.length);
        spline.forEach((after, index) => {
          const before = spline[(index + spline.length - 1) % spline.length];
          if (before) isSmooth(before, after);
        });
      }),
      { numRuns: 60 },
    );
  });

  test('through twelve points of a circle stays within a thousandth of its radius', () => {
    const spline = closedSpline(Array.from({ length: 12 }, (_, index) => turned({ x: 100, y: 0 }, 30 * index)));
    for (const { from, control1, control2, to } of spline) {
      const middle = {
        x: (from.x + 3 * control1.x + 3 * control2.x + to.x) / 8,
        y: (from.y + 3 * control1.y + 3 * control2.y + to.y) / 8,
      };
      expect(Math.abs(Math.hypot(middle.x, middle.y) - 100)).toBeLessThan(0.1);
    }
  });
});
