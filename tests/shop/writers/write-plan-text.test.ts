/** The plan as text on every sample: what makes a sheet trusted, and what puts it in the bin. */
import { readdirSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { beforeAll, describe, expect, test } from 'vitest';
import { analyse } from '../../../server/analyse.ts';
import type { ShopPlan } from '../../../server/shop/shop-plan.ts';
import { writePlanText } from '../../../server/shop/writers/write-plan-text.ts';
import { usualEffort } from '../../../server/machine/search-effort.ts';
import { planPacked } from '../../../server/plan-design.ts';
import { planAtSight } from '../../plan-at-sight.ts';

const folder = fileURLToPath(new URL('../../../samples/', import.meta.url));
const samples = readdirSync(folder).filter((file) => file.endsWith('.lap'));

describe.each(samples)('%s', (file) => {
  let plan: ShopPlan;
  let text = '';
  beforeAll(async () => {
    const analysis = analyse(readFileSync(folder + file, 'utf8'));
    plan = (await planPacked(analysis, file, usualEffort())).plan;
    text = writePlanText(plan);
  });

  test('carries file, revision, what it assumes, one thing to check in a minute, and that it is not tested', () => {
    expect(text).toContain(`from ${file}, text ${plan.revision}`);
    for (const { tenSidesMm } of plan.grids)
      expect(text).toContain(`ten sides along a strip measure ${tenSidesMm.toFixed(1)}`);
    expect(text).toMatch(/bench \S+: kerf \d/);
    expect(text).toContain('Not tested in wood');
  });

  test('is two parts: infill only in the second, every step on its own', () => {
    const [first = '', second = ''] = text.split('PART 2: AFTER MEASURING');
    expect(first).toContain('PART 1: TO THE LATTICE');
    expect(first).not.toContain('Infill pieces');
    for (const { order, title, sheet } of plan.steps)
      expect(sheet === 'to the lattice' ? first : second).toContain(`\n${order}. ${title}`);
  });

  test('has no figure finer than a hundredth of a millimetre', () => {
    expect(text).not.toMatch(/\d\.\d{3,}/);
  });

  test('gives every gate a box, every caution its step, every stick its cuts', () => {
    for (const { gate } of plan.steps) if (gate !== null) expect(text).toContain(`GATE [ ] ${gate}`);
    for (const { text: caution } of plan.cautions) expect(text).toContain(`Take care: ${caution}`);
    const boxes = text.match(/^ +\[ \] \d+ × \d/gm) ?? [];
    expect(boxes.length).toBe(plan.stock.reduce((sum, { sticks }) => sum + sticks.length, 0));
  });

  test('the same marks on two prints', () => {
    const again = analyse(readFileSync(folder + file, 'utf8'));
    const marks = (of: ShopPlan): string[] => [...of.strips, ...of.pieces].map(({ mark }) => mark);
    expect(marks(planAtSight(again, file))).toEqual(marks(plan));
  });
});

test('keys are given to 0.05 mm, everything else to 0.1', () => {
  const plan = planAtSight(analyse(readFileSync(`${folder}ginkgo.lap`, 'utf8')), 'ginkgo.lap');
  const [before = '', keys = ''] = writePlanText(plan).split(/^\d+\. cut keys.*\n/m);
  const [own = ''] = keys.split('fill the lattice');
  expect(own.match(/\d+\.\d+/g)?.every((figure) => /\.\d[05]$/.test(figure))).toBe(true);
  expect(before).toMatch(/bevel jig +60° +\d+\.\d +\d+\.\d /);
});
