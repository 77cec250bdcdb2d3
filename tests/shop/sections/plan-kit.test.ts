/** A class of twelve: bags, the teacher's box, jigs and the student's card. */
import { lengthText } from '../../../server/words/figures.ts';
import { describe, expect, test } from 'vitest';
import type { Kit } from '../../../server/design/work-model.ts';
import type { ShopPlan } from '../../../server/shop/shop-plan.ts';
import {
  benchOf,
  cellsShape,
  fillOf,
  gridOf,
  kitOf,
  panelOf,
  squareHemp,
  stripStock,
  tipOf45,
} from '../../design-builder.ts';
import { planOf } from '../planned.ts';

const stock = stripStock('ash', 3, { spare: 0.1 });
const coaster = (copies: number) =>
  panelOf(gridOf('square', 30, stock), cellsShape(3, 3), {
    edge: 'sawn',
    copies,
    fills: [fillOf('square', squareHemp([tipOf45]), stock)],
  });

function planFor(more: Partial<Kit>, copies = 12): ShopPlan {
  const panel = coaster(copies);
  return planOf([panel], { kits: [kitOf(panel, more)], benches: [benchOf({ kerf: 3, trim: 2 })] });
}
const kitFor = (more: Partial<Kit>, copies = 12) => {
  const { kit } = planFor(more, copies);
  if (!kit) throw new Error('no kit');
  return kit;
};

describe('bags and box', () => {
  test('a bag holds one coaster: nine cells of seven pieces, four strips a way', () => {
    const counts = kitFor({}).bag.map(({ n }) => n);
    expect(counts.reduce((sum, n) => sum + n, 0)).toBe(9 * 7 + 8);
  });

  test('bags, their spares and the box are what is cut: needed + spare = cut', () => {
    const plan = planFor({ sparesPerBag: 2, sparesWithTeacher: 7 });
    for (const { mark, make, spare, total } of [...plan.pieces, ...plan.strips]) {
      const bag = plan.kit?.bag.find((each) => each.mark === mark);
      const box = plan.kit?.teacherBox.find((each) => each.mark === mark);
      expect(12 * (bag?.n ?? 0)).toBe(make);
      expect(12 * (bag?.spare ?? 0) + (box?.n ?? 0)).toBe(spare);
      expect(12 * ((bag?.n ?? 0) + (bag?.spare ?? 0)) + (box?.n ?? 0)).toBe(total);
    }
  });

  test('without stated spares the stock’s own go into the box', () => {
    const plan = planFor({});
    for (const { mark, spare } of plan.pieces)
      expect(plan.kit?.teacherBox.find((each) => each.mark === mark)?.n).toBe(spare);
  });

  /**
   * Nine diagonals, one in ten breaks. Cumulative binomial tables: of 14 no more than 5 fail with 0.9985, in all twelve
   * bags with 0.982; of 13 no more than 4 with 0.9935, in all bags with 0.925. Pooled, 108 of 12 students are far cheaper than twelve times five spares.
   */
  test('pooled spares are fewer than spares in every bag', () => {
    const { spares, confidencePct, breakagePct } = kitFor({ breakage: 0.1 });
    expect([confidencePct, breakagePct]).toEqual([95, 10]);
    const diagonal = spares.find(({ needed }) => needed === 9 * 12);
    expect(diagonal?.perBag).toBe(12 * 14);
    expect(diagonal?.pooled).toBeGreaterThan(108 / 0.9);
    expect(diagonal?.pooled).toBeLessThan(135);
    for (const { needed, perBag, pooled } of spares) {
      expect(pooled).toBeGreaterThanOrEqual(needed);
      expect(perBag).toBeGreaterThanOrEqual(pooled);
    }
  });
});

describe('what is done, and what the class does', () => {
  test('labels say how far each piece is', () => {
    const labels = kitFor({ done: ['milled', 'notched', 'cut'] }).bag.map(({ label }) => label);
    expect(labels.find((label) => label.includes('strip'))).toMatch(
      /^S\S*: 8 × strip, 102\.0 mm, notched, cut to length$/,
    );
    expect(labels.find((label) => label.includes('diagonal'))).toMatch(/cut to length$/);
  });

  test('rough pieces are longer by the trim until their bevels are cut', () => {
    const longest = (more: Partial<Kit>): number =>
      Math.max(
        ...kitFor(more)
          .bag.filter(({ label }) => label.includes('diagonal'))
          .map(({ lengthMm }) => lengthMm),
      );
    expect(longest({ done: ['cut'] }) - longest({ done: ['cut', 'bevelled'] })).toBeCloseTo(4, 9);
  });

  test('bags are packed where the shop’s part ends, and what follows is the class’s', () => {
    const titles = (more: Partial<Kit>): string[] => planFor(more).steps.map(({ title }) => title);
    const before = (list: string[]): string | undefined => list[list.indexOf('fill the bags') - 1];
    expect(before(titles({ done: ['milled', 'notched', 'cut'] }))).toBe('cut to length');
    expect(before(titles({ done: ['cut', 'bevelled'] }))).toBe('cut infill');
  });

  test('two to a set make six sets; with bevels cut there is nothing to jig', () => {
    expect(kitFor({}).jigs).toMatchObject({ sets: 6, studentsPerSet: 2 });
    expect(kitFor({ students: 13 }).jigs.sets).toBe(7);
    expect(kitFor({}).jigs.jigs.length).toBeGreaterThan(0);
    expect(kitFor({ done: ['bevelled'] }).jigs.jigs).toEqual([]);
  });

  test('the card counts the bag, says each jig, checks the size and ends with the gate', () => {
    const { card, jigs } = kitFor({ done: ['milled', 'notched', 'cut'] });
    expect(card[0]).toMatch(/^Count the bag: .*; 71 go in\.$/);
    for (const { stopMm, keys } of jigs.jigs)
      expect(card.join('\n')).toContain(`stop at ${lengthText(stopMm, 'mm', keys ? 'key' : 'length')}`);
    expect(card.join('\n')).toContain('3 cells along a strip measure 90.0 mm');
    expect(card.join('\n')).toContain('square_hemp');
    expect(card.join('\n')).not.toContain('Notch the strips');
  });

  test('one is made for each student, whatever the copies; more than the class needs is said, and so is a second class', () => {
    expect(kitFor({}).problems).toEqual([]);
    expect(planFor({}, 1)).toMatchObject({ panels: [{ copies: 1, quantity: 12 }] });
    expect(planFor({}, 1).pieces).toEqual(planFor({}, 12).pieces);
    expect(kitFor({}, 13).problems.join()).toContain('13 of blade are made and 12 go into the bags');
    const panel = coaster(12);
    const { kit } = planOf([panel], { kits: [kitOf(panel), { ...kitOf(panel), name: 'evening' }] });
    expect(kit?.problems.join()).toContain('evening is left out');
  });
});
