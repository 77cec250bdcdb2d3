/** The sticks of every sample, as its plan lists them: sound, complete, and proven or with their gap stated. */
import { readdirSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { beforeAll, describe, expect, test } from 'vitest';
import { analyse } from '../../server/analyse.ts';
import { arithmeticTolerance } from '../../server/geometry/tolerance.ts';
import type { ShopPlan } from '../../server/shop/shop-plan.ts';
import { writePlanText } from '../../server/shop/writers/write-plan-text.ts';
import { usualEffort } from '../../server/machine/search-effort.ts';
import { planDesign } from '../../server/plan-design.ts';

const folder = fileURLToPath(new URL('../../samples/', import.meta.url));
const files = readdirSync(folder).filter((file) => file.endsWith('.lap'));
const sum = (values: readonly number[]): number => values.reduce((total, value) => total + value, 0);

/** What the plan says is made of each mark, wherever it says so. */
function wanted(plan: ShopPlan): Map<string, number> {
  const totals = new Map<string, number>();
  for (const { mark, total } of [...plan.strips, ...plan.pieces]) totals.set(mark, total);
  for (const { laminations, quantity } of plan.bands)
    for (const { mark } of laminations.flatMap(({ pieces }) => pieces)) totals.set(mark, quantity);
  for (const { members, groovePieces } of plan.frames)
    for (const { mark, make } of [...members, ...groovePieces]) totals.set(mark, (totals.get(mark) ?? 0) + make);
  return totals;
}

describe.each(files)('%s', (file) => {
  let plan: ShopPlan;
  beforeAll(async () => {
    ({ plan } = await planDesign(analyse(readFileSync(folder + file, 'utf8')), file, usualEffort()));
  }, 120_000);

  test('no stick is over-filled', () => {
    for (const { sticks, kerfMm, endTrimMm } of plan.stock)
      for (const { lengthMm, cuts, offcutMm } of sticks) {
        const pieces = sum(cuts.map(({ n }) => n));
        const used = sum(cuts.map(({ n, lengthMm: length }) => n * length)) + (pieces - 1) * kerfMm;
        expect(used).toBeLessThanOrEqual(lengthMm - 2 * endTrimMm + arithmeticTolerance);
        expect(offcutMm).toBeGreaterThanOrEqual(-arithmeticTolerance);
      }
  });

  test('every piece that is made is cut exactly as often, and nothing else', () => {
    const cut = new Map<string, number>();
    for (const { sticks } of plan.stock)
      for (const { cuts, count } of sticks)
        for (const { mark, n } of cuts) cut.set(mark, (cut.get(mark) ?? 0) + n * count);
    expect([...cut].sort()).toEqual([...wanted(plan)].sort());
  });

  test('the cutting of each stock is proven, or its gap is said', () => {
    const text = writePlanText(plan);
    for (const { stock, value, bound, proven } of plan.stock) {
      expect(proven).toBe(value <= bound + arithmeticTolerance);
      if (!proven) expect(text).toMatch(new RegExp(`${stock}.*at least`));
    }
  });
});
