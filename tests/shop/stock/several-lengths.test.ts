/** Several lengths of stick, prices, and sticks on hand: worked by hand. */
import { describe, expect, test } from 'vitest';
import { ask, endless, planOf, requestOf } from './ask.ts';

test('fewest sticks first, then the least length of that many', async () => {
  const request = requestOf(0, [[500, 5]], { sticks: [endless(1000), endless(1600), endless(600)] });
  const plan = await planOf(request);
  expect(plan).toMatchObject({ objective: 'sticks', sticksUsed: 2, stickMm: 2600, cost: null, proven: true });
});

test('least cost when every length has a price', async () => {
  const request = requestOf(0, [[500, 5]], { sticks: [endless(1000, 4), endless(1500, 7.5)] });
  const plan = await planOf(request);
  expect(plan).toMatchObject({ objective: 'cost', cost: 11.5, value: 11.5, bound: 11.5, proven: true });
});

test('one length without a price, and sticks are counted', async () => {
  const request = requestOf(0, [[500, 4]], { sticks: [endless(1000, 4), endless(2000)] });
  expect(await planOf(request)).toMatchObject({ objective: 'sticks', sticksUsed: 1, cost: null });
});

test('free sticks on hand are used before bought ones', async () => {
  const sticks = [{ lengthMm: 700, price: 0, onHand: 2 }, endless(1000, 3)];
  const plan = await planOf(requestOf(0, [[300, 10]], { sticks }));
  expect(plan).toMatchObject({ cost: 6, proven: true });
});

test('two supplies of one length at different prices', async () => {
  const sticks = [{ lengthMm: 1000, price: 1, onHand: 1 }, endless(1000, 5)];
  expect(await planOf(requestOf(0, [[600, 3]], { sticks }))).toMatchObject({ cost: 11, sticksUsed: 3, proven: true });
});

test('only sticks on hand: they suffice', async () => {
  const sticks = [
    { lengthMm: 1000, price: null, onHand: 2 },
    { lengthMm: 500, price: null, onHand: 3 },
  ];
  const plan = await planOf(
    requestOf(
      0,
      [
        [600, 2],
        [400, 2],
        [500, 3],
      ],
      { sticks },
    ),
  );
  expect(plan).toMatchObject({ sticksUsed: 5, wastePct: 0 });
});

test('only sticks on hand: they do not suffice', async () => {
  const sticks = [{ lengthMm: 1000, price: null, onHand: 2 }];
  const answer = await ask(requestOf(0, [[600, 3]], { sticks }));
  expect(answer.plan).toBeNull();
  expect(answer.problems).toEqual([{ kind: 'notEnoughSticks', proven: false }]);
  const more = await ask(requestOf(0, [[700, 3]], { sticks }));
  expect(more.problems).toEqual([{ kind: 'notEnoughSticks', proven: true }]);
});

describe('what lies in the rack and has no price', () => {
  const rack = (lengthMm: number, onHand: number) => ({ lengthMm, price: 0, onHand });

  /** One of 60 in the rack holds one of the four; the three others, 46 + 1 each, take 141 of one stick: 160 does. */
  test('leaves fewest to buy, and of those the least length', async () => {
    const request = requestOf(0, [[46, 4]], { kerfMm: 1, sticks: [rack(60, 1), endless(160), endless(1000)] });
    const plan = await planOf(request);
    expect(plan).toMatchObject({ objective: 'sticks', value: 1, bound: 1, proven: true });
    expect(plan.length).toEqual({ valueMm: 160, boundMm: 160, proven: true });
  });

  test('is used up before a longer one is bought', async () => {
    // two of 300 lie in two rack sticks; three more fit in one bought 950, not in one of 800
    const request = requestOf(0, [[300, 5]], { sticks: [rack(310, 2), endless(800), endless(950), endless(2000)] });
    expect(await planOf(request)).toMatchObject({ value: 1, length: { valueMm: 950, proven: true } });
  });

  test('alone: as few of it as can be, and the shortest', async () => {
    const request = requestOf(0, [[300, 2]], { sticks: [rack(700, 3), rack(620, 1), rack(300, 2)] });
    expect(await planOf(request)).toMatchObject({ value: 1, length: { valueMm: 620, boundMm: 620, proven: true } });
  });

  test('no choice of lengths, nothing second to aim at; nor where money is counted', async () => {
    expect((await planOf(requestOf(0, [[300, 5]], { sticks: [rack(310, 2), endless(800)] }))).length).toBeNull();
    const priced = requestOf(0, [[300, 5]], { sticks: [endless(800, 3), endless(900, 4)] });
    expect((await planOf(priced)).length).toBeNull();
  });
});
