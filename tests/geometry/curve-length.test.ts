/** Lengths of curves against closed forms and against chains of many chords. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { segmentLength } from '../../server/geometry/curve-length.ts';
import { pointOnArc, pointOnCubic } from '../../server/geometry/flatten-path.ts';
import type { ArcSegment, CubicSegment } from '../../server/geometry/path.ts';
import { distance, type Point } from '../../server/geometry/point.ts';

const coordinate = fc.integer({ min: -200, max: 200 });
const point = fc.record({ x: coordinate, y: coordinate });

function chords(pointAt: (fraction: number) => Point, count: number): number {
  return Array.from({ length: count }, (_, index) =>
    distance(pointAt(index / count), pointAt((index + 1) / count)),
  ).reduce((sum, each) => sum + each, 0);
}

describe('the length of', () => {
  it('a parabola y = x² from 0 to 1 is √5/2 + arsinh(2)/4 (closed form, any table of integrals)', () => {
    const parabola = {
      kind: 'quadratic',
      from: { x: 0, y: 0 },
      control: { x: 0.5, y: 0 },
      to: { x: 1, y: 1 },
    } as const;
    expect(segmentLength(parabola)).toBeCloseTo(Math.sqrt(5) / 2 + Math.asinh(2) / 4, 9);
  });

  it('a straight line written as a cubic is the distance of its ends', () => {
    const line: CubicSegment = {
      kind: 'cubic',
      from: { x: 0, y: 0 },
      control1: { x: 3, y: 4 },
      control2: { x: 6, y: 8 },
      to: { x: 30, y: 40 },
    };
    expect(segmentLength(line)).toBeCloseTo(50, 9);
  });

  it('any ellipse’s arc and any cubic is that of 4000 chords', () => {
    fc.assert(
      fc.property(
        fc.tuple(point, point, point, point),
        fc.tuple(
          fc.integer({ min: 1, max: 300 }),
          fc.integer({ min: 1, max: 300 }),
          fc.integer({ min: -360, max: 360 }),
        ),
        ([from, control1, control2, to], [radiusX, radiusY, sweep]) => {
          const cubic: CubicSegment = { kind: 'cubic', from, control1, control2, to };
          const byChords = chords((fraction) => pointOnCubic(cubic, fraction), 4000);
          expect(Math.abs(segmentLength(cubic) - byChords)).toBeLessThan(1e-5 * byChords + 1e-3);
          const arc: ArcSegment = {
            kind: 'arc',
            from,
            to,
            centre: from,
            radiusX,
            radiusY,
            tilt: 20,
            startAngle: 33,
            sweep,
          };
          const arcByChords = chords((fraction) => pointOnArc(arc, fraction), 4000);
          expect(Math.abs(segmentLength(arc) - arcByChords)).toBeLessThan(1e-5 * arcByChords + 1e-3);
        },
      ),
      { numRuns: 30 },
    );
  });
});
