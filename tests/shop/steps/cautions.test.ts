/** A caution stands with every step that can hurt, and with no step that a plan does not have. */
import { readdirSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { expect, test } from 'vitest';
import { analyse } from '../../../server/analyse.ts';
import { stepNames } from '../../../server/design/names/step-names.ts';
import { unitsOfStep } from '../../../server/design/names/step-units.ts';
import { jobStep } from '../../../server/shop/steps/job-steps.ts';
import type { ShopPlan } from '../../../server/shop/shop-plan.ts';
import { planAtSight } from '../../plan-at-sight.ts';

const folder = fileURLToPath(new URL('../../../samples/', import.meta.url));
const planOf = (text: string): ShopPlan => planAtSight(analyse(text), 'design.lap');

test('no blade, heat, dust, resin or height in a step without a caution (common practice)', () => {
  expect(stepNames.filter((title) => jobStep(title).caution === null)).toEqual([
    'assemble',
    'measure',
    'fill the lattice',
    'register templates',
    'fill the bags',
    'pack',
  ]);
});

test('a sawn panel so small that no strip is in it is not sawn, and warns of no saw', () => {
  const { steps, cautions } = planOf(`strip ash { section face 3 depth 10  lengths 900 }
grid mesh { square  pitch 40  of ash }
outline dot { circle radius 9 }
panel coaster { grid mesh  centred cell  shape dot  edge sawn }
panel tray { grid mesh  shape 3 x 2 cells  edge framed }`);
  expect(steps.map(({ title }) => title)).not.toContain('saw outlines');
  expect(cautions.map(({ step }) => step)).toEqual(['mill strips', 'notch strips', 'cut to length', 'frame']);
});

test.each(readdirSync(folder).filter((file) => file.endsWith('.lap')))(
  '%s: the cautions are those of its steps',
  (file) => {
    const { steps, cautions } = planOf(readFileSync(folder + file, 'utf8'));
    const ofSteps = steps.filter(({ caution }) => caution !== null);
    expect(cautions).toEqual(ofSteps.map(({ title, caution }) => ({ step: title, text: caution })));
  },
);

test('a step counts every unit that its minutes may be counted by, and no other', () => {
  const counted = ['piece', 'strip', 'cell', 'mix'] as const;
  for (const title of stepNames) {
    const { counts } = jobStep(title);
    expect(
      counted.filter((unit) => counts[unit]),
      title,
    ).toEqual(counted.filter((unit) => unitsOfStep(title).includes(unit)));
    // what is cut from sticks is counted by those
    if (counts.metre) expect(unitsOfStep(title), title).toContain('metre');
    else expect(unitsOfStep(title).includes('metre'), title).toBe(jobStep(title).cuts !== undefined);
  }
});
