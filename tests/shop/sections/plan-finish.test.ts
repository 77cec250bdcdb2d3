/** Coated areas and what they take, by hand. */
import { describe, expect, test } from 'vitest';
import type { FinishStock } from '../../../server/design/material-model.ts';
import { layOutPanel } from '../../../server/lattice/lay-out-panel.ts';
import { coatedArea } from '../../../server/shop/sections/plan-finish.ts';
import { cellsShape, gridOf, panelOf, stripStock, workOf } from '../../design-builder.ts';
import { planOf } from '../planned.ts';

const range = { start: 0, end: 0 };
const oil: FinishStock = {
  name: 'oil',
  range,
  nameRange: range,
  coverage: 12,
  coats: 3,
  loss: 0.2,
  recoat: 240,
  price: null,
};
const panel = panelOf(gridOf('square', 40, stripStock('ash', 3, { wood: 'white_ash' })), cellsShape(5, 4), {
  edge: 'framed',
});

/** 5 × 4 cells of 37 inside: front and back are 197·157 less the openings; walls are 20 openings of 4·37 and 10 deep. */
test('an open square lattice: both faces, every inside wall, and the outer ends', () => {
  const { panel: laid } = layOutPanel(panel);
  if (!laid) throw new Error('no panel');
  const faces = 2 * (197 * 157 - 20 * 37 * 37);
  const walls = 20 * 4 * 37 * 10;
  // the frame bounds the outer cells: its walls are not the lattice's, whose strips end on it
  const frameWalls = 2 * (5 * 37 + 4 * 37) * 10;
  const ends = 2 * (3 + 4) * 30;
  expect(coatedArea(laid)).toBeCloseTo(faces + walls - frameWalls + ends, 6);
});

describe('what it takes', () => {
  test('coats × area ÷ coverage, and by the loss more: ÷ 0.8', () => {
    const { finish } = planOf([panel], { work: workOf({ finish: oil, copies: 2 }) });
    const area = finish?.areaMm2 ?? 0;
    expect(finish).toMatchObject({ finish: 'oil', coats: 3, recoatMin: 240 });
    expect(finish?.volumeMl).toBe(Math.ceil((1000 * 3 * area) / 1e6 / 12 / 0.8));
    const single = planOf([panel], { work: workOf({ finish: oil }) }).finish;
    expect(area).toBeCloseTo(2 * (single?.areaMm2 ?? 0), 6);
  });

  test('masks first, seals open-pored wood, and warns of rags', () => {
    const order = planOf([panel], { work: workOf({ finish: oil }) }).finish?.order ?? [];
    expect(order[0]).toContain('Mask every face that is still to be glued');
    expect(order[1]).toContain('white_ash is open-pored');
    expect(order.join(' ')).toContain('4 h between');
    const { cautions } = planOf([panel], { work: workOf({ finish: oil }) });
    expect(cautions.find(({ step }) => step === 'finish')?.text).toMatch(/rags .* data sheet/);
  });

  test('none is an answer, silence is none', () => {
    expect(planOf([panel], { work: workOf({ finish: 'none' }) }).finish).toMatchObject({ finish: null, volumeMl: 0 });
    expect(planOf([panel]).finish).toBeNull();
  });
});
