/** Boards on sheets of ply, from text to plan; layouts are checked by flatten-js with the outlines themselves. */
import { describe, expect, test } from 'vitest';
import { analyse, type Analysis } from '../../../server/analyse.ts';
import { flattenContour } from '../../../server/geometry/flatten-path.ts';
import { buildPlan } from '../../../server/shop/build-plan.ts';
import { type NestedSheet, nestSheets } from '../../../server/shop/sheets/nest-sheets.ts';
import { lastOf } from '../../../server/shop/stages.ts';
import type { ShopPlan } from '../../../server/shop/shop-plan.ts';
import { writePlanCsv } from '../../../server/shop/writers/write-plan-csv.ts';
import { writePlanText } from '../../../server/shop/writers/write-plan-text.ts';
import { written } from '../../../server/words/write-words.ts';
import { schemaFaults } from '../plan-schema.ts';
import { layoutFaults, placedRing } from './layout-faults.ts';

const planWith = (analysis: Analysis, nested: NestedSheet[]): ShopPlan =>
  written(buildPlan(analysis, 'boards.lap', { cuttings: [], nested }), 'mm');

const planned = (text: string) => {
  const analysis = analyse(text);
  return { analysis, plan: planWith(analysis, lastOf(nestSheets(analysis.design))) };
};

/** Outlines may reach 0.05 mm into the margin; a cut's round corners may be 0.01 mm short. */
const faultsOf = ({ sheets }: ShopPlan, { design }: ReturnType<typeof analyse>, shift = { x: 0, y: 0 }): string[] =>
  sheets.flatMap(({ places, widthMm, heightMm, marginMm, kerfMm }) => {
    const rings = places.map(({ board, move: { dx, dy, turn } }, index) => {
      const contour = design.boards.find(({ name }) => name === board)?.outline.contours[0] ?? [];
      const moved = index === 0 ? shift : { x: 0, y: 0 };
      return placedRing(flattenContour(contour), { turn, x: dx + moved.x, y: dy + moved.y });
    });
    const [near, far] = [marginMm - 0.06, 0.06 - marginMm];
    return layoutFaults(rings, { left: near, right: widthMm + far, bottom: near, top: heightMm + far }, kerfMm - 0.02);
  });

const made = (plan: ShopPlan): Record<string, number> => {
  const counts: Record<string, number> = {};
  for (const { count, places } of plan.sheets)
    for (const { board } of places) counts[board] = (counts[board] ?? 0) + count;
  return counts;
};

const shapes = `
outline half { start 0, 0  line to 300, 0  arc to 0, 0 radius 150 left }
outline hook { start 0, 0  line to 240, 0  line to 240, 60  line to 60, 60  line to 60, 200  line to 0, 200  line to start }
outline fin { start 0, 0  curve to 200, 180 by 40, 120 and 120, 180  line to 200, 0  line to start }
`;
const sheets = 'sheet ply { thick 6  size 620 x 420 at 12 EUR, 1220 x 610 at 30 EUR  kerf 3  margin 10 }';
const work = 'work wall { copies 2  place base at 0, 0  hourly 30 EUR }';
const boards = `
board base { shape half  of ply }
board arm { shape hook  of ply  copies 2 }
board wing { shape fin  of ply  copies 3 }
`;

describe('boards of one ply', () => {
  const { plan, analysis } = planned(`${sheets}${shapes}${boards}${work}`);

  test('are all laid out, copies of the work too', () => {
    expect(made(plan)).toEqual({ base: 2, arm: 4, wing: 6 });
    expect(schemaFaults(plan)).toEqual([]);
  });

  test('lie apart by the saw cut, inside the margin, along the grain, never mirrored', () => {
    expect(faultsOf(plan, analysis)).toEqual([]);
    const moves = plan.sheets.flatMap(({ places }) => places.map(({ move }) => move));
    expect(moves.every(({ turn, mirror }) => (turn === 0 || turn === 180) && !mirror)).toBe(true);
  });

  test('and one shifted by 1 % of the sheet, into its neighbours or out of the sheet, is found out', () => {
    const found = [
      { x: -12, y: 0 },
      { x: 0, y: -6 },
    ].map((shift) => faultsOf(plan, analysis, shift).length > 0);
    expect(found).toEqual([true, true]);
  });

  test('cost what their sheets cost, and no layout by area costs less than the bound', () => {
    const [{ value, bound, proven, objective } = { value: 0, bound: 0, proven: false, objective: '' }] = plan.sheets;
    const costs = plan.sheets.map(({ cost }) => cost ?? NaN);
    expect(costs.reduce((sum, cost) => sum + cost, 0)).toBe(value);
    expect({ objective, proven }).toEqual({ objective: 'cost', proven: value <= bound });
    expect(bound).toBeLessThanOrEqual(value);
    // The half discs and hooks by formula, the fins by trapezoids.
    const area = 2 * ((Math.PI * 150 ** 2) / 2) + 4 * (240 * 60 + 60 * 140) + 6 * finArea;
    expect(
      plan.sheets.reduce((sum, each) => sum + (each.count * each.usedPct * each.widthMm * each.heightMm) / 100, 0),
    ).toBeCloseTo(area, -4);
    expect(plan.cost.lines.find(({ what }) => what === 'sheets of ply')?.perCopy).toBe(value / 2);
  });

  test('are named with their sheets in the step, the text and the tables', () => {
    const tasks = plan.steps.find(({ title }) => title === 'cut boards')?.tasks.join('\n') ?? '';
    for (const { count } of plan.sheets) expect(tasks).toContain(`${count} × ply, `);
    expect(tasks).not.toContain('each from a piece');
    expect(writePlanText(plan)).toMatch(/Sheets\n[^]*proven least|at least .* by area/);
    const rows = writePlanCsv(plan)['sheets.csv'].trim().split('\r\n');
    expect(rows).toHaveLength(1 + plan.sheets.reduce((sum, { places }) => sum + places.length, 0));
  });

  test('the same again', () => {
    expect(planned(`${sheets}${shapes}${boards}${work}`).plan.sheets).toEqual(plan.sheets);
  });
});

/** What the outline's curve leaves under it, down to its other sides. */
const finArea = bezierAreaUnder([
  [0, 0],
  [40, 120],
  [120, 180],
  [200, 180],
]);

/** By trapezoids under 400 points of the curve. */
function bezierAreaUnder(points: readonly (readonly [number, number])[]): number {
  const at = (t: number, axis: 0 | 1): number =>
    [1, 3, 3, 1].reduce(
      (sum, binomial, k) => sum + binomial * (1 - t) ** (3 - k) * t ** k * (points[k]?.[axis] ?? 0),
      0,
    );
  let area = 0;
  for (let step = 0; step < 400; step++) {
    const [low, high] = [step / 400, (step + 1) / 400];
    area += ((at(low, 1) + at(high, 1)) / 2) * (at(high, 0) - at(low, 0));
  }
  return area;
}

test('a jigsaw of boards fills its sheets: proven fewest', () => {
  // Two trapezoids to a sheet of 600 × 300 with 3 mm of saw cut between them, four sheets in all; no room is left.
  const cut = 'outline wedge { start 0, 0  line to 348.4, 0  line to 248.4, 300  line to 0, 300  line to start }';
  const text = `sheet ply { thick 6  size 600 x 300  kerf 3 } ${cut} board part { shape wedge  of ply  copies 8 }`;
  const { plan, analysis } = planned(text);
  expect(plan.sheets).toMatchObject([{ count: 4, value: 4, bound: 4, proven: true, objective: 'sheets', cost: null }]);
  expect(faultsOf(plan, analysis)).toEqual([]);
});

test('moved together, pieces go on fewer sheets than one after another', () => {
  const text = `sheet ply { thick 6  size 400 x 300  kerf 2 } ${shapes} board bracket { shape hook  of ply  copies 12 }`;
  const analysis = analyse(text);
  const at = (steps: number) => planWith(analysis, lastOf(nestSheets(analysis.design, steps)));
  const [quick, well] = [at(0), at(3000)];
  const used = ({ sheets: all }: ShopPlan): number => all.reduce((sum, { count }) => sum + count, 0);
  expect(used(well)).toBeLessThan(used(quick));
  expect(faultsOf(quick, analysis)).toEqual([]);
  expect(faultsOf(well, analysis)).toEqual([]);
  expect([made(quick), made(well)]).toEqual([{ bracket: 12 }, { bracket: 12 }]);
});

describe('a board larger than its sheets', () => {
  const text = `sheet ply { thick 6  size 300 x 200  margin 5 }
outline tall { rectangle 180 x 280 }
outline small { rectangle 100 x 80 }
board door { shape tall  of ply }
board sign { shape small  of ply }`;

  test('is an error at its name, and the others are planned', () => {
    const { plan, analysis } = planned(text);
    expect(analysis.problems.map(({ code, range }) => [code, text.slice(range.start, range.end)])).toEqual([
      ['LAP1006', 'door'],
    ]);
    expect(analysis.problems[0]?.message).toContain('turned by 0° or 180°');
    expect(made(plan)).toEqual({ sign: 1 });
    expect(plan.sheets[0]?.problems).toEqual(['board door: larger than every sheet of ply; it is not laid out.']);
    expect(plan.incomplete).toBe(true);
  });

  test('goes on it where the sheet lets it turn', () => {
    const { plan, analysis } = planned(text.replace('margin 5', 'margin 5  turns 0, 90'));
    expect(analysis.problems).toEqual([]);
    expect(made(plan)).toEqual({ sign: 1, door: 1 });
    expect(plan.sheets.flatMap(({ places }) => places.map(({ board, move }) => [board, move.turn]))).toContainEqual([
      'door',
      90,
    ]);
    expect(faultsOf(plan, analysis)).toEqual([]);
  });
});

test('a sheet without sizes is not planned, and the price says so', () => {
  const { plan } = planned(`${sheets.replace(/size .*EUR {2}/, '')}${shapes}${boards}${work}`);
  expect(plan.sheets).toEqual([]);
  expect(plan.cost.problems).toContain('sheets of ply: how many are needed is not planned; they are not in the cost.');
});
