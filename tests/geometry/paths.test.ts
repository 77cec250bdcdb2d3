/** Areas, perimeters and containment against flatten-js, a general-purpose geometry library the engine does not use. */
import Flatten from '@flatten-js/core';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { circularArc, flattenContour, pointOnCubic, pointOnQuadratic } from '../../server/geometry/flatten-path.ts';
import { contourArea, contourLength } from '../../server/geometry/measure-path.ts';
import type { Contour, CubicSegment, QuadraticSegment } from '../../server/geometry/path.ts';
import { distance, turned } from '../../server/geometry/point.ts';
import { areaOf, intersectionOf, signedArea } from '../../server/geometry/polygons.ts';
import { distanceToSegment, localRings, regionHolds, regionOf } from '../../server/geometry/region.ts';
import { circleContour, polygonContour } from '../design-builder.ts';
import { polygonOf } from '../independent-polygons.ts';

const coordinate = fc.integer({ min: -200, max: 200 });
const point = fc.record({ x: coordinate, y: coordinate });
const star = fc
  .array(fc.integer({ min: 20, max: 150 }), { minLength: 3, maxLength: 14 })
  .map((radii) => radii.map((radius, index) => turned({ x: radius, y: 0 }, (index * 360) / radii.length)));

/** A slot: two straight sides and two half circles. */
const slot: Contour = [
  { kind: 'line', from: { x: -50, y: -20 }, to: { x: 50, y: -20 } },
  circularArc({ x: 50, y: -20 }, { x: 50, y: 20 }, { x: 50, y: 0 }, 180),
  { kind: 'line', from: { x: 50, y: 20 }, to: { x: -50, y: 20 } },
  circularArc({ x: -50, y: 20 }, { x: -50, y: -20 }, { x: -50, y: 0 }, 180),
];

describe('exact areas', () => {
  it('of a slot with round ends agree with flatten-js, which keeps arcs', () => {
    const shape = new Flatten.Polygon([
      Flatten.segment(-50, -20, 50, -20),
      new Flatten.Arc(Flatten.point(50, 0), 20, -Math.PI / 2, Math.PI / 2, true),
      Flatten.segment(50, 20, -50, 20),
      new Flatten.Arc(Flatten.point(-50, 0), 20, Math.PI / 2, (3 * Math.PI) / 2, true),
    ]);
    expect(contourArea(slot)).toBeCloseTo(Math.abs(shape.area()), 6);
    const edges = [...shape.edges] as Flatten.Edge[];
    const round = edges.reduce((sum, edge) => sum + edge.length, 0);
    expect(contourLength(slot)).toBeCloseTo(round, 6);
  });

  it('of polygons agree with flatten-js', () => {
    fc.assert(
      fc.property(star, (points) => {
        expect(contourArea(polygonContour(points))).toBeCloseTo(Math.abs(polygonOf(points).area()), 6);
      }),
    );
  });

  it('of a circle is πr², its length 2πr', () => {
    expect(contourArea(circleContour(150))).toBeCloseTo(Math.PI * 150 ** 2, 6);
    expect(contourLength(circleContour(150))).toBeCloseTo(2 * Math.PI * 150, 9);
  });

  it('of cubics and quadratics agree with the sum over 4000 chords (shoelace formula)', () => {
    fc.assert(
      fc.property(point, point, point, point, (from, control1, control2, to) => {
        const cubic: CubicSegment = { kind: 'cubic', from, control1, control2, to };
        const quadratic: QuadraticSegment = { kind: 'quadratic', from: to, control: control1, to: from };
        const chords = [
          ...Array.from({ length: 4000 }, (_, index) => pointOnCubic(cubic, index / 4000)),
          ...Array.from({ length: 4000 }, (_, index) => pointOnQuadratic(quadratic, index / 4000)),
        ];
        expect(Math.abs(contourArea([cubic, quadratic]) - signedArea(chords))).toBeLessThan(0.05);
      }),
    );
  });
});

describe('flattening', () => {
  it('stays within half a micron of the curve', () => {
    fc.assert(
      fc.property(point, point, point, point, (from, control1, control2, to) => {
        fc.pre(distance(from, to) > 1);
        const cubic: CubicSegment = { kind: 'cubic', from, control1, control2, to };
        const chain = [...flattenContour([cubic]), to];
        const samples = Array.from({ length: 37 }, (_, index) => pointOnCubic(cubic, index / 36));
        for (const sample of samples) {
          const away = Math.min(
            ...chain.slice(1).map((next, index) => distanceToSegment(sample, chain[index] ?? next, next)),
          );
          expect(away).toBeLessThan(0.000_51);
        }
      }),
      { numRuns: 40 },
    );
  });
});

describe('regions', () => {
  it('hold the points that flatten-js says they contain', () => {
    fc.assert(
      fc.property(star, fc.array(point, { minLength: 5, maxLength: 30 }), (points, places) => {
        const region = regionOf([points]);
        const shape = polygonOf(points);
        for (const place of places) {
          const away = shape.distanceTo(Flatten.point(place.x, place.y))[0];
          if (away > 0.002 || shape.contains(Flatten.point(place.x, place.y)))
            expect(regionHolds(region, place)).toBe(shape.contains(Flatten.point(place.x, place.y)));
        }
      }),
    );
  });

  it('clipped near a place and then exactly have the area that flatten-js finds', () => {
    fc.assert(
      fc.property(star, point, fc.integer({ min: 5, max: 60 }), (points, middle, size) => {
        const box = [
          { x: middle.x - size, y: middle.y - size },
          { x: middle.x + size, y: middle.y - size },
          { x: middle.x + size, y: middle.y + size },
          { x: middle.x - size, y: middle.y + size },
        ];
        const bounds = { left: middle.x - size, bottom: middle.y - size, right: middle.x + size, top: middle.y + size };
        const ours = areaOf(intersectionOf([box], localRings(regionOf([points]), bounds)));
        const theirs = Math.abs(Flatten.BooleanOperations.intersect(polygonOf(points), polygonOf(box)).area());
        expect(Math.abs(ours - theirs)).toBeLessThan(0.05);
      }),
    );
  });
});
