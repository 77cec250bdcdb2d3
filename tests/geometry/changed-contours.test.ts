/**
 * Contours cut, moved, grown and combined. Areas are closed forms: Steiner's for parallel curves (A + P·d + πd²), the lens of
 * two circles, the segments of a circle (plane geometry, common practice).
 */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { combinedRings } from '../../server/geometry/combine-rings.ts';
import { circularArc, flattenContour } from '../../server/geometry/flatten-path.ts';
import { grownContours } from '../../server/geometry/grow-contours.ts';
import { contourArea, contourLength } from '../../server/geometry/measure-path.ts';
import type { Contour, PathSegment } from '../../server/geometry/path.ts';
import { endDirection, partOf, pointOn, reversed, startDirection } from '../../server/geometry/path-parts.ts';
import { distance, dot, type Point } from '../../server/geometry/point.ts';
import { restoredContours } from '../../server/geometry/restore-curves.ts';
import { placeTolerance } from '../../server/geometry/tolerance.ts';
import {
  about,
  followedBy,
  mirroring,
  moving,
  scaling,
  transformed,
  transformedSegment,
  turning,
} from '../../server/geometry/transform-path.ts';
import { circleContour, polygonContour } from '../design-builder.ts';

const place = fc.integer({ min: -100, max: 100 });
const point = fc.record({ x: place, y: place });
const segments = fc.oneof(
  fc.record({ kind: fc.constant('line' as const), from: point, to: point }),
  fc.record({ kind: fc.constant('quadratic' as const), from: point, control: point, to: point }),
  fc.record({ kind: fc.constant('cubic' as const), from: point, control1: point, control2: point, to: point }),
  fc
    .record({
      centre: point,
      radiusX: fc.integer({ min: 5, max: 80 }),
      radiusY: fc.integer({ min: 5, max: 80 }),
      tilt: place,
      startAngle: place,
      sweep: fc.integer({ min: 20, max: 300 }),
      way: fc.constantFrom(1, -1),
    })
    .map(({ way, sweep, ...arc }): PathSegment => {
      const open = { kind: 'arc', ...arc, sweep: way * sweep, from: arc.centre, to: arc.centre } as const;
      return { ...open, from: pointOn(open, 0), to: pointOn(open, 1) };
    }),
);
const fractions = [0, 0.2, 0.5, 0.9, 1];

const isAt = (found: Point, expected: Point): void => {
  expect(distance(found, expected)).toBeLessThan(1e-9 * (1000 + Math.hypot(expected.x, expected.y)));
};

describe('a part of a segment', () => {
  test('runs over the same places', () => {
    fc.assert(
      fc.property(
        segments,
        fc.double({ min: 0, max: 1, noNaN: true }),
        fc.double({ min: 0, max: 1, noNaN: true }),
        (whole, a, b) => {
          const part = partOf(whole, a, b);
          for (const fraction of fractions) isAt(pointOn(part, fraction), pointOn(whole, a + (b - a) * fraction));
        },
      ),
      { numRuns: 80 },
    );
  });

  test('reversed, runs back', () => {
    fc.assert(
      fc.property(segments, (whole) => {
        for (const fraction of fractions) isAt(pointOn(reversed(whole), fraction), pointOn(whole, 1 - fraction));
      }),
      { numRuns: 40 },
    );
  });

  test('begins and ends in the directions of its chords there', () => {
    fc.assert(
      fc.property(
        segments.filter((whole) => startDirection(whole) !== null && endDirection(whole) !== null),
        (whole) => {
          const step = 1e-4;
          const [from, near] = [pointOn(whole, 0), pointOn(whole, step)];
          const along = startDirection(whole) ?? from;
          const chord = distance(from, near);
          fc.pre(chord > 1e-4);
          expect(dot(along, { x: near.x - from.x, y: near.y - from.y }) / chord).toBeGreaterThan(0.99);
        },
      ),
      { numRuns: 60 },
    );
  });
});

describe('a transform', () => {
  const transforms = fc.constantFrom(
    turning(37),
    scaling(2, -0.5),
    mirroring({ x: 0.6, y: 0.8 }),
    about({ x: 10, y: -4 }, turning(200)),
    followedBy({ a: 1, b: 0, c: 0.7, d: 1, e: 0, f: 0 }, moving({ x: 5, y: 6 })),
  );

  test('carries every point of a segment with it', () => {
    fc.assert(
      fc.property(segments, transforms, (segment, transform) => {
        const moved = transformedSegment(segment, transform);
        for (const fraction of fractions)
          isAt(pointOn(moved, fraction), transformed(pointOn(segment, fraction), transform));
      }),
      { numRuns: 120 },
    );
  });

  test('of two, does one after the other', () => {
    const both = followedBy(turning(90), moving({ x: 10, y: 0 }));
    isAt(transformed({ x: 1, y: 0 }, both), { x: 10, y: 1 });
  });

  test('that keeps angles keeps circles circles', () => {
    const [arc] = circleContour(40);
    const moved = arc && transformedSegment(arc, followedBy(scaling(1.5, 1.5), turning(33)));
    expect(moved).toMatchObject({ kind: 'arc', radiusX: expect.closeTo(60, 9) as number });
    expect(moved?.kind === 'arc' && moved.radiusX === moved.radiusY).toBe(true);
  });
});

const square = polygonContour([
  { x: -50, y: -50 },
  { x: 50, y: -50 },
  { x: 50, y: 50 },
  { x: -50, y: 50 },
]);
const kindsOf = (contours: readonly Contour[]): string[] => contours.flat().map(({ kind }) => kind);
const areaOfAll = (contours: readonly Contour[]): number => contours.reduce((sum, each) => sum + contourArea(each), 0);

describe('growing', () => {
  test('a circle makes a circle: π(r + d)², still two arcs', () => {
    for (const by of [7, -7, 0.3, -49]) {
      const grown = grownContours([circleContour(50)], by, 'round');
      expect(areaOfAll(grown)).toBeCloseTo(Math.PI * (50 + by) ** 2, 1);
      expect(kindsOf(grown)).toEqual(['arc', 'arc']);
    }
  });

  test('a square by round corners: s² + 4sd + πd²; by sharp ones (s + 2d)²', () => {
    const round = grownContours([square], 6, 'round');
    expect(areaOfAll(round)).toBeCloseTo(100 ** 2 + 4 * 100 * 6 + Math.PI * 36, 2);
    expect(kindsOf(round).sort()).toEqual([...Array<string>(4).fill('arc'), ...Array<string>(4).fill('line')]);
    const sharp = grownContours([square], 6, 'sharp');
    expect(areaOfAll(sharp)).toBeCloseTo(112 ** 2, 3);
    expect(kindsOf(sharp)).toEqual(['line', 'line', 'line', 'line']);
  });

  test('inwards keeps corners sharp, makes holes larger, and may leave nothing', () => {
    expect(areaOfAll(grownContours([square], -6, 'round'))).toBeCloseTo(88 ** 2, 3);
    const hole = [...circleContour(20)].reverse().map(reversed);
    const ring = grownContours([circleContour(50), hole], -5, 'round');
    expect(areaOfAll(ring)).toBeCloseTo(Math.PI * (45 ** 2 - 25 ** 2), 1);
    expect(grownContours([square], -50, 'round')).toEqual([]);
  });

  test('a slot by d adds P·d + πd² (Steiner)', () => {
    const slot: Contour = [
      { kind: 'line', from: { x: -50, y: -20 }, to: { x: 50, y: -20 } },
      circularArc({ x: 50, y: -20 }, { x: 50, y: 20 }, { x: 50, y: 0 }, 180),
      { kind: 'line', from: { x: 50, y: 20 }, to: { x: -50, y: 20 } },
      circularArc({ x: -50, y: 20 }, { x: -50, y: -20 }, { x: -50, y: 0 }, 180),
    ];
    const grown = grownContours([slot], 3, 'round');
    expect(areaOfAll(grown)).toBeCloseTo(contourArea(slot) + contourLength(slot) * 3 + Math.PI * 9, 1);
    expect(kindsOf(grown).sort()).toEqual(['arc', 'arc', 'line', 'line']);
  });

  test('a curve stays within the tolerance of its parallel', () => {
    const drop: Contour = [
      { kind: 'line', from: { x: 0, y: 0 }, to: { x: 100, y: 0 } },
      {
        kind: 'cubic',
        from: { x: 100, y: 0 },
        control1: { x: 120, y: 80 },
        control2: { x: 10, y: 90 },
        to: { x: 0, y: 0 },
      },
    ];
    const grown = grownContours([drop], 5, 'round');
    expect(areaOfAll(grown)).toBeCloseTo(contourArea(drop) + contourLength(drop) * 5 + Math.PI * 25, 1);
  });
});

describe('combining two circles', () => {
  const [radius, apart] = [50, 60];
  const [left, right] = [circleContour(radius), circleContour(radius, { x: apart, y: 0 })];
  const lens =
    2 * radius ** 2 * Math.acos(apart / (2 * radius)) - (apart / 2) * Math.sqrt(4 * radius ** 2 - apart ** 2);
  const disc = Math.PI * radius ** 2;
  const combine = (how: 'plus' | 'minus' | 'common'): Contour[] =>
    restoredContours(combinedRings([flattenContour(left)], [flattenContour(right)], how), [...left, ...right]);

  test.each([
    ['common', lens],
    ['plus', 2 * disc - lens],
    ['minus', disc - lens],
  ] as const)('%s: the area is that of the circles and their lens', (how, area) => {
    expect(areaOfAll(combine(how))).toBeCloseTo(area, 1);
  });

  test('leaves nothing but arcs of the two circles, end to end', () => {
    for (const how of ['plus', 'minus', 'common'] as const) {
      const contours = combine(how);
      expect(new Set(kindsOf(contours))).toEqual(new Set(['arc']));
      for (const contour of contours) {
        contour.forEach((segment, index) => {
          const next = contour[(index + 1) % contour.length];
          expect(segment.to).toEqual(next?.from);
          expect(distance(pointOn(segment, 1), segment.to)).toBeLessThanOrEqual(2 * placeTolerance);
        });
      }
    }
  });
});

describe('curves cut by a line', () => {
  test('stay the same curves', () => {
    const hill: Contour = [
      {
        kind: 'cubic',
        from: { x: 0, y: 0 },
        control1: { x: 0, y: 100 },
        control2: { x: 100, y: 100 },
        to: { x: 100, y: 0 },
      },
      { kind: 'line', from: { x: 100, y: 0 }, to: { x: 0, y: 0 } },
    ];
    const lower = polygonContour([
      { x: -10, y: -10 },
      { x: 110, y: -10 },
      { x: 110, y: 40 },
      { x: -10, y: 40 },
    ]);
    const rings = combinedRings([flattenContour(hill)], [flattenContour(lower)], 'common');
    const cut = restoredContours(rings, [...hill, ...lower]);
    expect(kindsOf(cut).sort()).toEqual(['cubic', 'cubic', 'line', 'line']);
    for (const segment of cut.flat().filter(({ kind }) => kind === 'cubic')) {
      for (const fraction of fractions) {
        const { x, y } = pointOn(segment, fraction);
        // on the curve x = 300t²(1 − t)·… only where its own equation holds: y = 300t(1 − t), x = 100t²(3 − 2t)
        const t = (1 - Math.sqrt(Math.max(0, 1 - (4 * y) / 300))) / 2;
        const [one, other] = [t, 1 - t].map((value) => 100 * value ** 2 * (3 - 2 * value));
        expect(Math.min(Math.abs(x - (one ?? 0)), Math.abs(x - (other ?? 0)))).toBeLessThan(0.01);
      }
    }
  });
});
