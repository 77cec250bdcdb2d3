/** The steps of every sample: in the job's order, each with its gate, its settings and the sheet it stands on. */
import { readdirSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { describe, expect, test } from 'vitest';
import { analyse } from '../../../server/analyse.ts';
import { jobSteps } from '../../../server/shop/steps/job-steps.ts';
import type { ShopPlan } from '../../../server/shop/shop-plan.ts';
import { planAtSight } from '../../plan-at-sight.ts';

const folder = fileURLToPath(new URL('../../../samples/', import.meta.url));
const samples = readdirSync(folder).filter((file) => file.endsWith('.lap'));
const planOf = (file: string): ShopPlan => planAtSight(analyse(readFileSync(folder + file, 'utf8')), file);

describe.each(samples)('steps of %s', (file) => {
  const { steps, settings, cautions } = planOf(file);

  test('stand in the order of the job, numbered through', () => {
    // bags are packed where the shop's part of a class ends
    const own = steps.filter(({ title }) => title !== 'fill the bags');
    const places = own.map(({ title }) => jobSteps.findIndex((step) => step.title === title));
    expect(places).toEqual([...places].sort((a, b) => a - b));
    expect(steps.map(({ order }) => order)).toEqual(steps.map((_, index) => index + 1));
  });

  test('hold every setting exactly once, in order', () => {
    expect(steps.flatMap((step) => step.settings)).toEqual(settings.map(({ order }) => order));
  });

  test('end each with a gate, packing apart, and carry every caution', () => {
    for (const { title, gate } of steps) expect(gate === null).toBe(title === 'pack');
    for (const { step, text } of cautions)
      expect(steps.find(({ title }) => title === step)?.caution ?? '').toContain(text);
  });

  test('part into two sheets where the lattice is measured', () => {
    const sheets = steps.map(({ sheet }) => sheet);
    const first = sheets.indexOf('after measuring');
    expect(steps[first - 1]?.title).toBe('measure');
    expect(sheets.slice(0, first).every((sheet) => sheet === 'to the lattice')).toBe(true);
    expect(sheets.slice(first).every((sheet) => sheet === 'after measuring')).toBe(true);
  });
});

test('only the steps a design needs: the sawn leaf is sawn, the lamp framed', () => {
  const titles = (file: string): string[] => planOf(file).steps.map(({ title }) => title);
  expect(titles('ginkgo.lap')).toContain('saw outlines');
  expect(titles('ginkgo.lap')).not.toContain('frame');
  expect(titles('lamp.lap')).toContain('frame');
  expect(titles('lamp.lap')).not.toContain('saw outlines');
});
