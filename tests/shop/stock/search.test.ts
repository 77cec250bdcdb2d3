/** How the search behaves to those who wait for it: time, cancel, progress, the same answer again. */
import { expect, test } from 'vitest';
import type { SearchProgress } from '../../../server/shop/stock/watch.ts';
import { ask, expectSound, requestOf } from './ask.ts';

/** Lengths with no pattern to them, each to the ten-thousandth. */
const manyLengths = (count: number): [number, number][] =>
  Array.from({ length: count }, (_, index) => [100 + ((index * 7919.1237) % 500), 1 + (index % 3)]);

test('a thousand lengths: the best plan so far when the time is up, sound and bounded', async () => {
  const request = requestOf(2400, manyLengths(1000), { kerfMm: 1.1 });
  const { plan, interrupted } = await ask(request, { seconds: 1 });
  if (!plan) throw new Error('no plan');
  expectSound(request, plan);
  if (!plan.proven) expect(interrupted).toBe('time');
  expect(plan.bound).toBeGreaterThan(0.9 * plan.value);
});

test('no time at all still gives a sound plan and a bound', async () => {
  const request = requestOf(2400, manyLengths(40), { kerfMm: 1.1 });
  const { plan, interrupted } = await ask(request, { seconds: 0 });
  if (!plan) throw new Error('no plan');
  expectSound(request, plan);
  expect(interrupted).toBe('time');
  expect(plan.bound).toBeGreaterThan(0);
});

test('cancelled before it began', async () => {
  const { plan, interrupted } = await ask(requestOf(2400, manyLengths(40)), { signal: AbortSignal.abort() });
  expect(interrupted).toBe('cancelled');
  expect(plan).not.toBeNull();
});

test('cancelled on the way', async () => {
  const controller = new AbortController();
  const { plan, interrupted } = await ask(requestOf(2400, manyLengths(400), { kerfMm: 1.1 }), {
    signal: controller.signal,
    onProgress: () => controller.abort(),
  });
  expect(interrupted).toBe('cancelled');
  expect(plan).not.toBeNull();
});

test('progress never worsens', async () => {
  const told: SearchProgress[] = [];
  await ask(requestOf(1000, manyLengths(60)), { onProgress: (progress) => told.push(progress) });
  expect(told.length).toBeGreaterThan(1);
  for (const [index, { value, bound }] of told.entries()) {
    const before = told[index - 1];
    expect(value ?? Infinity).toBeLessThanOrEqual(before?.value ?? Infinity);
    expect(bound).toBeGreaterThanOrEqual(before?.bound ?? 0);
    expect(bound).toBeLessThanOrEqual(value ?? Infinity);
  }
});

test('the same request gives the same plan', async () => {
  const request = requestOf(1000, manyLengths(30), { kerfMm: 1.3 });
  expect(await ask(request)).toEqual(await ask(request));
});
