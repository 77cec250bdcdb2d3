/** Bands in the plan: limits and grades against the reference page, quantities, strips in the cutting plan. */
import { describe, expect, test } from 'vitest';
import { writeWords } from '../../../server/words/write-words.ts';
import { planBands } from '../../../server/shop/bands/plan-bands.ts';
import type { Band } from '../../../server/design/work-model.ts';
import { emptyDesign } from '../../../server/design/empty-design.ts';
import {
  bandOf,
  benchOf,
  boardOf,
  circleContour,
  gridOf,
  outlineOf,
  outlineShape,
  panelOf,
  polygonContour,
  stripStock,
  workOf,
} from '../../design-builder.ts';
import { schemaFaults } from '../plan-schema.ts';
import { cutPlanOf } from '../planned.ts';

const walnut = (face: number) => stripStock('walnut_strip', face, { wood: 'walnut', depth: 12 });
const planned = (radius: number, face: number, more: Partial<Band> = {}) => {
  const band = bandOf(outlineOf('edge', circleContour(radius)), walnut(face), more);
  return planBands({ ...emptyDesign, bands: [band] })[0];
};

describe('the limit', () => {
  // Source: reference page, section 5: walnut R_min/t 57.4, so 57, 115 and 172 mm for 1, 2 and 3 mm
  test.each([
    [1, 57],
    [2, 115],
    [3, 172],
  ])('of dry walnut %d mm thick is %d mm', (face, limit) => {
    expect(Math.round(planned(500, face)?.limitMm ?? 0)).toBe(limit);
  });

  test('that was tested wins over the wood’s strength', () => {
    expect(planned(20, 1, { testedRadius: 15, method: 'hot' })).toMatchObject({
      limitMm: 15,
      limitFrom: 'tested',
      grade: 'bends',
    });
  });
});

describe('the grade', () => {
  test.each([
    [59, 'bends'], // to the middle 58.5
    [55, 'try'],
    [30, 'will not bend'],
  ])('of walnut 1 mm thick round a radius of %d is %s', (radius, grade) => {
    expect(planned(radius, 1)?.grade).toBe(grade);
  });

  test('of hot wood without a test is not tested, unless it would bend dry', () => {
    expect(planned(30, 1, { method: 'hot' })?.grade).toBe('not tested');
    expect(planned(90, 1, { method: 'hot' })?.grade).toBe('bends');
  });

  test('of a wood nobody knows is not tested', () => {
    const unknown = bandOf(outlineOf('edge', circleContour(30)), stripStock('odd', 1));
    expect(planBands({ ...emptyDesign, bands: [unknown] })[0]).toMatchObject({ limitMm: null, grade: 'not tested' });
  });

  test('comes with the place and the thickness that would bend: limit and thickness go together', () => {
    const band = planned(30, 1);
    expect(band?.worst?.bendsAtMm).toBeCloseTo(29.5 / 57.4, 2);
    expect(band?.notes.map((note) => writeWords(note, 'mm')).join(' ')).toContain('lamination 1 bends to 29.5');
  });
});

test('glued laminations open as the reference page says: two by a third, three by an eighth', () => {
  // Source: reference page, section 5, springback
  expect(
    planned(200, 1, { laminations: 2 })
      ?.notes.map((note) => writeWords(note, 'mm'))
      .join(' '),
  ).toContain('33.3 %');
  expect(
    planned(200, 1, { laminations: 3 })
      ?.notes.map((note) => writeWords(note, 'mm'))
      .join(' '),
  ).toContain('12.5 %');
});

test('a straight edge needs no bending', () => {
  const square = polygonContour([
    { x: 0, y: 0 },
    { x: 50, y: 0 },
    { x: 50, y: 50 },
  ]);
  const band = bandOf(outlineOf('edge', square), walnut(3));
  expect(planBands({ ...emptyDesign, bands: [band] })[0]).toMatchObject({ smallestRadiusMm: null, grade: 'bends' });
});

describe('how many', () => {
  const disc = outlineOf('disc', circleContour(60));

  test('as many as the panels, boards and bodies they run round', () => {
    const panel = panelOf(gridOf('square', 40, stripStock('ash', 3)), outlineShape(circleContour(100)), { copies: 3 });
    const bands = [bandOf(panel, walnut(1)), bandOf(disc, walnut(1))];
    const boards = [boardOf(disc, { copies: 2 })];
    const plans = planBands({ ...emptyDesign, panels: [panel], bands, boards, work: workOf({ copies: 2 }) });
    expect(plans.map(({ quantity }) => quantity)).toEqual([6, 4]);
  });

  test('every lamination of every run is in the cutting plan as often as it is made', async () => {
    const sticks = stripStock('walnut_strip', 1, {
      wood: 'walnut',
      depth: 12,
      lengths: [{ length: 1000, price: null }],
    });
    const plan = await cutPlanOf([], {
      bands: [bandOf(disc, sticks, { laminations: 2, overLength: 10 })],
      boards: [boardOf(disc, { copies: 3 })],
      benches: [benchOf({ kerf: 2 })],
    });
    const [band] = plan.bands;
    const cuts = plan.stock.flatMap(({ sticks: used }) =>
      used.flatMap(({ cuts: each, count }) => each.map((cut) => ({ ...cut, n: cut.n * count }))),
    );
    for (const { mark, cutMm } of band?.laminations.flatMap(({ pieces }) => pieces) ?? []) {
      const own = cuts.filter((cut) => cut.mark === mark);
      expect(own.reduce((total, { n }) => total + n, 0)).toBe(3);
      own.forEach(({ lengthMm }) => expect(lengthMm).toBeCloseTo(cutMm, 3));
    }
    expect(plan.mill.map(({ stock }) => stock)).toContain('walnut_strip');
    expect(schemaFaults(plan)).toEqual([]);
  });
});

test('a strip narrower than the edge with its over-width is told', () => {
  const disc = outlineOf('disc', circleContour(200));
  const band = bandOf(disc, stripStock('thin', 1, { wood: 'walnut', depth: 6 }), { overWidth: 1 });
  const [plan] = planBands({ ...emptyDesign, bands: [band], boards: [boardOf(disc)] });
  expect(writeWords(plan?.notes[0] ?? '', 'mm')).toBe('The strip is 6.0 wide; the edge with its over-width takes 7.0.');
});
