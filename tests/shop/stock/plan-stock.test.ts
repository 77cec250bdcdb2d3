/** Cutting plans for marked kinds: strips and infill of one stock together, from the lengths it can be had in. */
import { expect, test } from 'vitest';
import { layOutPanel } from '../../../server/lattice/lay-out-panel.ts';
import { markKinds } from '../../../server/shop/mark-kinds.ts';
import type { MarkedKinds } from '../../../server/shop/marked-kinds.ts';
import { loadSolver } from '../../../server/shop/stock/load-solver.ts';
import { planStock, stockRequests } from '../../../server/shop/stock/plan-stock.ts';
import { startWatch } from '../../../server/shop/stock/start-watch.ts';
import { circleContour, fillOf, gridOf, hemp, outlineShape, panelOf, stripStock } from '../../design-builder.ts';
import { expectSound } from './ask.ts';

const losses = { kerfMm: 1.2, endTrimMm: 8 };

const offered = (lengths: number[]) => lengths.map((length) => ({ length, price: null }));

function kindsOf(stripLengths: number[], infillLengths: number[], oneStock = false): MarkedKinds {
  const ash = stripStock('ash', 3, { lengths: offered(stripLengths), spare: 0.05 });
  const bass = oneStock ? ash : stripStock('bass', 3, { lengths: offered(infillLengths), spare: 0.08 });
  const { panel } = layOutPanel(
    panelOf(gridOf('three_way', 36, ash), outlineShape(circleContour(150)), {
      fills: [fillOf('triangle', hemp, bass)],
    }),
  );
  return markKinds(panel ? [panel] : []);
}

test('each stock of a panel is cut soundly, every mark as often as the plan says', async () => {
  const kinds = kindsOf([900, 600], [600]);
  const cuttings = await planStock(kinds, losses, await loadSolver(), startWatch({ seconds: 30 }));
  expect(cuttings.map(({ request }) => request.stock)).toEqual(['ash', 'bass']);
  for (const { request, plan, problems } of cuttings) {
    expect(problems).toEqual([]);
    if (!plan) throw new Error('no plan');
    expectSound(request, plan);
    expect(plan).toMatchObject({ proven: true, kerfMm: 1.2, endTrimMm: 8 });
  }
  const asked = cuttings.flatMap(({ request }) => request.pieces.map(({ mark, total }) => [mark, total]));
  expect(new Map(asked as [string, number][])).toEqual(
    new Map([...kinds.strips, ...kinds.pieces].map(({ mark, total }) => [mark, total])),
  );
});

test('strips and infill of one stock share its sticks', () => {
  const kinds = kindsOf([900], [], true);
  const [request, ...others] = stockRequests(kinds, losses);
  expect(others).toEqual([]);
  expect(request?.pieces.length).toBe(kinds.strips.length + kinds.pieces.length);
});

test('a stock without lengths is not planned', () => {
  expect(stockRequests(kindsOf([], [600]), losses).map(({ stock }) => stock)).toEqual(['bass']);
});

test('a stick length said twice is one choice', () => {
  expect(stockRequests(kindsOf([900, 900], [600]), losses)[0]?.sticks.length).toBe(1);
});

test('sticks too short for a strip are said, by mark', async () => {
  const cuttings = await planStock(kindsOf([200], [600]), losses, await loadSolver(), startWatch({ seconds: 30 }));
  expect(cuttings[0]?.problems[0]).toMatchObject({ kind: 'pieceTooLong', longestMm: 184 });
});
