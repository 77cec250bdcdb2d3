/**
 * Folded pieces at the bench: counted, scored and sawn as one length. Three-way of side 40 and face 3: an arm of the hemp
 * is 40 / √3 − 3 = 20.094 long, two of the three in every triangle fold. Figures by hand.
 */
import { describe, expect, test } from 'vitest';
import { analyse } from '../../server/analyse.ts';
import type { ShopPlan } from '../../server/shop/shop-plan.ts';
import { schemaFaults } from './plan-schema.ts';
import { planAtSight } from '../plan-at-sight.ts';

const shop = `
strip ash { section face 3 depth 10  lengths 900 }
bench shop { bevels 30, 60  kerf 3  trim 2 }
grid mesh { three_way  side 40  of ash }
motif hemp for triangle {
  node hub at incentre
  piece arm from corner to hub, every corner
  hinge arm, arm
}
`;
const planOf = (text: string): ShopPlan => {
  const analysis = analyse(shop + text);
  expect(analysis.problems.filter(({ severity }) => severity === 'error')).toEqual([]);
  return planAtSight(analysis, 'fold.lap');
};
const arm = 40 / Math.sqrt(3) - 3;

describe('a hexagon of two cells, 24 triangles', () => {
  const plan = planOf('panel leaf { grid mesh  shape hexagon 2 cells  fill triangle with hemp of ash }');
  const stepNamed = (title: string) => plan.steps.find((step) => step.title === title);

  test('has 24 lengths, scored where the longer half ends and the trim of its rough piece', () => {
    expect(schemaFaults(plan)).toEqual([]);
    const scored = plan.settings.filter(({ tool }) => tool === 'scoring knife');
    expect(scored.map(({ step, angle, pieces, marks }) => [step, angle, pieces, marks])).toEqual([
      ['cut infill', 90, 24, ['A']],
    ]);
    expect(scored[0]?.stopMm).toBeCloseTo(arm + 2, 3);
  });

  test('is told so: sawn to both halves and twice the trim, folded when it goes in', () => {
    const cut = stepNamed('cut infill')?.tasks.find((task) => task.startsWith('A+A'));
    expect(cut).toContain(`saw 24 lengths of ${(2 * arm + 4).toFixed(1)}`);
    expect(cut).toContain(`${(arm + 2).toFixed(1)} from one end`);
    expect(stepNamed('fill the lattice')?.tasks).toEqual([
      'Fill each hemp: arm. Fold arm with arm and set the two in as one.',
    ]);
  });
});

describe('panels out of a blank', () => {
  const nested = (count: number) => {
    const analysis = analyse(`${shop}
outline plate { rectangle 118 x 136 }
panel tile { grid mesh  centred node  shape plate  edge sawn  fill triangle with hemp of ash  copies ${count} }
blank cast { grid mesh  shape ${count * 160} x 170  take tile ${count} }`);
    expect(analysis.problems).toEqual([]);
    const plan = planAtSight(analysis, 'fold.lap');
    const laid = analysis.blanks.flatMap((each) => each.laid);
    const cutOuts = analysis.blanks.flatMap((each) => each.cutOuts.map((cutOut) => cutOut.laid));
    return { folded: plan.hinges.reduce((all, { make }) => all + make, 0), laid, cutOuts };
  };

  test('of one alone are folded as a panel sawn to its saw line is', () => {
    const { folded, cutOuts } = nested(1);
    expect(folded).toBe(cutOuts[0]?.hinges.reduce((all, { count }) => all + count, 0));
    expect(folded).toBeGreaterThan(0);
  });

  test('of several share: one fold in every triangle with three arms, none in one with a single arm', () => {
    const { folded, laid } = nested(3);
    // the blunt end of an arm, 60° to either side of its axis, lies at the hub; hubs are 40 / √3 apart at least
    const armsAt = new Map<string, number>();
    for (const { pieces } of laid)
      for (const { shape, placements } of pieces)
        for (const { at, turn } of placements()) {
          const reach = shape.ends[0].bevels?.[0] === 60 ? 0 : shape.length;
          const heading = (turn * Math.PI) / 180;
          const hub = [at.x + reach * Math.cos(heading), at.y + reach * Math.sin(heading)];
          const key = hub.map((place) => Math.round(place + 0.137)).join();
          armsAt.set(key, (armsAt.get(key) ?? 0) + 1);
        }
    const cells = [...armsAt.values()];
    expect(Math.max(...cells)).toBe(3);
    expect(folded).toBeGreaterThanOrEqual(cells.filter((arms) => arms === 3).length);
    expect(folded).toBeLessThanOrEqual(cells.filter((arms) => arms >= 2).length);
  });
});
