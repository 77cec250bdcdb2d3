/** Sticks, rejects and boards, counted by hand. */
import { describe, expect, test } from 'vitest';
import type { StripStock } from '../../../server/design/design-model.ts';
import type { BoardStock } from '../../../server/design/material-model.ts';
import type { PlanMill } from '../../../server/shop/sections/work-sections.ts';
import { benchOf, cellsShape, gridOf, panelOf, stripStock } from '../../design-builder.ts';
import { cutPlanOf } from '../planned.ts';

const board = (more: Partial<BoardStock> = {}): BoardStock => ({
  thickness: 12,
  width: 100,
  length: 1300,
  price: null,
  thicknessGives: 'depth',
  rejoint: null,
  ...more,
});

/** A framed square lattice, pitch 100, 6 × 11 cells clear inside: ten strips of 597 and five of 1097, from 1200 sticks. */
async function millOf(more: Partial<StripStock>, rippingKerf: number | null = 3.2): Promise<PlanMill> {
  const ash = stripStock('ash', 3, { depth: 12, lengths: [{ length: 1200, price: null }], ...more });
  const panel = panelOf(gridOf('square', 100, ash), cellsShape(6, 11), { edge: 'framed' });
  const { mill, strips } = await cutPlanOf([panel], { benches: [benchOf({ kerf: 3, rippingKerf })] });
  expect(strips.map(({ lengthMm, make }) => [lengthMm, make])).toEqual([
    [1097, 5],
    [597, 10],
  ]);
  if (!mill[0]) throw new Error('nothing to mill');
  return mill[0];
}

describe('milling', () => {
  test('ten sticks: five of 1097 and two 597 to a stick; 15 % rejects make it twelve', async () => {
    const mill = await millOf({ rejects: 0.15, flush: 0.3 });
    expect(mill).toMatchObject({ sticks: 10, millSticks: 12, rejectsPct: 15, boards: null });
    expect(mill).toMatchObject({ faceMm: 3, depthMm: 12, finishedDepthMm: 11.4 });
    expect(mill.grain.length).toBeGreaterThan(0);
  });

  test('rejects are counted over all sticks of one length, however differently they are cut', async () => {
    // Three patterns of one stick each: 3 / 0.9 = 3.3, so four; stick by stick it would be six.
    const ash = stripStock('ash', 3, { depth: 12, lengths: [{ length: 700, price: null }], rejects: 0.1 });
    const panel = panelOf(gridOf('square', 100, ash), cellsShape(2, 5), { edge: 'framed' });
    const { mill, stock } = await cutPlanOf([panel], { benches: [benchOf({ kerf: 3 })] });
    const sticks = stock[0]?.sticks.reduce((all, { count }) => all + count, 0) ?? 0;
    expect(stock[0]?.sticks.length).toBeGreaterThan(1);
    expect(mill[0]?.millSticks).toBe(Math.ceil(sticks / 0.9));
  });

  /** 16 · 3 + 15 · 3.2 = 96 ≤ 100, and a 17th would need 102.2. */
  test('sixteen strips of 3 with a rip of 3.2 from a board 100 wide, one stick to its length', async () => {
    const mill = await millOf({ boards: [board()] });
    expect(mill.boards).toMatchObject({ stripsPerBoard: 16, lengthsPerBoard: 1, boards: 1, ripKerfMm: 3.2 });
    expect(mill.boards?.leftoverWidthMm).toBeCloseTo(100 - (10 * 3 + 9 * 3.2) - 3.2, 9);
  });

  test('a board twice as long gives two sticks to a length', async () => {
    const mill = await millOf({ boards: [board({ length: 2403 })] });
    expect(mill.boards).toMatchObject({ lengthsPerBoard: 1, boards: 1 });
    const longer = await millOf({ boards: [board({ length: 2403.2 })] });
    expect(longer.boards).toMatchObject({ lengthsPerBoard: 2, boards: 1 });
  });

  /** Dressed by 0.5 once in four rips: 15 · 3 + 14 · 3.2 + 4 · 0.5 = 91.8; 16: 98; 17 needs 5 dressings, 104.7. */
  test('re-jointing costs width', async () => {
    const mill = await millOf({ boards: [board({ width: 97.9, rejoint: { allowance: 0.5, every: 4 } })] });
    expect(mill.boards).toMatchObject({ stripsPerBoard: 15, rejointMm: 0.5, rejointEvery: 4 });
    const wider = await millOf({ boards: [board({ width: 98, rejoint: { allowance: 0.5, every: 4 } })] });
    expect(wider.boards?.stripsPerBoard).toBe(16);
  });

  test('the board’s thickness may give the face: then the depth is ripped', async () => {
    const mill = await millOf({ boards: [board({ thickness: 4, thicknessGives: 'face' })] });
    expect(mill.boards?.stripsPerBoard).toBe(Math.floor((100 + 3.2) / (12 + 3.2)));
    expect(mill.boards?.boards).toBe(2);
  });

  test('of two boards the one that takes less wood, its price times its number', async () => {
    const price = { amount: 18.5, currency: 'EUR' };
    const mill = await millOf({ boards: [board({ width: 240, price }), board({ width: 30, price })] });
    expect(mill.boards).toMatchObject({ widthMm: 30, stripsPerBoard: 5, boards: 2, cost: 37, currency: 'EUR' });
  });

  test('boards that do not give the strip say why', async () => {
    expect((await millOf({ boards: [board({ thickness: 11 })] })).problems.join()).toContain('take a thicker one');
    expect((await millOf({ boards: [board({ width: 2 })] })).problems.join()).toContain('take a wider one');
    expect((await millOf({ boards: [board({ length: 1199 })] })).problems.join()).toContain('take a longer one');
  });

  test('sticks from the rack are not milled; without lengths the sticks are not known', async () => {
    expect(await millOf({ onHand: [{ length: 1200, count: 4 }] })).toMatchObject({ sticks: 6, millSticks: 6 });
    expect(await millOf({ lengths: [] })).toMatchObject({ sticks: null, millSticks: null, boards: null });
  });
});
