/** Curvatures and turns of segments against closed forms. */
import { describe, expect, test } from 'vitest';
import { segmentLength } from '../../server/geometry/curve-length.ts';
import { flattenContour } from '../../server/geometry/flatten-path.ts';
import { grownRings } from '../../server/geometry/grow-rings.ts';
import { ringLength } from '../../server/geometry/measure-path.ts';
import { sum } from '../../server/geometry/numbers.ts';
import type { Contour, CubicSegment, QuadraticSegment } from '../../server/geometry/path.ts';
import { distance, radians } from '../../server/geometry/point.ts';
import { sharpestBends, turningOf } from '../../server/geometry/sharpest-bends.ts';
import { circleContour, ellipseContour } from '../design-builder.ts';

const ellipse = ellipseContour(90, 60);
/** y = x² between −10 and 10: curvature 2/(1 + 4x²)^(3/2). */
const parabola: QuadraticSegment = {
  kind: 'quadratic',
  from: { x: -10, y: 100 },
  control: { x: 0, y: -100 },
  to: { x: 10, y: 100 },
};

describe('the sharpest bends', () => {
  test('of a circle are one over its radius all round', () => {
    const { left, right } = sharpestBends(circleContour(40));
    expect(left?.curvature).toBeCloseTo(1 / 40, 12);
    expect(right).toBeNull();
  });

  test('of an ellipse are a/b² at the ends of its long axis', () => {
    const { left } = sharpestBends(ellipse);
    expect(left?.curvature).toBeCloseTo(90 / 60 ** 2, 9);
    expect(Math.abs(left?.at.x ?? 0)).toBeCloseTo(90, 3);
  });

  test('of a parabola are 2 at its vertex', () => {
    const { left } = sharpestBends([parabola]);
    expect(left?.curvature).toBeCloseTo(2, 9);
    expect(distance(left?.at ?? { x: 1, y: 1 }, { x: 0, y: 0 })).toBeLessThan(1e-3);
  });

  test('of a cubic that is that parabola are the same, and to the right when it is walked back', () => {
    const raised: CubicSegment = {
      kind: 'cubic',
      from: parabola.to,
      control1: { x: 10 / 3, y: -100 / 3 },
      control2: { x: -10 / 3, y: -100 / 3 },
      to: parabola.from,
    };
    const { left, right } = sharpestBends([raised]);
    expect(left).toBeNull();
    expect(right?.curvature).toBeCloseTo(-2, 9);
  });
});

describe('the turning', () => {
  test('of a closed curve is one whole turn', () => {
    expect(sum(ellipse.map(turningOf))).toBeCloseTo(360, 9);
    expect(sum(circleContour(3).map(turningOf))).toBeCloseTo(360, 12);
  });

  test('of a parabola is twice the angle whose tangent is its last slope', () => {
    expect(turningOf(parabola)).toBeCloseTo((2 * Math.atan(20) * 180) / Math.PI, 9);
  });
});

test.each([
  ['circle', circleContour(50)],
  ['ellipse', ellipse],
] as [string, Contour][])('length plus distance times turning is the length of the parallel: %s', (_, contour) => {
  for (const by of [-6, -0.75, 2, 5]) {
    const length = sum(contour.map(segmentLength)) + by * radians(sum(contour.map(turningOf)));
    const parallel = sum(grownRings([flattenContour(contour)], by, 'round').map(ringLength));
    expect(Math.abs(length - parallel)).toBeLessThan(0.01);
  }
});
