/** Cutting plans for marked kinds: strips and infill of one stock together, from the lengths it can be had in. */
import { describe, expect, test } from 'vitest';
import type { StripStock } from '../../../server/design/design-model.ts';
import { layOutPanel } from '../../../server/lattice/lay-out-panel.ts';
import { markKinds } from '../../../server/shop/marks/mark-kinds.ts';
import type { MarkedKinds } from '../../../server/shop/marks/marked-kinds.ts';
import { loadSolver } from '../../../server/machine/load-solver.ts';
import { cutEveryStock, stockRequests } from '../../../server/shop/stock/cut-every-stock.ts';
import { startWatch } from '../../../server/machine/start-watch.ts';
import { stockDemands } from '../../../server/shop/stock/stock-demands.ts';
import {
  circleContour,
  fillOf,
  gridOf,
  hemp,
  hexagonShape,
  outlineShape,
  panelOf,
  stripStock,
} from '../../design-builder.ts';
import { expectSound } from './ask.ts';

/** Of a saw that loses nothing: figures by hand are to the tenth. */
const bench = { kerf: 1.2, breath: { cut: 0, stick: 0 } };

const offered = (lengths: number[]) => lengths.map((length) => ({ length, price: null }));

function kindsOf(stripLengths: number[], infillLengths: number[], oneStock = false): MarkedKinds {
  const ash = stripStock('ash', 3, { lengths: offered(stripLengths), spare: 0.05, endTrim: 8 });
  const bass = oneStock ? ash : stripStock('bass', 3, { lengths: offered(infillLengths), spare: 0.08, endTrim: 8 });
  const { panel } = layOutPanel(
    panelOf(gridOf('three_way', 36, ash), outlineShape(circleContour(150)), {
      fills: [fillOf('triangle', hemp, bass)],
    }),
  );
  return markKinds(panel ? [panel] : []);
}

const watch = () => startWatch({ seconds: 30 });
const requestsOf = (kinds: MarkedKinds) => stockRequests(stockDemands(kinds, 0), bench).map(({ request }) => request);

test('each stock of a panel is cut soundly, every mark as often as the plan says', async () => {
  const kinds = kindsOf([900, 600], [600]);
  const cuttings = await cutEveryStock(stockDemands(kinds, 0), bench, await loadSolver(), watch);
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
  const [request, ...others] = requestsOf(kinds);
  expect(others).toEqual([]);
  expect(request?.pieces.length).toBe(kinds.strips.length + kinds.pieces.length);
});

test('rough pieces of infill are longer by the trim at both ends, keys by their allowance too', () => {
  const keyed = { ...hemp, fitOrder: ['arm', 'arm', 'arm'].map((role, n) => ({ role, key: n === 2 ? 0.1 : null })) };
  const ash = stripStock('ash', 3, {});
  const { panel } = layOutPanel(
    panelOf(gridOf('three_way', 36, ash), hexagonShape(1), { fills: [fillOf('triangle', keyed, ash)] }),
  );
  const demands = stockDemands({ strips: [], hinges: [], pieces: markKinds(panel ? [panel] : []).pieces }, 2.5);
  const length = 36 / Math.sqrt(3) - 3;
  expect(demands.map(({ mark, total }) => [mark, total])).toEqual([
    ['A', 12],
    ['A', 6],
  ]);
  expect(demands[0]?.lengthMm).toBeCloseTo(length + 5, 9);
  expect(demands[1]?.lengthMm).toBeCloseTo(length + 5.1, 9);
});

test('a stock without lengths is asked for all the same, and answered in words', async () => {
  const [ash] = await cutEveryStock(stockDemands(kindsOf([], [600]), 0), bench, await loadSolver(), watch);
  expect(ash).toMatchObject({ plan: null, problems: [{ kind: 'noLengths' }] });
});

test('a stick length said twice is one choice', () => {
  expect(requestsOf(kindsOf([900, 900], [600]))[0]?.sticks.length).toBe(1);
});

test('sticks too short for a strip are said, by mark', async () => {
  const demands = stockDemands(kindsOf([200], [600]), 0);
  const cuttings = await cutEveryStock(demands, bench, await loadSolver(), watch);
  expect(cuttings[0]?.problems[0]).toMatchObject({ kind: 'pieceTooLong', longestMm: 184 });
});

describe('a stock with figures of its own', () => {
  const euros = (amount: number) => ({ amount, currency: 'EUR' });
  const demand = (more: Partial<StripStock>) => [
    { stock: stripStock('ash', 3, more), mark: 'S', lengthMm: 300, total: 10 },
  ];
  const answerTo = async (more: Partial<StripStock>) =>
    (await cutEveryStock(demand(more), bench, await loadSolver(), watch))[0];

  test('its kerf goes before the bench’s', async () => {
    const lengths = [{ length: 1000, price: null }];
    expect((await answerTo({ lengths, kerf: 50 }))?.plan).toMatchObject({ kerfMm: 50, sticksUsed: 4 });
    expect((await answerTo({ lengths, kerf: 50.1 }))?.plan?.sticksUsed).toBe(5);
  });

  /** Two of 498 with a cut of 3.1 between and 2 in the stick take 1001.1; without breath 999. */
  test('its breath goes before the bench’s, and the bench’s before the usual one', async () => {
    const lengths = [{ length: 1000, price: null }];
    const pieces = (breath: StripStock['breath']) => [
      { stock: stripStock('ash', 3, { lengths, breath, kerf: 3 }), mark: 'S', lengthMm: 498, total: 2 },
    ];
    const sticksOf = async (own: StripStock['breath'], ofBench: StripStock['breath']) => {
      const [cut] = await cutEveryStock(pieces(own), { kerf: 3, breath: ofBench }, await loadSolver(), watch);
      return [cut?.plan?.sticksUsed, cut?.plan?.breathMm, cut?.plan?.bound];
    };
    const none = { cut: 0, stick: 0 };
    const usual = { cut: 0.1, stick: 2 };
    expect(await sticksOf(null, null)).toEqual([2, usual, 2]);
    expect(await sticksOf(none, null)).toEqual([1, none, 1]);
    expect(await sticksOf(null, none)).toEqual([1, none, 1]);
    expect(await sticksOf({ cut: 0.1, stick: 0.9 }, none)).toEqual([1, { cut: 0.1, stick: 0.9 }, 1]);
    expect(await sticksOf({ cut: 0.1, stick: 1 }, none)).toEqual([2, { cut: 0.1, stick: 1 }, 2]);
  });

  /** Two of 700 in the rack give two each; six are left for two of 1000 at 3. */
  test('what is in the rack is used first and costs nothing', async () => {
    const lengths = [{ length: 1000, price: euros(3) }];
    const answer = await answerTo({ lengths, onHand: [{ length: 700, count: 2 }] });
    expect(answer).toMatchObject({ currency: 'EUR', plan: { objective: 'cost', cost: 6, proven: true } });
    expect(answer?.plan?.sticks.map(({ onHand, lengthMm, count }) => [onHand, lengthMm, count])).toEqual([
      [false, 1000, 2],
      [true, 700, 2],
    ]);
  });

  test('without prices the fewest to buy are counted', async () => {
    const lengths = [{ length: 1000, price: null }];
    const answer = await answerTo({ lengths, onHand: [{ length: 700, count: 2 }] });
    expect(answer?.plan).toMatchObject({ objective: 'sticks', value: 2, bound: 2, sticksUsed: 4, proven: true });
  });

  test('prices in two currencies are not compared, and that is said', async () => {
    const lengths = [
      { length: 1000, price: euros(3) },
      { length: 500, price: { amount: 1, currency: 'USD' } },
    ];
    const answer = await answerTo({ lengths });
    expect(answer).toMatchObject({ currency: null, plan: { objective: 'sticks', cost: null, sticksUsed: 4 } });
    expect(answer?.problems).toEqual([{ kind: 'mixedCurrencies' }]);
  });
});

test('two arms of a cell out of one length, the key by itself: 6 cells, 3 arms in each', () => {
  const hinge = { roles: ['arm', 'arm'] as const, range: { start: 0, end: 0 } };
  const fitOrder = [null, null, 0.1].map((key) => ({ role: 'arm', key }));
  const ash = stripStock('ash', 3, {});
  const { panel } = layOutPanel(
    panelOf(gridOf('three_way', 36, ash), hexagonShape(1), {
      fills: [fillOf('triangle', { ...hemp, fitOrder, hinges: [hinge] }, ash)],
    }),
  );
  const { pieces, hinges } = markKinds(panel ? [panel] : []);
  const demands = stockDemands({ strips: [], pieces, hinges }, 2.5);
  const length = 36 / Math.sqrt(3) - 3;
  expect(demands.map(({ mark, total }) => [mark, total])).toEqual([
    ['A', 6],
    ['A+A', 6],
  ]);
  expect(demands[0]?.lengthMm).toBeCloseTo(length + 5.1, 9);
  expect(demands[1]?.lengthMm).toBeCloseTo(2 * length + 5, 9);
});
