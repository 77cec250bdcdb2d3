/** The rulers of the preview: what a measurement holds on to, how it reads, and the bar in the corner. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { measuredText, measuringNothing, pointedAt, pointSet } from '../../client/preview/webview/measure.ts';
import { scaleBar } from '../../client/preview/webview/scale-bar.ts';
import { snapAt } from '../../client/preview/webview/snap.ts';
import { snapSign } from '../../client/preview/webview/snap-signs.ts';
import type { DrawingLayer } from '../../server/drawing/drawing.ts';

const range = { start: 0, end: 1 };

/** Two strips 100 long and 4 wide that cross in (50, 0) at `angle` degrees. */
function crossed(angle: number): { layers: DrawingLayer[] } {
  const rings = [[0, -2, 100, -2, 100, 2, 0, 2]];
  const turn = (angle * Math.PI) / 180;
  const strip = (name: string, placements: number[]): DrawingLayer => ({
    ...{ name, kind: 'strip', level: 0, wood: null },
    kinds: [{ mark: name, label: name, rings, placements, range }],
  });
  return {
    layers: [strip('low', [0, 0, 0]), strip('high', [50 - 50 * Math.cos(turn), -50 * Math.sin(turn), angle])],
  };
}

describe('a measurement holds on to', () => {
  it('the node where two strips cross, at any angle', () => {
    fc.assert(
      fc.property(fc.integer({ min: 10, max: 170 }), fc.double({ min: -2, max: 2, noNaN: true }), (angle, off) => {
        const snap = snapAt(crossed(angle), new Set(), { x: 50 + off, y: off / 2 }, 4);
        expect(snap?.what).toBe('node');
        expect(snap?.at.x).toBeCloseTo(50, 6);
        expect(snap?.at.y).toBeCloseTo(0, 6);
      }),
    );
  });

  it('a corner where no node is near, and nothing where nothing is near', () => {
    expect(snapAt(crossed(90), new Set(), { x: 99, y: 3 }, 3)).toEqual({ at: { x: 100, y: 2 }, what: 'end' });
    expect(snapAt(crossed(90), new Set(), { x: 75, y: 30 }, 3)).toBeNull();
  });

  it('nothing of a layer that is switched off', () => {
    expect(snapAt(crossed(90), new Set(['high']), { x: 50, y: 0 }, 1)).toBeNull();
  });
});

describe('a measurement', () => {
  const at = (x: number, y: number) => ({ x, y });

  it('goes from the first point to the second, and a third begins anew', () => {
    const first = pointSet(pointedAt(measuringNothing, at(0, 0), null));
    const second = pointSet(pointedAt(first, at(30, 40), null));
    expect(measuredText(second, 'mm')).toBe('Distance 50.0 mm, across 30.0, up 40.0');
    const third = pointSet(pointedAt(second, at(5, 5), null));
    expect(third).toMatchObject({ from: at(5, 5), to: null });
  });

  it('reads in inches where the file does', () => {
    const first = pointSet(pointedAt(measuringNothing, at(0, 0), null));
    const second = pointSet(pointedAt(first, at(25.4 * 1.5, 0), null));
    expect(measuredText(second, 'in')).toBe('Distance 1.500 in, across 1.500, up 0.000');
  });

  it('takes the place it is held at', () => {
    const held = pointedAt(measuringNothing, at(1, 1), { at: at(2, 2), what: 'node' });
    expect(pointSet(held).from).toEqual(at(2, 2));
  });
});

describe('the scale bar', () => {
  it.each([
    ['mm', 3.7795, '20 mm', 75.59],
    ['mm', 0.5, '200 mm', 100],
    ['in', 3.7795, '1 in', 96],
    ['in', 40, '1/8 in', 127],
  ] as const)('in %s at %d pixels a millimetre is %s', (units, scale, words, pixels) => {
    const bar = scaleBar(units, scale, 140);
    expect(bar.words).toBe(words);
    expect(bar.pixels).toBeCloseTo(pixels, 1);
  });

  it('is never longer than its room, nor much shorter', () => {
    fc.assert(
      fc.property(
        fc.constantFrom('mm' as const, 'in' as const),
        fc.double({ min: 0.04, max: 150, noNaN: true }),
        (units, scale) => {
          const { pixels } = scaleBar(units, scale, 140);
          expect(pixels).toBeLessThanOrEqual(140.001);
          expect(pixels).toBeGreaterThan(140 / 2.6);
        },
      ),
    );
  });
});

describe('the sign at the pointer', () => {
  const at = { x: 100, y: 50 };

  it('is a lap where strips cross: the edges of one run through, those of the other stop at them', () => {
    const lines = snapSign('node', at);
    const level = lines.filter(([from, to]) => from?.y === to?.y);
    const upright = lines.filter(([from, to]) => from?.x === to?.x);
    expect([level.length, upright.length]).toEqual([2, 4]);
    const edges = level.map(([from]) => from?.y ?? 0);
    for (const line of upright) {
      const heights = line.map(({ y }) => y);
      expect(Math.max(...heights) <= Math.min(...edges) || Math.min(...heights) >= Math.max(...edges)).toBe(true);
    }
  });

  it('is a knife line through an end', () => {
    const [[from, to] = []] = snapSign('end', at);
    expect([from?.x, to?.x]).toEqual([100, 100]);
    expect(((from?.y ?? 0) + (to?.y ?? 0)) / 2).toBe(50);
  });
});
