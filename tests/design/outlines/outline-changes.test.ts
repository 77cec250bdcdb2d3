/** Outlines made of others: areas add up, changes apply in order, curves stay curves. */
import { describe, expect, test } from 'vitest';
import { contourArea } from '../../../server/geometry/measure-path.ts';
import { boundsOf } from '../../../server/geometry/polygons.ts';
import { flattenContour } from '../../../server/geometry/flatten-path.ts';
import type { Outline } from '../../../server/design/design-model.ts';
import { designOf } from '../design-of.ts';

const parts = `
outline leaf { start 0, 0  line to 100, 0  curve to 0, 0 by 60, 90 }
outline disc { circle radius 50 }
outline bar { rectangle 200 x 20 }
outline ring { circle radius 50  circle radius 20 }
outline hole { circle radius 20 }
outline upper_half { rectangle 200 x 100 at 0, 50 }
outline lower { rectangle 200 x 100 at 0, -40 }
`;

function made(steps: string): Outline {
  const outline = designOf(`${parts}outline made { ${steps} }`).outlines.find(({ name }) => name === 'made');
  if (!outline) throw new Error('no outline was built');
  return outline;
}

const areaOf = (steps: string): number => made(steps).contours.reduce((sum, contour) => sum + contourArea(contour), 0);
const boxOf = (steps: string) => boundsOf(made(steps).contours.flatMap(flattenContour));
const leafArea = areaOf('copy leaf');
const discArea = Math.PI * 2500;

describe('moving, mirroring, turning, scaling', () => {
  test.each([
    ['copy leaf  move 10, -20', 1],
    ['copy leaf  mirror over x', 1],
    ['copy leaf  mirror over y', 1],
    ['copy leaf  mirror over 0, 10 and 30, 90', 1],
    ['copy leaf  turn 33deg', 1],
    ['copy leaf  scale 1.5', 2.25],
    ['copy leaf  scale 50% about 10, 10', 0.25],
  ])('%s', (steps, factor) => {
    expect(areaOf(steps)).toBeCloseTo(leafArea * factor, 6);
    expect(
      made(steps)
        .contours[0]?.map(({ kind }) => kind)
        .sort(),
    ).toEqual(['line', 'quadratic']);
  });

  test('the mirror `over y` changes left and right, `over x` up and down', () => {
    expect(boxOf('copy leaf  mirror over y')).toMatchObject({ left: -100, right: 0, bottom: 0 });
    expect(boxOf('copy leaf  mirror over x')).toMatchObject({ left: 0, right: 100, top: 0 });
    expect(boxOf('copy leaf  mirror over 100, 0 and 100, 5')).toMatchObject({ left: 100, right: 200 });
  });

  test('a turn is counter-clockwise', () => {
    const { left, bottom, top } = boxOf('copy leaf  turn 90deg');
    expect(left).toBeLessThan(-20);
    expect([bottom, top].map((value) => Math.round(value))).toEqual([0, 100]);
  });

  test('steps apply in the order in which they stand', () => {
    expect(boxOf('copy bar  move 100, 0  turn 90deg')).toMatchObject({ bottom: 0, top: 200 });
    expect(boxOf('copy bar  turn 90deg  move 100, 0')).toMatchObject({ bottom: -100, top: 100, left: 90 });
  });

  test('and to what was drawn before them only', () => {
    const { contours } = made('circle radius 50  scale 2  circle radius 10');
    expect(contours.map((contour) => Math.round(contourArea(contour)))).toEqual([
      Math.round(Math.PI * 10_000),
      Math.round(-Math.PI * 100),
    ]);
  });

  test('mirrored twice is as before', () => {
    expect(made('copy leaf  mirror over 3, 4 and 8, 9  mirror over 3, 4 and 8, 9').contours.map(contourArea)).toEqual(
      made('copy leaf').contours.map((contour) => expect.closeTo(contourArea(contour), 9) as number),
    );
  });
});

describe('adding, taking away, keeping what is common', () => {
  test('areas add up: A plus B + A common B = A + B, A minus B + A common B = A', () => {
    const [plus, minus, common] = ['plus', 'minus', 'common'].map((how) => areaOf(`copy disc  ${how} leaf`));
    expect((plus ?? 0) + (common ?? 0)).toBeCloseTo(discArea + leafArea, 1);
    expect((minus ?? 0) + (common ?? 0)).toBeCloseTo(discArea, 1);
  });

  test('a hole is a hole', () => {
    const { contours } = made('copy disc  minus hole');
    expect(contours).toHaveLength(2);
    expect(contourArea(contours[1] ?? [])).toBeCloseTo(-Math.PI * 400, 1);
  });

  test('the holes of the other are respected', () => {
    expect(areaOf('copy disc  common ring')).toBeCloseTo(Math.PI * (2500 - 400), 1);
    expect(areaOf('copy disc  minus ring')).toBeCloseTo(Math.PI * 400, 1);
  });

  test('pieces on the way are no error, if one is left', () => {
    expect(areaOf('copy disc  minus bar  common upper_half')).toBeCloseTo(areaOf('copy disc  minus lower'), 1);
  });

  test('what is left keeps its curves', () => {
    const { contours } = made('copy disc  minus lower');
    expect(
      contours
        .flat()
        .map(({ kind }) => kind)
        .sort(),
    ).toEqual(['arc', 'line']);
  });
});

test('an outline may be made of one that stands further down', () => {
  const { outlines } = designOf('outline a { copy b  grow 2 } outline b { circle radius 10 }');
  expect(outlines.map(({ name }) => name)).toEqual(['a', 'b']);
  expect(contourArea(outlines[0]?.contours[0] ?? [])).toBeCloseTo(Math.PI * 144, 1);
});
