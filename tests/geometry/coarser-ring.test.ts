/** Drawn polygons: no kept corner moves, and nothing leaves the drawn line by more than the pen is wide. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { coarserRing } from '../../server/geometry/coarser-ring.ts';
import { flattenContour } from '../../server/geometry/flatten-path.ts';
import { turned } from '../../server/geometry/point.ts';
import { distanceToSegment } from '../../server/geometry/region.ts';
import { drawingTolerance } from '../../server/geometry/tolerance.ts';
import { circleContour } from '../design-builder.ts';

describe('a coarser ring', () => {
  it('of a circle has as many corners as the sagitta asks for, not thousands', () => {
    const fine = flattenContour(circleContour(150));
    const coarse = coarserRing(fine);
    // a chord over angle a leaves the circle by r(1 − cos(a/2)): at 0.05 mm on 150 mm, 122 chords go round
    expect(coarse.length).toBeGreaterThan(100);
    expect(coarse.length).toBeLessThan(260);
    expect(fine.length).toBeGreaterThan(1000);
  });

  it('keeps every point of the fine one within the drawing tolerance of its edges', () => {
    fc.assert(
      fc.property(fc.array(fc.integer({ min: 20, max: 150 }), { minLength: 3, maxLength: 40 }), (radii) => {
        const fine = radii.map((radius, index) => turned({ x: radius, y: 0 }, (index * 360) / radii.length));
        const coarse = coarserRing(fine);
        for (const point of fine) {
          const away = coarse.map((from, index) =>
            distanceToSegment(point, from, coarse[(index + 1) % coarse.length] ?? from),
          );
          expect(Math.min(...away)).toBeLessThanOrEqual(drawingTolerance);
        }
        for (const corner of coarse) expect(fine).toContain(corner);
      }),
    );
  });
});
