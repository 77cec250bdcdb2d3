/**
 * Outlines out of SVG files. Sizes are checked against the renderer resvg, which finds the bounds of what it draws; areas by
 * the determinant of the transforms; a px is 1/96 in (CSS Values 3, section 6.2).
 */
import { Resvg } from '@resvg/resvg-js';
import { describe, expect, test } from 'vitest';
import { readSvgElement } from '../../../server/design/outlines/svg-file.ts';
import { readSvgLength, readSvgTransform } from '../../../server/design/outlines/svg-lengths.ts';
import { flattenContour } from '../../../server/geometry/flatten-path.ts';
import { contourArea } from '../../../server/geometry/measure-path.ts';
import { boundsOf } from '../../../server/geometry/polygons.ts';
import { transformed } from '../../../server/geometry/transform-path.ts';
import { analyse } from '../../../server/analyse.ts';
import type { FileRead } from '../../../server/design/files/source-file.ts';

const file = (inner: string, head = 'width="400" height="300"'): string =>
  `<svg xmlns="http://www.w3.org/2000/svg" ${head}>${inner}</svg>`;

function linesOf(text: string, id = 'a') {
  const read = readSvgElement(text, id);
  if (read.kind === 'trouble') throw new Error(read.trouble.message);
  return read.lines;
}

const boxOf = (text: string, id = 'a') => boundsOf(linesOf(text, id).flatMap(flattenContour));
const areaOf = (text: string): number =>
  Math.abs(linesOf(text).reduce((sum, contour) => sum + contourArea(contour), 0));
const pixel = 25.4 / 96;

describe('drawn as resvg draws it:', () => {
  test.each([
    ['a path', '<path id="a" d="M20 30c10-20 50-20 60 0s20 60-60 40z"/>'],
    ['a rectangle', '<rect id="a" x="20" y="30" width="100" height="50"/>'],
    ['a rounded rectangle', '<rect id="a" x="20" y="30" width="100" height="50" rx="12" ry="200"/>'],
    ['a circle', '<circle id="a" cx="100" cy="90" r="40"/>'],
    ['an ellipse, turned', '<ellipse id="a" cx="100" cy="90" rx="60" ry="20" transform="rotate(30 100 90)"/>'],
    ['a polygon', '<polygon id="a" points="20,30 120,40 60,100"/>'],
    [
      'nested groups',
      '<g transform="translate(40 20) scale(2 1)"><g transform="rotate(20)"><rect id="a" width="50" height="30"/></g></g>',
    ],
    ['a skewed circle', '<g transform="skewX(25)"><circle id="a" cx="60" cy="90" r="40"/></g>'],
    ['a matrix', '<path id="a" transform="matrix(.8 .3 -.2 1.1 30 12)" d="M10 10A40 25 10 1 0 80 60z"/>'],
    [
      'two transforms in one',
      '<rect id="a" transform="translate(60,60) rotate(45), scale(.5)" width="100" height="60"/>',
    ],
    [
      'a nested drawing',
      '<svg x="50" y="40" width="120" height="90" viewBox="10 10 60 30"><rect id="a" x="10" y="10" width="60" height="30"/></svg>',
    ],
  ])('%s', (_, inner) => {
    const text = file(inner);
    const drawn = new Resvg(text).getBBox();
    if (!drawn) throw new Error('resvg draws nothing');
    const box = boxOf(text);
    expect(box.left / pixel).toBeCloseTo(drawn.x, 1);
    expect(-box.top / pixel).toBeCloseTo(drawn.y, 1);
    expect((box.right - box.left) / pixel).toBeCloseTo(drawn.width, 1);
    expect((box.top - box.bottom) / pixel).toBeCloseTo(drawn.height, 1);
  });
});

describe('sizes', () => {
  const square = '<rect id="a" width="100" height="100"/>';

  test('a px is 1/96 in', () => {
    expect(boxOf(file(square))).toMatchObject({ left: 0, right: expect.closeTo(26.458333, 6) as number, top: 0 });
  });

  test.each([
    ['width="200mm" height="200mm" viewBox="0 0 200 200"', 100],
    ['width="20cm" viewBox="0 0 400 400"', 50],
    ['width="4in" height="4in" viewBox="0 0 200 200"', 50.8],
    ['width="144pt" height="144pt" viewBox="0 0 200 200"', 25.4],
    ['viewBox="0 0 200 200"', 100 * pixel],
    ['width="100%" height="100%" viewBox="0 0 200 200"', 100 * pixel],
    ['width="200mm" height="400mm" viewBox="0 0 100 100"', 200],
  ])('%s: 100 units are %d mm', (head, size) => {
    const { left, right } = boxOf(file(square, head));
    expect(right - left).toBeCloseTo(size, 6);
  });

  test('a viewBox of another form is fitted in the middle, unless it says otherwise', () => {
    const tall = (fit: string): string => `width="200mm" height="400mm" viewBox="0 0 100 100" ${fit}`;
    expect(boxOf(file(square, tall('')))).toMatchObject({ top: expect.closeTo(-100, 6) as number });
    const top = boxOf(file(square, tall('preserveAspectRatio="xMidYMin meet"'))).top;
    expect(top).toBeCloseTo(0, 6);
    const stretched = boxOf(file(square, tall('preserveAspectRatio="none"')));
    expect(stretched.top - stretched.bottom).toBeCloseTo(400, 6);
  });

  test('the corner of the viewBox is the corner of the drawing', () => {
    const { left, top } = boxOf(
      file('<rect id="a" x="30" y="40" width="9" height="9"/>', 'width="90mm" viewBox="30 40 90 90"'),
    );
    expect([left, Math.abs(top)]).toEqual([expect.closeTo(0, 9), expect.closeTo(0, 9)]);
  });

  test('lengths with units of their own', () => {
    expect(readSvgLength(' 25.4mm ')).toBeCloseTo(96, 9);
    expect(readSvgLength('1e1Q')).toBeCloseTo(2.5 * (96 / 25.4), 9);
    expect([readSvgLength('50%'), readSvgLength('2em'), readSvgLength(null), readSvgLength('ten')]).toEqual([
      null,
      null,
      null,
      null,
    ]);
  });
});

describe('transforms', () => {
  test('areas change by their determinant, curves stay curves', () => {
    const text = file('<g transform="matrix(2 .5 -.3 1.5 7 9)"><circle id="a" r="40"/></g>');
    expect(areaOf(text)).toBeCloseTo(Math.PI * 1600 * (2 * 1.5 + 0.3 * 0.5) * pixel ** 2, 6);
    expect(
      linesOf(text)
        .flat()
        .map(({ kind }) => kind),
    ).toEqual(['arc', 'arc']);
  });

  test('the last of a list is applied first', () => {
    const transform = readSvgTransform('translate(10) scale(2)');
    expect(transform && transformed({ x: 1, y: 1 }, transform)).toEqual({ x: 12, y: 2 });
  });

  test.each(['turn(3)', 'rotate(1 2)', 'matrix(1 2 3)', 'scale(a)', 'scale(1', 'translate(1) junk'])(
    '%s can’t be read',
    (text) => {
      expect(readSvgTransform(text)).toBeNull();
    },
  );
});

describe('a group', () => {
  test('gives all that is drawn in it', () => {
    const text = file(
      '<g id="a"><rect width="90" height="90"/><g><circle cx="40" cy="40" r="9"/></g><text>x</text></g>',
    );
    expect(linesOf(text)).toHaveLength(2);
  });
});

describe('in a design', () => {
  const drawing = file(
    '<g id="a"><rect width="90" height="60"/><circle cx="40" cy="30" r="9"/></g>',
    'width="200mm" viewBox="0 0 200 200"',
  );
  const read = (path: string): FileRead =>
    path === 'parts/leaf.svg' ? { kind: 'text', text: drawing } : { kind: 'missing' };
  const text = 'outline blade { path from "leaf.svg" id "a" }';

  test('a path is followed from the folder of the file; a hole is a hole', () => {
    const { design, problems } = analyse(text, { path: 'parts/leaf.lap', read });
    expect(problems).toEqual([]);
    const areas = design.outlines[0]?.contours.map(contourArea) ?? [];
    expect(areas).toEqual([expect.closeTo(5400, 6), expect.closeTo(-Math.PI * 81, 6)]);
  });

  test('a change of the drawing is a change of the revision', () => {
    const [one, two] = [drawing, drawing.replace('r="9"', 'r="8"')].map(
      (svg) => analyse(text, { path: 'a.lap', read: () => ({ kind: 'text', text: svg }) }).revision,
    );
    expect(one).not.toBe(two);
  });

  test('a text that stands nowhere has no drawings beside it', () => {
    expect(analyse(text).problems.map(({ code }) => code)).toEqual(['LAP0205']);
  });
});
