/** Closing and movement in the plan: no alarm for a good panel, the right words for a bad one. */
import { describe, expect, test } from 'vitest';
import { writeWords } from '../../../server/words/write-words.ts';
import type { Bench } from '../../../server/design/design-model.ts';
import { planClosing } from '../../../server/shop/sections/plan-closing.ts';
import type { PlanSetting } from '../../../server/shop/shop-plan.ts';
import { builtInWoods } from '../../../server/shop/wood/wood-table.ts';
import { movementAcross } from '../../../server/shop/wood/movement.ts';
import { benchWithErrors, gridOf, hexagonShape, panelOf, stripStock, workOf } from '../../design-builder.ts';
import { planOf, plannedOf } from '../planned.ts';

const ash = stripStock('ash', 3, { wood: 'white_ash' });
const panel = panelOf(gridOf('three_way', 40, ash, { fit: 0.05 }), hexagonShape(5));
const fitWith = (bench: Bench) => planOf([panel], { benches: [bench] }).fit;

describe('does it close', () => {
  test('nothing is said while the bench says nothing of its errors', () => {
    expect(fitWith(benchWithErrors(null, null))).toEqual([]);
  });

  test('a pin set once only scales the lattice: it closes, whatever the error, and the text says not to touch the pin', () => {
    const [entry] = fitWith(benchWithErrors(0.05, 0));
    expect(entry).toMatchObject({
      panel: 'blade',
      notches: 11,
      driftMm: 0,
      spreadMm: 0,
      fitMm: 0.05,
      verdict: 'closes',
    });
    expect(entry?.text).toContain('the last of 11 notches would lie 0.50 mm off, beyond the fit (good to 2 notches)');
    expect(entry?.text).toContain('only scales the lattice, here by 0.50 mm');
  });

  test('scatter that adds up along the pin makes it tight, never an alarm', () => {
    const [entry] = fitWith(benchWithErrors(null, 0.01));
    expect(entry?.spreadMm).toBeCloseTo(2 * 0.01 * Math.sqrt(10), 4);
    expect(entry?.verdict).toBe('tight');
    expect(fitWith({ ...benchWithErrors(null, 0.01), indexing: 'stop' })[0]?.verdict).toBe('closes');
  });

  test('settings that come back to a pitch drift apart', () => {
    const { panels } = plannedOf([panel]);
    const row = (pinPitchMm: number): PlanSetting => ({
      order: 1,
      step: 'notch strips',
      tool: 'notching saw',
      jig: null,
      angle: 60,
      stopMm: 0,
      caliperMm: null,
      flip: false,
      marks: [],
      pieces: 1,
      notching: {
        from: 'above',
        firstStopMm: 0,
        pinPitchMm,
        pinSquareMm: pinPitchMm,
        notches: 2,
        notchWidthMm: 3,
        bladeHeightMm: 5,
        passes: 1,
      },
      gate: null,
    });
    const bench = benchWithErrors(0.05, null);
    expect(planClosing(panels, [row(40), row(40), row(30)], bench)[0]?.verdict).toBe('closes');
    const [entry] = planClosing(panels, [row(40), row(30), row(40)], bench);
    expect(entry).toMatchObject({ verdict: 'apart', driftMm: 0.5 });
    expect(writeWords(entry?.text ?? '', 'mm')).toContain('will not close');
  });
});

describe('movement across the grain', () => {
  const movementOf = (made: number, hangs: number, wood = 'white_ash') => {
    const stock = { ...ash, wood };
    const moving = panelOf(gridOf('three_way', 40, stock, { fit: 0.05 }), hexagonShape(2));
    return planOf([moving], { work: workOf({ moisture: { made, hangs } }) }).movement;
  };

  /** 3 mm · 0.00274 · (8 − 12), Wood Handbook Table 13-5, white ash tangential. */
  test('of a strip’s face and depth, by the handbook', () => {
    const [face, depth] = movementOf(12, 8);
    expect(face).toMatchObject({ what: 'strip face', sizeMm: 3, direction: 'tangential', madePct: 12, hangsPct: 8 });
    expect(face?.changeMm).toBeCloseTo(3 * 0.00274 * -4, 4);
    expect(depth?.changeMm).toBeCloseTo(10 * 0.00274 * -4, 4);
    expect(face?.text).toContain('shrinks by 0.03 mm, inside the fit');
  });

  test('beyond the fit it says what happens', () => {
    expect(movementOf(12, 4)[0]?.text).toContain('crossings loosen');
    expect(movementOf(5, 14)[0]?.text).toContain('crossings press');
  });

  /** 12 % is 65 % humidity at 20 °C: Wood Handbook, Table 4-2. */
  test('tells the air that goes with a moisture', () => {
    expect(movementOf(12, 8)[0]?.text).toMatch(/12 % is air of 65 % humidity at 20 °C/);
  });

  test('is not known of a wood that nobody knows, and not asked without moistures', () => {
    expect(movementOf(12, 8, 'driftwood')[0]).toMatchObject({ changeMm: null });
    expect(planOf([panel], { work: workOf() }).movement).toEqual([]);
  });

  /** A file's own shrinkage, the table's of western redcedar: the same by equation 13-3, which rounds the coefficient. */
  test('follows the shrinkage that a file states', () => {
    const cedar = builtInWoods.get('western_redcedar');
    if (!cedar) throw new Error('no cedar');
    const stock = { ...ash, wood: 'own_cedar' };
    const range = { start: 0, end: 0 };
    const own = {
      name: 'own_cedar',
      range,
      nameRange: range,
      density: 350,
      rupture: null,
      elasticity: null,
      radialShrinkage: 0.033,
      tangentialShrinkage: 0.066,
      porous: false,
    };
    const [face] = planOf([panelOf(gridOf('three_way', 40, stock), hexagonShape(2))], {
      woods: [own],
      work: workOf({ moisture: { made: 12, hangs: 5 } }),
    }).movement;
    expect(face?.changeMm).toBeCloseTo((3 * (5 - 12)) / (3000 / 6.6 - 30 + 12), 4);
    expect(Math.sign(movementAcross(cedar, 'tangential', 3, 12, 5))).toBe(-1);
  });
});
