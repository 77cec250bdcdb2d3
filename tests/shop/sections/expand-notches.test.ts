import { expect, test } from 'vitest';
import { expandNotches } from '../../../server/shop/sections/expand-notches.ts';

const run = { first: 20, step: 40, count: 3, width: 3.05, angle: 60, depth: 10 / 3, from: 'below' } as const;

test('a run is written out notch by notch', () => {
  const notches = expandNotches([run]);
  expect(notches.map((notch) => notch.atMm)).toEqual([20, 60, 100]);
  expect(notches[0]).toEqual({ atMm: 20, widthMm: 3.05, runMm: 3.5218, angle: 60, depthMm: 3.3333, from: 'below' });
});

test('runs are merged in order along the strip; two cuts of one place in order of their angle', () => {
  const other = { ...run, first: 60, step: 10, count: 1, angle: 120 };
  const before = { ...run, first: 10, count: 2, angle: 30 };
  const places = expandNotches([other, run, before]).map((notch) => [notch.atMm, notch.angle]);
  expect(places).toEqual([
    [10, 30],
    [20, 60],
    [50, 30],
    [60, 60],
    [60, 120],
    [100, 60],
  ]);
});
