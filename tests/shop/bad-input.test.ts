/** What no shop has, or has not said: a clear message, everything else planned, and an end in bounded time. */
import { analyse } from '../../server/analyse.ts';
import { planCutting } from '../../server/shop/sections/plan-cutting.ts';
import { describe, expect, test } from 'vitest';
import type { StripStock } from '../../server/design/design-model.ts';
import {
  benchOf,
  cellsShape,
  fillOf,
  gridOf,
  panelOf,
  squareHemp,
  stripStock,
  tipOf45,
  workOf,
} from '../design-builder.ts';
import type { Bench } from '../../server/design/design-model.ts';
import { cutPlanOf } from './planned.ts';
import { schemaFaults } from './plan-schema.ts';
import { ask, expectSound, requestOf } from './stock/ask.ts';
import { planAtSight } from '../plan-at-sight.ts';

const price = (amount: number, currency: string) => ({ amount, currency });

async function planFor(strip: Partial<StripStock>, infill: Partial<StripStock>, bench: Partial<Bench> = { kerf: 3 }) {
  const ash = stripStock('ash', 3, { lengths: [{ length: 900, price: null }], ...strip });
  const bass = stripStock('bass', 3, { lengths: [{ length: 600, price: null }], ...infill });
  const panel = panelOf(gridOf('square', 40, ash), cellsShape(5, 4), {
    edge: 'framed',
    fills: [fillOf('square', squareHemp([tipOf45]), bass)],
  });
  const plan = await cutPlanOf([panel], { benches: [benchOf(bench)], work: workOf({ packing: price(3, 'EUR') }) });
  expect(schemaFaults(plan)).toEqual([]);
  return plan;
}

describe('bad input', () => {
  test('a strip longer than any stick: named and left out, all others cut', async () => {
    const { stock, strips } = await planFor({ lengths: [{ length: 180, price: null }] }, {});
    const [ash, bass] = stock;
    const long = strips.find(({ lengthMm }) => lengthMm > 180);
    expect(ash?.problems).toEqual([
      expect.stringContaining(`${long?.mark ?? ''}, 197 mm long, is longer than any stick holds (178 mm)`),
    ]);
    expect(ash?.sticksUsed).toBeGreaterThan(0);
    expect(bass?.problems).toEqual([]);
    expect(strips).toHaveLength(2);
  });

  test('no stick at all: said, the need still given, every other section there', async () => {
    const plan = await planFor({ lengths: [] }, {});
    expect(plan.stock[0]).toMatchObject({ sticks: [], needMm: 3 * 197 + 4 * 157, proven: false });
    expect(plan.stock[0]?.problems).toEqual(['No length of stick is given; add the lengths that can be had.']);
    expect(plan.steps.map(({ title }) => title)).toContain('notch strips');
    expect(plan.mill[0]).toMatchObject({ sticks: null, faceMm: 3 });
  });

  test('no kerf: planned as if the saw took nothing, and that is said', async () => {
    const { stock, settings } = await planFor({}, {}, { kerf: null });
    for (const { problems, proven } of stock) {
      expect(problems).toEqual([expect.stringContaining('No kerf is stated')]);
      expect(proven).toBe(true);
    }
    expect(settings.find(({ notching }) => notching)?.notching?.passes).toBeNull();
  });

  test('a kerf of 0 in a file: an error at its words, and the plan says that none is stated', () => {
    const text = `strip ash { section face 3 depth 10  lengths 900 }
bench shop { kerf 0 }
grid net { square  pitch 40  of ash }
panel tile { grid net  shape 3 x 3 cells }`;
    const analysis = analyse(text);
    const [problem, ...others] = analysis.problems;
    expect(others).toEqual([]);
    expect(problem?.severity).toBe('error');
    expect(text.slice(problem?.range.start, problem?.range.end)).toBe('0');
    const plan = planAtSight(analysis, 'tile.lap');
    expect(plan.benches.map(({ kerfMm }) => kerfMm)).toEqual([null]);
    expect(plan.strips.length).toBeGreaterThan(0);
  });

  test('infill longer than any stick: every such mark is named, the short ones are cut', async () => {
    const { stock, pieces } = await planFor({}, { lengths: [{ length: 40, price: null }] });
    const [long, short] = [true, false].map((isLong) => pieces.filter(({ lengthMm }) => lengthMm > 40 === isLong));
    expect(long?.length).toBeGreaterThan(0);
    expect(short?.length).toBeGreaterThan(0);
    expect(stock[1]?.problems).toEqual(
      long?.map(
        ({ mark }) =>
          expect.stringMatching(new RegExp(`^${mark}, .* is longer than any stick holds \\(38 mm\\)`)) as string,
      ),
    );
    const cut = stock[1]?.sticks.flatMap(({ cuts }) => cuts.map(({ mark }) => mark)) ?? [];
    expect([...new Set(cut)].sort()).toEqual(short?.map(({ mark }) => mark).sort());
  });

  test('a kerf wider than a piece: every such mark is named, and planned', async () => {
    const { stock, pieces } = await planFor({}, { kerf: 20 });
    const short = pieces.filter(({ lengthMm }) => lengthMm < 20);
    expect(short.length).toBeGreaterThan(0);
    for (const { mark } of short)
      expect(stock[1]?.problems.join()).toContain(`The saw takes more than ${mark} is long`);
    const cut = stock[1]?.sticks.flatMap(({ cuts, count }) => cuts.map(({ n }) => n * count)) ?? [];
    expect(cut.reduce((sum, n) => sum + n, 0)).toBe(pieces.reduce((sum, { total }) => sum + total, 0));
  });

  test('prices in two currencies: in one stock the fewest sticks are sought, and nothing is added up across stocks', async () => {
    const lengths = [
      { length: 900, price: price(4, 'EUR') },
      { length: 600, price: price(3, 'USD') },
    ];
    const within = await planFor({ lengths }, {});
    expect(within.stock[0]).toMatchObject({ objective: 'sticks', cost: null, currency: null });
    expect(within.stock[0]?.problems.join()).toContain('several currencies');
    const across = await planFor(
      { lengths: [{ length: 900, price: price(4, 'EUR') }] },
      { lengths: [{ length: 600, price: price(3, 'USD') }] },
    );
    expect(across.stock.map(({ currency }) => currency)).toEqual(['EUR', 'USD']);
    expect(across.cost).toMatchObject({ lines: [], pricePerCopy: null });
    expect(across.cost.problems).toEqual([expect.stringContaining('EUR and USD')]);
  });

  test('a thousand lengths: a sound plan with its bound when the time is up', async () => {
    const lengths = Array.from({ length: 1000 }, (_, index) => [100 + index * 1.37, 1 + (index % 3)] as const);
    const request = requestOf(2400, lengths, { kerfMm: 3 });
    const { plan, problems } = await ask(request, { seconds: 1 });
    expect(problems).toEqual([]);
    if (!plan) throw new Error('no plan');
    expectSound(request, plan);
    expect(plan.bound).toBeGreaterThan(600);
  });

  test('a thousand lengths and no time at all: a sound plan, its bound, and in words that the time ran out', async () => {
    const lengths = Array.from({ length: 1000 }, (_, index) => [100 + index * 1.37, 1 + (index % 3)] as const);
    const request = requestOf(2400, lengths, { kerfMm: 3 });
    const answer = await ask(request, { seconds: 0 });
    if (!answer.plan) throw new Error('no plan');
    expectSound(request, answer.plan);
    const [written] = planCutting([{ stock: stripStock('ash', 3), request, currency: null, ...answer }]);
    expect(written?.problems).toEqual([expect.stringContaining('The time for the search ran out')]);
    expect(written?.proven).toBe(false);
    expect(written?.bound).toBeGreaterThan(0);
  });
});
