/** Zoom and pan of the preview: what lies under the pointer stays there, and nothing gets lost. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { fitted, onPage, onPanel, panned, realSize, zoomed } from '../../client/preview/webview/camera.ts';
import { readPageState } from '../../client/preview/webview-messages.ts';

const size = { width: 640, height: 480 };
const number = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const camera = fc.record({ scale: number(0.05, 150), x: number(-2000, 2000), y: number(-2000, 2000) });
const place = fc.record({ x: number(0, size.width), y: number(0, size.height) });

describe('the camera', () => {
  it('shows the whole drawing in the middle when fitted', () => {
    const bounds = { left: -10, bottom: -40, right: 190, top: 60 };
    const whole = fitted(bounds, size);
    expect([whole.x, whole.y]).toEqual([90, 10]);
    for (const corner of [
      { x: bounds.left, y: bounds.bottom },
      { x: bounds.right, y: bounds.top },
    ]) {
      const { x, y } = onPage(whole, corner, size);
      expect(x).toBeGreaterThan(0);
      expect(x).toBeLessThan(size.width);
      expect(y).toBeGreaterThan(0);
      expect(y).toBeLessThan(size.height);
    }
  });

  it('has y up: the top of the panel is nearer to the top of the page', () => {
    const whole = fitted({ left: 0, bottom: 0, right: 100, top: 100 }, size);
    expect(onPage(whole, { x: 50, y: 100 }, size).y).toBeLessThan(onPage(whole, { x: 50, y: 0 }, size).y);
  });

  it('keeps what lies under the pointer there while zooming', () => {
    fc.assert(
      fc.property(camera, place, number(0.2, 5), (before, at, factor) => {
        const fixed = onPanel(before, at, size);
        const after = onPage(zoomed(before, factor, at, size), fixed, size);
        expect(after.x).toBeCloseTo(at.x, 3);
        expect(after.y).toBeCloseTo(at.y, 3);
      }),
    );
  });

  it('moves the drawing with the pointer while panning', () => {
    fc.assert(
      fc.property(camera, place, number(-300, 300), number(-300, 300), (before, at, dx, dy) => {
        const grasped = onPanel(before, at, size);
        const after = onPage(panned(before, dx, dy), grasped, size);
        expect(after.x).toBeCloseTo(at.x + dx, 3);
        expect(after.y).toBeCloseTo(at.y + dy, 3);
      }),
    );
  });

  it('stays between a hundredth of real size and forty times', () => {
    const middle = { x: 320, y: 240 };
    const one = { scale: realSize, x: 0, y: 0 };
    expect(zoomed(one, 1e9, middle, size).scale).toBeCloseTo(realSize * 40, 9);
    expect(zoomed(one, 1e-9, middle, size).scale).toBeCloseTo(realSize / 100, 9);
  });
});

describe('what is kept over a reload', () => {
  const nothing = { locked: false, view: null, camera: null, selected: null, hidden: [], tabled: false };

  it('is read back as it was written', () => {
    const state = fc.record({
      uri: fc.constant('file:///a.lap'),
      locked: fc.boolean(),
      view: fc.option(fc.string()),
      camera: fc.option(camera),
      selected: fc.option(fc.string()),
      hidden: fc.array(fc.string(), { maxLength: 3 }),
      tabled: fc.boolean(),
    });
    fc.assert(
      fc.property(state, (kept) => {
        const written = JSON.parse(JSON.stringify(kept)) as unknown;
        expect(readPageState(written)).toEqual(written);
      }),
    );
  });

  it.each([
    [undefined, null],
    ['text', null],
    [{}, null],
    [
      { uri: 'a', view: 3, camera: { scale: 0, x: 1, y: 1 }, hidden: 'none', locked: 'yes' },
      { uri: 'a', ...nothing },
    ],
    [
      { uri: 'a', camera: { scale: 1, x: null, y: 1 }, hidden: [3, 'strips'] },
      { uri: 'a', ...nothing, hidden: ['strips'] },
    ],
  ])('is left aside where it is not ours: %j', (kept, read) => {
    expect(readPageState(kept)).toEqual(read);
  });
});
