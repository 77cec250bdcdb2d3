import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { edgeView, type Member } from '../../server/drawing/member-views.ts';
import { svgItems } from '../../server/drawing/page/page-svg.ts';
import { brokenAxis, onPage } from '../../server/drawing/sheet/broken-axis.ts';
import { spreadApart } from '../../server/drawing/sheet/dimensions.ts';
import { readPaths, ringArea } from './read-svg.ts';

describe('a broken axis', () => {
  const lengths = fc.double({ min: 5, max: 3000, noNaN: true });
  const scales = fc.constantFrom(1, 2, 5);

  test('keeps its parts at their scale, both ends shown, within its room', () => {
    fc.assert(
      fc.property(lengths, scales, (length, scale) => {
        const room = 200;
        const axis = brokenAxis(length, scale, 10, room, [
          [length / 4, length / 4 + 6],
          [length / 2, length / 2 + 6],
        ]);
        expect(axis.width).toBeLessThanOrEqual(room + 0.001);
        expect(onPage(axis, 0)).toBe(10);
        expect(onPage(axis, length)).toBeCloseTo(10 + axis.width, 6);
        for (const { from, to, left } of axis.parts) {
          expect(((onPage(axis, to) ?? 0) - left) / scale).toBeCloseTo(to - from, 6);
        }
      }),
    );
  });

  test('is broken beside a notch, never through it', () => {
    const { parts } = brokenAxis(552, 1, 0, 247, [
      [117, 123],
      [430, 434],
    ]);
    expect(parts.map(({ from, to }) => [from, to])).toEqual([
      [0, 117],
      [434, 552],
    ]);
  });

  test('leaves out nothing that fits', () => {
    expect(brokenAxis(100, 2, 0, 200, []).parts).toEqual([{ from: 0, to: 100, left: 0 }]);
  });
});

test('figures are led apart in their order and no further than needed', () => {
  expect(spreadApart([0, 10, 20], 4)).toEqual([0, 10, 20]);
  expect(spreadApart([0, 1, 20], 4)).toEqual([-1.5, 2.5, 20]);
  fc.assert(
    fc.property(fc.array(fc.double({ min: 0, max: 100, noNaN: true }), { maxLength: 12 }), (places) => {
      const spread = spreadApart(
        places.sort((a, b) => a - b),
        4,
      );
      spread.slice(1).forEach((place, index) => expect(place - (spread[index] ?? 0)).toBeGreaterThan(3.999));
    }),
  );
});

test('seen from its edge, a strip lacks exactly the wood of its notches', () => {
  const run = { step: 0, count: 1, angle: 90 };
  const member: Member = {
    outline: [
      { x: 0, y: -1.5 },
      { x: 100, y: -1.5 },
      { x: 100, y: 1.5 },
      { x: 0, y: 1.5 },
    ],
    length: 100,
    face: 3,
    depth: 10,
    notches: [
      { ...run, first: 20, width: 4, depth: 5, from: 'above' },
      { ...run, first: 60, width: 3, depth: 2, from: 'below' },
    ],
  };
  const axis = brokenAxis(member.length, 1, 0, 500, []);
  const [wood] = readPaths(svgItems(edgeView(member, axis, 0)).join(''));
  const area = Math.abs(ringArea(wood?.rings[0] ?? []));
  expect(area).toBeCloseTo(100 * 10 - 4 * 5 - 3 * 2, 3);
});
