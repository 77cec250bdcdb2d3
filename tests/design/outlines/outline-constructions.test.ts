/**
 * What outlines are drawn from, against closed forms of plane geometry and, for the ellipse, tabulated complete
 * elliptic integrals: E(0.75) = 1.211056027568459, E(0.5) = 1.350643881047676 (Abramowitz and Stegun, table 17.1);
 * perimeter 4a·E(1 − b²/a²) (NIST DLMF 19.30(i)).
 */
import { describe, expect, test } from 'vitest';
import { arcByRise, arcThrough } from '../../../server/design/outlines/arc-geometry.ts';
import { pointOnArc } from '../../../server/geometry/flatten-path.ts';
import { contourArea, contourLength } from '../../../server/geometry/measure-path.ts';
import { endDirection, pointOn, startDirection } from '../../../server/geometry/path-parts.ts';
import { distance } from '../../../server/geometry/point.ts';
import { outlineOf } from '../design-of.ts';

const areaOf = (steps: string): number =>
  outlineOf(steps).contours.reduce((sum, contour) => sum + contourArea(contour), 0);
const lengthOf = (steps: string): number => contourLength(outlineOf(steps).contours[0] ?? []);
const kindsOf = (steps: string): string[] =>
  outlineOf(steps)
    .contours.flat()
    .map(({ kind }) => kind);

/** Area between an arc and its chord. */
const segment = (radius: number, angle: number): number => (radius ** 2 / 2) * (angle - Math.sin(angle));

describe('arcs', () => {
  test('by rise: chord 100 and rise 20.71067812 give radius 70.71067812 and a quarter turn', () => {
    const arc = arcByRise({ x: 0, y: 0 }, { x: 100, y: 0 }, 50 * Math.tan(Math.PI / 8), 'left');
    expect(arc?.radiusX).toBeCloseTo(70.710678, 6);
    expect(arc?.sweep).toBeCloseTo(90, 9);
    expect(areaOf('start 0, 0  arc to 100, 0 rise 20.71067812 left  line to start')).toBeCloseTo(
      segment(50 * Math.SQRT2, Math.PI / 2),
      4,
    );
  });

  test('by rise: its middle lies that far from the chord, on the right of the way when it turns left', () => {
    for (const rise of [1, 20, 50, 80]) {
      const arc = arcByRise({ x: 0, y: 0 }, { x: 100, y: 0 }, rise, 'left');
      expect(arc && pointOnArc(arc, 0.5).y).toBeCloseTo(-rise, 9);
      expect(arc && Math.abs(arc.sweep) > 180).toBe(rise > 50);
    }
  });

  test('through a point go through it, on either side, the long way too', () => {
    for (const through of [
      { x: 20, y: 30 },
      { x: 60, y: -10 },
      { x: -30, y: 80 },
    ]) {
      const arc = arcThrough({ x: 0, y: 0 }, through, { x: 100, y: 0 });
      if (!arc) throw new Error('no arc');
      expect(distance(pointOnArc(arc, 1), { x: 100, y: 0 })).toBeLessThan(1e-9);
      const nearest = Math.min(
        ...Array.from({ length: 20_001 }, (_, index) => distance(pointOnArc(arc, index / 20_000), through)),
      );
      expect(nearest).toBeLessThan(0.02);
      expect(distance(arc.centre, through)).toBeCloseTo(arc.radiusX, 9);
    }
    expect(arcThrough({ x: 0, y: 0 }, { x: 50, y: 0 }, { x: 100, y: 0 })).toBeNull();
  });
});

describe('whole lines', () => {
  test('an ellipse: area πab, perimeter 4a·E(m), wherever and however it lies', () => {
    expect(areaOf('ellipse radii 80, 40')).toBeCloseTo(Math.PI * 80 * 40, 6);
    expect(areaOf('ellipse at 30, -10 radii 80, 40 turned 33deg')).toBeCloseTo(Math.PI * 80 * 40, 6);
    expect(lengthOf('ellipse at 30, -10 radii 80, 40 turned 33deg')).toBeCloseTo(4 * 80 * 1.211056027568459, 6);
    expect(lengthOf('ellipse radii 40, 80')).toBeCloseTo(4 * 80 * 1.211056027568459, 6);
    expect(lengthOf(`ellipse radii 100, ${String(100 * Math.SQRT1_2)}`)).toBeCloseTo(4 * 100 * 1.350643881047676, 6);
  });

  test('a turned ellipse has its first radius there', () => {
    const [first] = outlineOf('ellipse at 10, 20 radii 80, 40 turned 90deg').contours[0] ?? [];
    expect(first?.from).toEqual({ x: expect.closeTo(10, 9) as number, y: expect.closeTo(100, 9) as number });
  });

  test.each([3, 4, 5, 6, 12])('a polygon of %i corners: area n/2·r²·sin(2π/n), level side at the bottom', (count) => {
    const area = (count / 2) * 50 ** 2 * Math.sin((2 * Math.PI) / count);
    expect(areaOf(`polygon ${String(count)} radius 50`)).toBeCloseTo(area, 6);
    expect(areaOf(`polygon ${String(count)} at 9, 9 radius 50 turned 11deg`)).toBeCloseTo(area, 6);
    const points = (outlineOf(`polygon ${String(count)} radius 50`).contours[0] ?? []).map(({ from }) => from);
    const ys = points.map(({ y }) => y).sort((a, b) => a - b);
    expect(ys[0]).toBeCloseTo(ys[1] ?? NaN, 9);
    expect(ys[0]).toBeCloseTo(-50 * Math.cos(Math.PI / count), 9);
  });

  test('a rounded rectangle loses (4 − π)r² of its area and (8 − 2π)r of its length', () => {
    expect(areaOf('rectangle 300 x 200 rounded 10')).toBeCloseTo(60_000 - (4 - Math.PI) * 100, 6);
    expect(lengthOf('rectangle 300 x 200 rounded 10 ')).toBeCloseTo(1000 - (8 - 2 * Math.PI) * 10, 6);
    expect(areaOf('rectangle 300 x 200 at 5, 6 turned 30deg rounded 10')).toBeCloseTo(60_000 - (4 - Math.PI) * 100, 6);
  });

  test('rounded as far as it goes, a square is a circle and a rectangle a slot', () => {
    expect(areaOf('rectangle 80 x 80 rounded 40')).toBeCloseTo(Math.PI * 1600, 6);
    expect(kindsOf('rectangle 80 x 80 rounded 40')).toEqual(['arc', 'arc', 'arc', 'arc']);
    expect(areaOf('rectangle 100 x 80 rounded 40')).toBeCloseTo(Math.PI * 1600 + 20 * 80, 6);
  });

  test('a loop is closed by itself and goes through its points', () => {
    const [contour = []] = outlineOf('loop through 0, 0 and 100, 0 and 100, 80 and 0, 80').contours;
    expect(contour.map(({ kind }) => kind)).toEqual(['cubic', 'cubic', 'cubic', 'cubic']);
    expect(contour.map(({ from }) => from)).toContainEqual({ x: 100, y: 80 });
    expect(contourArea(contour)).toBeGreaterThan(8000);
  });
});

describe('rounded corners of a path', () => {
  test('between lines: the corner loses r²(1/tan(α/2) − (π − α)/2)', () => {
    const angle = Math.atan2(80, 50); // at 100, 0, between the ways to 0, 0 and to 50, 80
    const lost = 64 * (1 / Math.tan(angle / 2) - (Math.PI - angle) / 2);
    expect(areaOf('start 0, 0  line to 100, 0 rounded 8  line to 50, 80  line to start')).toBeCloseTo(4000 - lost, 6);
  });

  test('at the start, where the last line says so, and at a hollow corner', () => {
    const hollow = 'line to 100, 0  line to 100, 100  line to 50, 50 rounded 5  line to 0, 100';
    const plain = areaOf(`start 0, 0  ${hollow.replace(' rounded 5', '')}  line to start`);
    expect(areaOf(`start 0, 0  ${hollow}  line to start`)).toBeCloseTo(plain + 25 * (1 - Math.PI / 4), 6);
    expect(areaOf('start 0, 0  line to 100, 0  line to 100, 100  line to start rounded 4')).toBeLessThan(5000);
  });

  test('between a line and an arc: both sides touch, nothing is left beside the arc', () => {
    const steps = 'start 0, 0  line to 100, 0 rounded 10  arc to 0, 0 radius 50 left';
    const [contour = []] = outlineOf(steps).contours;
    expect(contour.map(({ kind }) => kind)).toEqual(['line', 'arc', 'arc']);
    const fillet = contour.find((part) => part.kind === 'arc' && Math.abs(part.radiusX - 10) < 1e-6);
    if (fillet?.kind !== 'arc') throw new Error('no fillet');
    // it touches the line y = 0 from inside and the circle of radius 50 about 50, 0 from inside
    expect(fillet.centre.y).toBeCloseTo(10, 9);
    expect(distance(fillet.centre, { x: 50, y: 0 })).toBeCloseTo(40, 9);
  });

  test('between a line and a curve that is straight: as between lines', () => {
    const straight = 'start 0, 0  line to 100, 0 rounded 8  curve to 50, 80 by 75, 40  line to start';
    const even = 'start 0, 0  curve to 100, 0 by 30, 0 and 60, 0 rounded 8  line to 50, 80  line to start';
    const lines = areaOf('start 0, 0  line to 100, 0 rounded 8  line to 50, 80  line to start');
    expect(areaOf(straight)).toBeCloseTo(lines, 5);
    expect(areaOf(even)).toBeCloseTo(lines, 5);
  });

  test.each([
    ['a line and a parabola', 'start 0, 0  line to 100, 0 rounded 10  curve to start by 50, 90'],
    ['a parabola and a line', 'start 0, 0  line to 100, 0  curve to start by 50, 90 rounded 10'],
    ['two curves', 'start 0, 0  curve to 100, 0 by 40, -50 and 80, -20 rounded 10  curve to start by 50, 90'],
    ['an arc and a spline', 'start 0, 0  arc to 100, 0 rise 15 right rounded 10  spline to start through 60, 60'],
  ])('between %s: the arc goes on the way both sides go, and no place of them is nearer to its centre', (_, steps) => {
    const [contour = []] = outlineOf(steps).contours;
    const at = contour.findIndex((part) => part.kind === 'arc' && Math.abs(part.radiusX - 10) < 1e-6);
    const arc = contour[at];
    if (arc?.kind !== 'arc') throw new Error('no fillet');
    const sides = [contour.at(at - 1), contour[(at + 1) % contour.length]];
    const [before, after] = sides;
    const ways = [
      before && endDirection(before),
      startDirection(arc),
      endDirection(arc),
      after && startDirection(after),
    ];
    const [first, second, third, fourth] = ways.map((way) => way ?? { x: 0, y: 0 });
    if (!first || !second || !third || !fourth) throw new Error('no way');
    expect(distance(first, second)).toBeLessThan(1e-5);
    expect(distance(third, fourth)).toBeLessThan(1e-5);
    const places = Array.from({ length: 2001 }, (__, index) => index / 2000);
    const apart = sides.flatMap((side) =>
      side ? places.map((place) => distance(pointOn(side, place), arc.centre)) : [],
    );
    expect(Math.min(...apart)).toBeCloseTo(10, 6);
  });

  test('between two arcs', () => {
    const [contour = []] = outlineOf(
      'start 0, 0  arc to 100, 0 rise 30 right rounded 6  arc to start rise 30 right',
    ).contours;
    expect(contour.filter((part) => part.kind === 'arc' && Math.abs(part.radiusX - 6) < 1e-6)).toHaveLength(1);
    expect(contour).toHaveLength(3);
  });
});
