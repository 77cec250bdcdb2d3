/** Cutting plans as the plan of every sample writes them. */
import { readdirSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { beforeAll, describe, expect, test } from 'vitest';
import { analyse } from '../../../server/analyse.ts';
import type { ShopPlan } from '../../../server/shop/shop-plan.ts';
import { writePlanText } from '../../../server/shop/writers/write-plan-text.ts';
import { usualEffort } from '../../../server/machine/search-effort.ts';
import { planPacked } from '../../../server/plan-design.ts';
import { schemaFaults } from '../plan-schema.ts';

const folder = fileURLToPath(new URL('../../../samples/', import.meta.url));
const samples = readdirSync(folder).filter((file) => file.endsWith('.lap'));

async function planOf(text: string): Promise<ShopPlan> {
  const analysis = analyse(text);
  return (await planPacked(analysis, 'sample.lap', usualEffort())).plan;
}

describe.each(samples)('sticks of %s', (file) => {
  let plan: ShopPlan;

  beforeAll(async () => {
    plan = await planOf(readFileSync(folder + file, 'utf8'));
  });

  test('keep to the schema', () => {
    expect(schemaFaults(plan)).toEqual([]);
  });

  test('cut every mark exactly as often as its total', () => {
    for (const { mark, stock, total } of [...plan.pieces, ...plan.strips]) {
      const sticks = plan.stock.find((each) => each.stock === stock)?.sticks ?? [];
      const cut = sticks.flatMap(({ cuts, count }) => cuts.map((each) => (each.mark === mark ? each.n * count : 0)));
      expect(cut.reduce((sum, n) => sum + n, 0)).toBe(total);
    }
  });

  test('are never over-filled, and proven or within their gap', () => {
    for (const { sticks, kerfMm, endTrimMm, proven, value, bound } of plan.stock) {
      for (const { lengthMm, cuts } of sticks) {
        const pieces = cuts.reduce((sum, { n }) => sum + n, 0);
        const used = cuts.reduce((sum, cut) => sum + cut.n * cut.lengthMm, 0) + (pieces - 1) * kerfMm + 2 * endTrimMm;
        // lengths are written to a ten-thousandth
        expect(used).toBeLessThanOrEqual(lengthMm + pieces * 0.0001);
      }
      expect(bound).toBeLessThanOrEqual(value);
      expect(proven).toBe(bound === value);
    }
  });
});

test('a piece longer than any stick is said and left out, the rest is planned', async () => {
  const plan = await planOf(`strip ash { section face 3 depth 10  lengths 150 }
grid squares { square pitch 40 of ash }
panel tray { grid squares shape 4 x 2 cells edge framed }
`);
  expect(plan.stock[0]?.problems.join()).toContain('is longer than any stick holds (148 mm) and is left out');
  expect(plan.stock[0]?.sticksUsed).toBe(3);
  expect(writePlanText(plan)).toContain('add a longer stick');
});
