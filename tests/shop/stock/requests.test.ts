/** Requests with something wrong in them are answered with problems, and planned as far as can be. */
import { expect, test } from 'vitest';
import { ask, endless, requestOf } from './ask.ts';

test('a piece longer than any stick is left out', async () => {
  const { plan, problems } = await ask(
    requestOf(
      1000,
      [
        [990, 1],
        [300, 3],
      ],
      { endTrimMm: 10 },
    ),
  );
  expect(problems).toEqual([{ kind: 'pieceTooLong', mark: 'P1', lengthMm: 990, longestMm: 980 }]);
  expect(plan).toMatchObject({ sticksUsed: 1, needMm: 900 });
});

test('a piece that fills the stick just fits', async () => {
  const { plan, problems } = await ask(requestOf(1000, [[980, 2]], { endTrimMm: 10, kerfMm: 3 }));
  expect(problems).toEqual([]);
  expect(plan?.sticksUsed).toBe(2);
});

test('a kerf wider than a piece is planned, and said', async () => {
  const { plan, problems } = await ask(requestOf(100, [[2, 10]], { kerfMm: 3 }));
  expect(problems).toEqual([{ kind: 'kerfWiderThanPiece', mark: 'P1', lengthMm: 2 }]);
  expect(plan).toMatchObject({ sticksUsed: 1, proven: true });
});

test('no lengths, and none left after trimming', async () => {
  expect(await ask(requestOf(0, [[5, 1]], { sticks: [] }))).toMatchObject({
    plan: null,
    problems: [{ kind: 'noLengths' }],
  });
  expect(await ask(requestOf(20, [[5, 1]], { endTrimMm: 10 }))).toMatchObject({
    plan: null,
    problems: [{ kind: 'stickUsedUpByTrim', lengthMm: 20 }, { kind: 'noLengths' }],
  });
});

test('nothing to cut needs no stick', async () => {
  const { plan, problems } = await ask(requestOf(1000, [[300, 0]]));
  expect(problems).toEqual([]);
  expect(plan).toMatchObject({ sticks: [], sticksUsed: 0, value: 0, bound: 0, proven: true, wastePct: 0 });
});

test.each([
  ['kerf', { kerfMm: -1 }],
  ['kerf', { kerfMm: Number.NaN }],
  ['end trim', { endTrimMm: Infinity }],
  ['stick length', { sticks: [endless(0)] }],
  ['price', { sticks: [endless(1000, -2)] }],
  ['sticks on hand', { sticks: [{ lengthMm: 1000, price: null, onHand: 1.5 }] }],
  ['length of A', { pieces: [{ mark: 'A', lengthMm: -5, total: 1 }] }],
  ['number of A', { pieces: [{ mark: 'A', lengthMm: 5, total: 0.5 }] }],
])('no shop has such a %s', async (of, wrong) => {
  const { plan, problems } = await ask(requestOf(1000, [[300, 3]], wrong));
  expect(plan).toBeNull();
  expect(problems).toMatchObject([{ kind: 'impossibleNumber', of }]);
});
