/** The built-in woods against each other: the tables must agree by the handbook's own equations. */
import { describe, expect, test } from 'vitest';
import { coldBendingLimit, outerStrain } from '../../../server/shop/wood/bending.ts';
import { densityAt } from '../../../server/shop/wood/density.ts';
import { figuresOf, isLessCertain, saturationOf, type Wood } from '../../../server/shop/wood/wood.ts';
import { builtInWoods } from '../../../server/shop/wood/wood-table.ts';

const wood = (name: string): Wood => {
  const found = builtInWoods.get(name);
  if (!found) throw new Error(`no wood ${name}`);
  return found;
};
const names = [...builtInWoods.keys()];

/** Wood Handbook GTR-190, Table 5-3a's specific gravity × 1120, kg/m³. */
const densities = {
  basswood: 414,
  western_redcedar: 358,
  yellow_cedar: 493,
  port_orford_cedar: 482,
  sitka_spruce: 448,
  eastern_white_pine: 392,
  yellow_poplar: 470,
  walnut: 616,
  cherry: 560,
  sugar_maple: 706,
  white_oak: 762,
  white_ash: 672,
  paper_birch: 616,
  yellow_birch: 694,
  old_growth_redwood: 448,
  young_growth_redwood: 392,
  northern_white_cedar: 347,
  northern_red_oak: 706,
};

test.each(Object.entries(densities))('%s weighs %d kg/m³ at 12 %', (name, density) => {
  expect(Math.round(densityAt(wood(name), 12))).toBe(density);
});

/** R/t and strain at failure in percent, from t·E / (2·MOR) with Table 5-3a. */
const bending: [string, number, number][] = [
  ['walnut', 57.4, 0.871],
  ['sugar_maple', 57.8, 0.865],
  ['white_ash', 58.3, 0.858],
  ['white_oak', 58.6, 0.854],
  ['hinoki', 60.0, 0.833],
  ['cherry', 60.6, 0.825],
  ['yellow_birch', 61.0, 0.82],
  ['yellow_cedar', 63.6, 0.786],
  ['paper_birch', 64.7, 0.773],
  ['port_orford_cedar', 66.5, 0.752],
  ['old_growth_redwood', 66.7, 0.75],
  ['young_growth_redwood', 70.4, 0.711],
  ['eastern_white_pine', 72.0, 0.694],
  ['western_redcedar', 74.5, 0.671],
  ['sitka_spruce', 77.1, 0.648],
  ['yellow_poplar', 77.9, 0.642],
  ['basswood', 84.2, 0.594],
];

test.each(bending)('%s bends cold to %d times its thickness, %d % at the outside', (name, ratio, strain) => {
  const limit = coldBendingLimit(wood(name), 1);
  expect(limit).toBeCloseTo(ratio, 1);
  expect(100 * outerStrain(1, limit)).toBeCloseTo(strain, 3);
});

describe('every wood', () => {
  test('is listed under its own name, in words joined by underscores', () => {
    for (const [name, each] of builtInWoods) {
      expect(each.name).toBe(name);
      expect(name).toMatch(/^[a-z]+(_[a-z]+)*$/);
    }
  });

  test.each(names)('%s names a source beside every figure', (name) => {
    for (const { value, source } of figuresOf(wood(name))) {
      expect(value).toBeGreaterThan(0);
      expect(source.title).not.toBe('');
    }
  });

  /** C = 1 / (100·F/S − F + 10): eq. 13-3 at 10 % moisture. The oaks' coefficients are of groups of species. */
  test.each(names.filter((name) => !name.endsWith('oak')))(
    '%s: Table 13-5 follows from Table 4-3 by eq. 13-3',
    (name) => {
      const { shrinkage, change } = wood(name);
      const saturation = saturationOf(wood(name));
      for (const way of ['radial', 'tangential'] as const) {
        const coefficient = 1 / ((100 * saturation) / shrinkage[way].value - saturation + 10);
        expect(Math.abs(coefficient - change[way].value)).toBeLessThan(0.000_016);
      }
    },
  );

  test.each(names)('%s moves more along the rings than across them', (name) => {
    const { shrinkage, change } = wood(name);
    expect(shrinkage.tangential.value).toBeGreaterThan(shrinkage.radial.value);
    expect(change.tangential.value).toBeGreaterThan(change.radial.value);
  });
});

test('hinoki alone rests on remembered figures', () => {
  expect([...builtInWoods.values()].filter(isLessCertain).map(({ name }) => name)).toEqual(['hinoki']);
});

test('ash, oak and walnut have pores to seal before colour', () => {
  expect([...builtInWoods.values()].filter(({ porous }) => porous).map(({ name }) => name)).toEqual([
    'walnut',
    'white_oak',
    'northern_red_oak',
    'white_ash',
  ]);
});
