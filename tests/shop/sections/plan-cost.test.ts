/** Time and money by hand: worked examples of margin, mark-up and commission as they are common practice. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Money } from '../../../server/design/material-model.ts';
import type { StepName } from '../../../server/design/names/step-names.ts';
import type { LabourRate, Work } from '../../../server/design/work-model.ts';
import { toCoins } from '../../../server/shop/money.ts';
import { moneyText } from '../../../server/words/figures.ts';
import { daysFor } from '../../../server/shop/sections/plan-labour.ts';
import type { PlanCost } from '../../../server/shop/sections/work-sections.ts';
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
} from '../../design-builder.ts';
import { cutPlanOf, planOf } from '../planned.ts';

const euros = (amount: number): Money => ({ amount, currency: 'EUR' });
const rate = (step: StepName, minutes: number, per: LabourRate['per'], wait = 0): LabourRate => ({
  step,
  minutes,
  per,
  wait,
});

/** Framed square lattice, pitch 100, 6 × 11 cells: ten sticks of 1200 at 4.00 for one copy, and 300 min at 30.00. */
const ash = stripStock('ash', 3, { lengths: [{ length: 1200, price: euros(4) }] });
const panel = panelOf(gridOf('square', 100, ash), cellsShape(6, 11), { edge: 'framed' });
const benches = [benchOf({ kerf: 3 })];
const costOf = async (more: Partial<Work>): Promise<PlanCost> => {
  const work = workOf({ hourly: euros(30), labour: [rate('assemble', 300, 'copy')], packing: euros(10), ...more });
  return (await cutPlanOf([panel], { benches, work })).cost;
};

describe('the price of a copy', () => {
  test('40 of wood, 5 h at 30 and 10 of packing cost 200', async () => {
    const cost = await costOf({});
    expect(cost.lines).toEqual([
      { kind: 'material', what: 'sticks of ash', perCopy: 40 },
      { kind: 'labour', what: '5 h at 30.00 EUR', perCopy: 150 },
      { kind: 'packing', what: 'packing', perCopy: 10 },
    ]);
    expect(cost).toMatchObject({
      currency: 'EUR',
      costPerCopy: 200,
      pricePerCopy: 200,
      editionPrice: 200,
      problems: [],
    });
  });

  test('a margin of 40 % is of the price: 333.33; a mark-up of 40 % of the cost: 280.00', async () => {
    expect((await costOf({ gain: { kind: 'margin', share: 0.4 } })).pricePerCopy).toBe(333.33);
    const markup = await costOf({ gain: { kind: 'markup', share: 0.4 } });
    expect(markup.pricePerCopy).toBe(280);
    expect(markup.lines.at(-1)).toEqual({ kind: 'gain', what: 'mark-up, 40 % of the cost', perCopy: 80 });
  });

  test('a margin m is a mark-up of m ÷ (1 − m)', async () => {
    const margin = await costOf({ gain: { kind: 'margin', share: 0.6 } });
    const markup = await costOf({ gain: { kind: 'markup', share: 1.5 } });
    expect(margin.pricePerCopy).toBe(500);
    expect(markup.pricePerCopy).toBe(500);
  });

  test('a gallery’s 50 % is of the price before tax: twice the price, and tax comes on top of that', async () => {
    const cost = await costOf({ gain: { kind: 'markup', share: 0.5 }, commission: 0.5, tax: 0.2 });
    expect(cost).toMatchObject({ costPerCopy: 200, pricePerCopy: 600, taxPerCopy: 120, buyerPaysPerCopy: 720 });
    expect(cost.direct).toEqual({ pricePerCopy: 300, buyerPaysPerCopy: 360 });
    expect(cost.lines.map(({ kind, perCopy }) => [kind, perCopy]).slice(3)).toEqual([
      ['gain', 100],
      ['commission', 300],
      ['tax', 120],
    ]);
  });

  /** Packing makes up a cost of 1138.25: net 1138.25 / 0.65; ÷ 0.6 before tax, ÷ (1 − 0.4 · 1.2) of the buyer's price. */
  test('commission on the price before tax, or on what the buyer pays: the buyer’s price by hand', async () => {
    const sold = {
      packing: euros(1138.25 - 190),
      gain: { kind: 'margin', share: 0.35 } as const,
      commission: 0.4,
      tax: 0.2,
    };
    const direct = { pricePerCopy: 1751.15, buyerPaysPerCopy: 2101.38 };
    const before = await costOf({ ...sold, commissionOf: 'before_tax' });
    expect(before).toMatchObject({ costPerCopy: 1138.25, pricePerCopy: 2918.59, buyerPaysPerCopy: 3502.31, direct });
    expect(before.lines.find(({ kind }) => kind === 'commission')).toEqual({
      kind: 'commission',
      what: 'commission, 40 % of the price before tax',
      perCopy: 1167.44,
    });
    const ofBuyer = await costOf({ ...sold, commissionOf: 'buyer_price' });
    expect(ofBuyer).toMatchObject({ pricePerCopy: 3367.6, buyerPaysPerCopy: 4041.12, direct });
    expect(ofBuyer.lines.find(({ kind }) => kind === 'commission')).toEqual({
      kind: 'commission',
      what: 'commission, 40 % of what the buyer pays, tax in it',
      perCopy: 1616.45,
    });
  });

  test('90 % of what the buyer pays, with 20 % tax in it, leaves nothing to sell', async () => {
    const cost = await costOf({ commission: 0.9, commissionOf: 'buyer_price', tax: 0.2 });
    expect(cost).toMatchObject({ lines: [], pricePerCopy: null });
    expect(cost.problems[0]).toContain('leaves nothing to sell');
  });

  test('of eight copies one is lost: the seven sold pay for it', async () => {
    expect((await costOf({ losses: 0.125 })).costPerCopy).toBe(228.57);
  });

  test('every line adds up to the price, to the coin, and the edition is the price times its copies', async () => {
    const cost = await costOf({ copies: 3, gain: { kind: 'margin', share: 0.37 }, commission: 0.33, losses: 0.07 });
    const all = cost.lines.reduce((sum, { perCopy }) => sum + perCopy, 0);
    expect(toCoins(all, 'EUR')).toBe(cost.pricePerCopy);
    expect(cost.buyerPaysPerCopy).toBe(cost.pricePerCopy);
    expect(cost.editionPrice).toBe(toCoins(3 * (cost.pricePerCopy ?? 0), 'EUR'));
  });

  test('two currencies are not added up; what has no price is said', async () => {
    const mixed = await costOf({ packing: { amount: 10, currency: 'USD' } });
    expect(mixed).toMatchObject({ lines: [], pricePerCopy: null });
    expect(mixed.problems).toEqual([expect.stringContaining('EUR and USD')]);
    const { cost } = planOf([panel], { benches, work: workOf({ hourly: euros(30), packing: euros(10) }) });
    expect(cost.problems).toEqual(['No minutes are stated, so no work is in the cost.']);
    expect(cost.costPerCopy).toBe(10);
  });

  test('shares that leave nothing to sell are refused', async () => {
    const cost = await costOf({ gain: { kind: 'margin', share: 1 }, commission: 1.2 });
    expect(cost).toMatchObject({ lines: [], pricePerCopy: null });
    expect(cost.problems).toHaveLength(2);
    expect(cost.problems[0]).toContain('make it less than 100 %');
  });

  test('coins follow the currency: yen have no hundredths (ISO 4217)', () => {
    expect([toCoins(12.345, 'EUR'), toCoins(12.345, 'JPY'), toCoins(12.3456, 'KWD')]).toEqual([12.35, 12, 12.346]);
    expect(moneyText(12, 'JPY')).toBe('12 JPY');
    expect(moneyText(12, 'EUR')).toBe('12.00 EUR');
    expect(moneyText(12, 'Taler')).toBe('12.00 Taler');
  });
});

describe('time', () => {
  const stock = stripStock('ash', 3, { spare: 0.1 });
  const filled = panelOf(gridOf('square', 40, stock), cellsShape(5, 4), {
    edge: 'framed',
    copies: 2,
    fills: [fillOf('square', squareHemp([tipOf45]), stock)],
  });
  const labourOf = (...labour: LabourRate[]) => {
    const plan = planOf([filled], { benches: [benchOf({ kerf: 3, gang: 5 })], work: workOf({ copies: 3, labour }) });
    return { plan, labour: plan.labour };
  };

  test('units are counted for the whole edition, gangs counted in, and spares where they are made', () => {
    const { plan, labour } = labourOf(
      rate('notch strips', 1, 'pass'),
      rate('notch strips', 5, 'setting'),
      rate('cut infill', 0.5, 'piece'),
      rate('fill the lattice', 2, 'cell'),
      rate('assemble', 4, 'strip'),
      rate('pack', 10, 'copy'),
      rate('measure', 15, 'work'),
    );
    const rows = plan.settings.filter(({ step }) => step === 'notch strips');
    const passes = rows.reduce((sum, { notching }) => sum + (notching?.passes ?? 0), 0);
    const total = (list: readonly { total: number }[]): number => list.reduce((sum, each) => sum + each.total, 0);
    expect(labour.lines.map(({ units }) => units)).toEqual([
      passes,
      rows.length,
      total(plan.pieces),
      2 * 3 * 20,
      plan.strips.reduce((sum, { make }) => sum + make, 0),
      3,
      1,
    ]);
    const stepOf = (title: string) => plan.steps.find((step) => step.title === title);
    expect(stepOf('notch strips')?.handsOnMin).toBe(passes + 5 * rows.length);
    expect(stepOf('pack')?.handsOnMin).toBe(30);
    expect(stepOf('cut to length')?.handsOnMin).toBeNull();
    expect(labour.notStated).toContain('cut to length');
    expect(labour.handsOnMin).toBe(labour.lines.reduce((sum, { minutes }) => sum + minutes, 0));
  });

  test('a gang of five pushes ceil(strips / 5) times the notches', () => {
    const { plan } = labourOf();
    const [row] = plan.settings.filter(({ notching }) => notching !== null);
    expect(row?.notching?.passes).toBe(Math.ceil((row?.pieces ?? 0) / 5) * (row?.notching?.notches ?? 0));
  });

  test('nothing stated is not known, not nothing', () => {
    expect(labourOf().labour).toMatchObject({ handsOnMin: null, elapsedDays: null, waitH: 0 });
  });

  test('waits: glue as stated, coats by their recoat', () => {
    const finish = { name: 'oil', range: { start: 0, end: 0 }, nameRange: { start: 0, end: 0 } };
    const work = workOf({
      labour: [rate('frame', 20, 'copy', 90)],
      finish: { ...finish, coverage: 10, coats: 3, loss: 0, recoat: 480, price: null },
    });
    const { steps, labour } = planOf([filled], { work });
    expect(steps.find(({ title }) => title === 'frame')?.waitH).toBe(1.5);
    expect(steps.find(({ title }) => title === 'finish')?.waitH).toBe(24);
    expect(labour.waitH).toBe(25.5);
  });

  test('days: hands rest at night, glue does not', () => {
    expect(daysFor([{ hands: 8, wait: 0 }])).toBe(1);
    expect(daysFor([{ hands: 8.5, wait: 0 }])).toBe(2);
    expect(
      daysFor([
        { hands: 4, wait: 12 },
        { hands: 4, wait: 0 },
      ]),
    ).toBe(2);
    expect(daysFor([{ hands: 1, wait: 72 }])).toBe(4);
    expect(daysFor([])).toBe(0);
  });

  test('days are no fewer than hands and waits alone would need', () => {
    const span = fc.record({ hands: fc.integer({ min: 0, max: 40 }), wait: fc.integer({ min: 0, max: 60 }) });
    fc.assert(
      fc.property(fc.array(span, { maxLength: 8 }), (spans) => {
        const hands = spans.reduce((sum, each) => sum + each.hands, 0);
        const waits = spans.reduce((sum, each) => sum + each.wait, 0);
        const days = daysFor(spans);
        expect(days).toBeGreaterThanOrEqual(Math.ceil((hands + waits) / 24));
        expect(days).toBeGreaterThanOrEqual(Math.ceil(hands / 8));
        expect(days).toBeLessThanOrEqual(Math.ceil(hands / 8) + Math.ceil(waits / 24) + spans.length + 1);
      }),
      { numRuns: 100 },
    );
  });
});
