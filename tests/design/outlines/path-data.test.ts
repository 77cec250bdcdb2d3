/**
 * SVG path data against svg-path-commander, a maintained library of its own, and against the grammar's own examples
 * (SVG 2, section 9.3.9: numbers and flags without separators; section 9.5.4: drawn up to the first error).
 */
import SVGPathCommander from 'svg-path-commander';
import { describe, expect, test } from 'vitest';
import { readPathData, type Subpath } from '../../../server/design/outlines/path-data.ts';
import { closedSegments } from '../../../server/design/outlines/draw-path-data.ts';
import { flattenContour } from '../../../server/geometry/flatten-path.ts';
import { contourArea, contourLength } from '../../../server/geometry/measure-path.ts';
import { boundsOf } from '../../../server/geometry/polygons.ts';

function subpathsOf(data: string): readonly Subpath[] {
  const { subpaths, errorAt } = readPathData(data);
  if (errorAt !== null) throw new Error(`error at ${String(errorAt)} of ${data}`);
  return subpaths;
}

const contoursOf = (data: string) => subpathsOf(data).map(closedSegments);

describe.each([
  ['lines, absolute and relative', 'M10 10L100 10l0 50H10z'],
  ['implicit lines after a move', 'm10 10 90 0 0 50-90 0z'],
  ['numbers without separators', 'M.5.5L100.25.5 50-80.75Z'],
  ['exponents', 'M1e1 1E1L1.0e+2 10 50-8e1Z'],
  ['a cubic', 'M0 0C0-50 100-50 100 0Z'],
  ['cubics, relative and smooth', 'M0 0c0-50 50-50 50 0s50 50 50 0v100h-100z'],
  ['quadratics and smooth ones', 'M0 0Q50 100 100 0T200 0t50 0L250 300H0Z'],
  ['an arc', 'M0 0A50 50 0 0 1 100 0Z'],
  ['arcs with flags without separators', 'M0 0a50 30 0 0190 10a50,30,0,10-90-10z'],
  ['a tilted arc', 'M0 0A80 40 30 1 1 60 20Z'],
  ['an arc whose radii are too small', 'M0 0A1 2 15 0 1 100 0L50-90Z'],
  ['commas and line ends', 'M 0,0\n L 100 , 0\t 100,50\r\nz'],
])('%s: %s', (_, data) => {
  test('has the length and size that svg-path-commander finds', () => {
    const contours = contoursOf(data);
    const { width, height } = SVGPathCommander.getPathBBox(data);
    const box = boundsOf(contours.flatMap(flattenContour));
    expect(box.right - box.left).toBeCloseTo(width, 2);
    expect(box.top - box.bottom).toBeCloseTo(height, 2);
    const length = contours.reduce((sum, contour) => sum + contourLength(contour), 0);
    expect(length).toBeCloseTo(SVGPathCommander.getTotalLength(data), 2);
  });

  test('encloses the area that svg-path-commander finds', () => {
    const area = contoursOf(data).reduce((sum, contour) => sum + contourArea(contour), 0);
    // it makes arcs of cubics first: good to some thousandths of the area
    expect(Math.abs(area / SVGPathCommander.getPathArea(data))).toBeCloseTo(1, 2);
  });
});

test('a subpath after Z begins where the last one began', () => {
  const [, second] = subpathsOf('M10 20L30 20 30 40Z l-5 0 0-5 z');
  expect(second?.start).toEqual({ x: 10, y: -20 });
});

test('a smooth cubic after a line begins along itself: 8000 + ∫ y dx = 8000 + 180·(360·3!2!/6! + 60·4!1!/6!)', () => {
  const [contour = []] = contoursOf('M0 0L20 0S80-60 100 0V80H0z');
  expect(Math.abs(contourArea(contour))).toBeCloseTo(9440, 6);
});

test('an arc of radius 0 is a line, an arc to itself nothing (SVG 2, appendix B.2.5)', () => {
  expect(subpathsOf('M0 0A0 5 0 0 1 10 0')[0]?.segments.map(({ kind }) => kind)).toEqual(['line']);
  expect(subpathsOf('M0 0A5 5 0 0 1 0 0L1 1')[0]?.segments.map(({ kind }) => kind)).toEqual(['line']);
});

test.each([
  ['M0 0A-80-40 30 1 1 60 20Z', 'M0 0A80 40 30 1 1 60 20Z'],
  ['M0 0a-5e1,-30,0,10-90-10-20-20 5 0150 50z', 'M0 0a5e1,30,0,10-90-10 20 20 5 0150 50z'],
])('radii below zero stand for their absolute values (SVG 1.1, F.6.6, step 2): %s', (data, absolute) => {
  expect(subpathsOf(data)).toEqual(subpathsOf(absolute));
});

describe('data with an error is read up to the command with the error', () => {
  test.each([
    ['M0 0L10 0 10 10 gen', 16, 2],
    ['M0 0L10 0 10 10 20', 18, 2],
    ['M0 0L10 0A5 5 0 2 0 1 1', 17, 1],
    ['M0 0L10 0,,5 5', 10, 1],
    ['M0 0 L10 0 X 5', 11, 1],
  ])('%s', (data, errorAt, drawn) => {
    const read = readPathData(data);
    expect(read.errorAt).toBe(errorAt);
    expect(read.subpaths[0]?.segments).toHaveLength(drawn);
  });

  test.each(['', '  ', 'L 1 1', 'ten', 'M 1e999 0'])('"%s" draws nothing', (data) => {
    expect(readPathData(data)).toEqual({ subpaths: [], errorAt: 0 });
  });
});
