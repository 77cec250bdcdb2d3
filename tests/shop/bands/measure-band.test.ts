/** Lengths, corners and order of bands against closed forms worked by hand. */
import { describe, expect, test } from 'vitest';
import { measureBand } from '../../../server/shop/bands/measure-band.ts';
import type { Band } from '../../../server/design/work-model.ts';
import type { Contour } from '../../../server/geometry/path.ts';
import { bandOf, circleContour, ellipseContour, outlineOf, polygonContour, stripStock } from '../../design-builder.ts';

const strip = stripStock('walnut_strip', 1.5, { wood: 'walnut', depth: 12 });
const around = (contour: Contour, more: Partial<Band> = {}) =>
  measureBand(bandOf(outlineOf('edge', contour), strip, more), []);
const lengths = (measured: ReturnType<typeof around>): number[][] =>
  measured.runs.map(({ pieces }) => pieces.map(({ length }) => length));

const square = polygonContour([
  { x: 0, y: 0 },
  { x: 100, y: 0 },
  { x: 100, y: 100 },
  { x: 0, y: 100 },
]);

describe('round a circle', () => {
  const round = around(circleContour(60), { laminations: 3, overLength: 10 });

  test('lamination i is 2π(R − b + (i − ½)t) long', () => {
    const closed = [1, 2, 3].map((i) => 2 * Math.PI * (60 - 4.5 + (i - 0.5) * 1.5));
    lengths(round)[0]?.forEach((length, index) => expect(length).toBeCloseTo(closed[index] ?? 0, 9));
  });

  test('it is one closed run with scarfed ends, cut longer by the scarf and the over-length', () => {
    expect(round.runs).toHaveLength(1);
    expect(round.runs[0]?.ends).toEqual(['scarfed', 'scarfed']);
    const [piece] = round.runs[0]?.pieces ?? [];
    expect((piece?.cutLength ?? 0) - (piece?.length ?? 0)).toBeCloseTo(8 * 1.5 + 10, 9); // scarf 1 in 8: common practice
  });

  test('the innermost lamination bends most, to the middle of its thickness', () => {
    expect(round.worst).toMatchObject({ side: 'bulge', lamination: 1 });
    expect(round.worst?.radius).toBeCloseTo(60 - 4.5 + 0.75, 9);
  });
});

test('round an ellipse the parallel is longer by distance · 2π, and the bulge at its end b²/a tight', () => {
  // Ramanujan's second approximation is good to 1e-8 of the circumference at this shape.
  const h = ((90 - 60) / (90 + 60)) ** 2;
  const circumference = Math.PI * 150 * (1 + (3 * h) / (10 + Math.sqrt(4 - 3 * h)));
  const oval = around(ellipseContour(90, 60), { laminations: 2 });
  expect(lengths(oval)[0]?.[0]).toBeCloseTo(circumference - 2.25 * 2 * Math.PI, 5);
  expect(lengths(oval)[0]?.[1]).toBeCloseTo(circumference - 0.75 * 2 * Math.PI, 5);
  expect(oval.worst?.radius).toBeCloseTo(60 ** 2 / 90 - 2.25, 5);
});

test('a hole is banded on its inside: the outermost lamination, at the finished line, bends most', () => {
  const backwards = [...circleContour(40)].reverse().map((segment) =>
    segment.kind === 'arc'
      ? {
          ...segment,
          from: segment.to,
          to: segment.from,
          startAngle: segment.startAngle + segment.sweep,
          sweep: -180,
        }
      : segment,
  );
  const { worst, runs } = around(backwards, { laminations: 2 });
  expect(worst).toMatchObject({ side: 'hollow', lamination: 2 });
  expect(worst?.radius).toBeCloseTo(40.75, 9);
  expect(runs[0]?.pieces[0]?.length).toBeCloseTo(2 * Math.PI * (40 + 2.25), 9);
});

describe('round a square', () => {
  test('mitred, the outer lamination is as long as the side and the inner shorter by twice its thickness', () => {
    const measured = around(square, { laminations: 2 });
    expect(measured.runs).toHaveLength(4);
    for (const [inner, outer] of lengths(measured)) {
      expect(outer).toBeCloseTo(100, 9);
      expect(inner).toBeCloseTo(97, 9);
    }
  });

  test('lapped, one end of each corner runs to the finished line and the other stops at the sand line of its neighbour', () => {
    const measured = around(square, { corners: 'lapped', laminations: 1 });
    // fitted in the order they lie: the first butts at both ends, the last laps at both
    expect(measured.runs.map(({ ends }) => ends)).toEqual([
      ['butts', 'butts'],
      ['laps', 'butts'],
      ['laps', 'butts'],
      ['laps', 'laps'],
    ]);
    const hand = [97, 98.5, 98.5, 100];
    lengths(measured).forEach(([length], index) => expect(length).toBeCloseTo(hand[index] ?? 0, 9));
  });
});

test('in a right-angled hollow a mitre reaches the far corner of the sand line', () => {
  const step = polygonContour([
    { x: 0, y: 0 },
    { x: 100, y: 0 },
    { x: 100, y: 100 },
    { x: 50, y: 100 },
    { x: 50, y: 50 },
    { x: 0, y: 50 },
  ]);
  // from (50, 100) to the hollow at (50, 50): the outer tip at the top is the corner itself, in the hollow 1.5 beyond
  expect(lengths(around(step))[3]?.[0]).toBeCloseTo(51.5, 9);
});

describe('a slot with a sharp bottom', () => {
  /** Two sides that meet at 20° in the middle of the top edge, 60 deep. */
  const half = 60 * Math.tan(Math.PI / 18);
  const slot = polygonContour([
    { x: -100, y: -100 },
    { x: 100, y: -100 },
    { x: 100, y: 0 },
    { x: half, y: 0 },
    { x: 0, y: -60 },
    { x: -half, y: 0 },
    { x: -100, y: 0 },
  ]);
  const measured = around(slot);

  test('is not mitred: the side fitted first goes to the bottom, the other stops against it', () => {
    expect(measured.runs[3]?.ends).toEqual(['mitred', 'laps']);
    expect(measured.runs[4]?.ends).toEqual(['butts', 'mitred']);
  });

  test('the first reaches the sand line of the other, the second its finished line', () => {
    const side = 60 / Math.cos(Math.PI / 18);
    const [sine, cosine] = [Math.sin((160 * Math.PI) / 180), Math.cos((160 * Math.PI) / 180)];
    // at the rim the outer tip is the corner itself; at the bottom, −160°, the finished line's face and the sand line's
    const through = side + Math.max(1.5 / sine, (1.5 - 1.5 * cosine) / sine);
    const stopped = side + Math.max(0, (-1.5 * cosine) / sine);
    expect(measured.runs[3]?.pieces[0]?.length).toBeCloseTo(through, 9);
    expect(measured.runs[4]?.pieces[0]?.length).toBeCloseTo(stopped, 9);
  });

  test('hollow runs are fitted before those that bulge', () => {
    const bay: Contour = [
      { kind: 'line', from: { x: 0, y: 0 }, to: { x: 200, y: 0 } },
      { kind: 'line', from: { x: 200, y: 0 }, to: { x: 200, y: 80 } },
      { kind: 'quadratic', from: { x: 200, y: 80 }, control: { x: 100, y: 20 }, to: { x: 0, y: 80 } },
      { kind: 'line', from: { x: 0, y: 80 }, to: { x: 0, y: 0 } },
    ];
    expect(around(bay).runs.map(({ order }) => order)).toEqual([2, 3, 1, 4]);
  });
});
