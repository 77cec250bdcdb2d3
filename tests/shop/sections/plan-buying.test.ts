/** What is bought, taken from the rack and kept, and what it costs: counted by hand. */
import { describe, expect, test } from 'vitest';
import type { StripStock } from '../../../server/design/design-model.ts';
import type { ShopPlan } from '../../../server/shop/shop-plan.ts';
import { writePlanText } from '../../../server/shop/writers/write-plan-text.ts';
import { benchOf, cellsShape, gridOf, panelOf, stripStock, workOf } from '../../design-builder.ts';
import { cutPlanOf } from '../planned.ts';

const euros = (amount: number) => ({ amount, currency: 'EUR' });
const sold = [{ length: 1200, price: euros(4) }];

/** A framed square lattice, pitch 100, 6 × 11 cells clear inside: five strips of 1097 and ten of 597, so ten sticks of 1200. */
async function planOf(more: Partial<StripStock>): Promise<ShopPlan> {
  const ash = stripStock('ash', 3, { depth: 12, lengths: sold, ...more });
  const panel = panelOf(gridOf('square', 100, ash), cellsShape(6, 11), { edge: 'framed' });
  return cutPlanOf([panel], { benches: [benchOf({ kerf: 3, rippingKerf: 3.2 })], work: workOf({ copies: 1 }) });
}

const lineOf = ({ cost }: ShopPlan, what: string) => cost.lines.find((line) => line.what === what)?.perCopy;

describe('buying', () => {
  test('what milling rejects is bought too: ten sticks are cut of twelve', async () => {
    const plan = await planOf({ rejects: 0.15 });
    expect(plan.stock[0]).toMatchObject({ sticksUsed: 10, cost: 40, currency: 'EUR', rack: [], keep: null });
    expect(plan.stock[0]?.buy).toEqual([{ lengthMm: 1200, count: 12, rejects: 2, price: 4, cost: 48 }]);
    expect(plan.cost.costPerCopy).toBe(48);
    expect(plan.cost.materials).toEqual([
      { line: 'sticks of ash', lengthMm: 1200, quantity: 12, unit: 'stick', price: 4, per: 1, cost: 48 },
    ]);
    expect(writePlanText(plan)).toContain('buy 12 of 1200.0 (2 for rejects), 48.00 EUR');
  });

  test('the rack is charged at its length’s price, and what is bought alone has rejects', async () => {
    // seven to buy; 7 / 0.85 = 8.2, so nine
    const plan = await planOf({ rejects: 0.15, onHand: [{ length: 1200, count: 3 }] });
    expect(plan.stock[0]?.rack).toEqual([{ lengthMm: 1200, count: 3, price: 4, cost: 12 }]);
    expect(plan.stock[0]?.buy).toEqual([{ lengthMm: 1200, count: 9, rejects: 2, price: 4, cost: 36 }]);
    expect([lineOf(plan, 'sticks of ash'), lineOf(plan, 'ash from the rack')]).toEqual([36, 12]);
  });

  test('a length that is not sold has its share of the next longer one’s price, or of the longest one’s', async () => {
    const shorter = await planOf({ onHand: [{ length: 1150, count: 3 }] });
    expect(shorter.stock[0]?.rack).toEqual([{ lengthMm: 1150, count: 3, price: 3.8333, cost: 11.5 }]);
    const longer = await planOf({ onHand: [{ length: 2400, count: 1 }] });
    expect(longer.stock[0]?.rack).toEqual([{ lengthMm: 2400, count: 1, price: 8, cost: 8 }]);
  });

  test('what is ripped from boards is not bought as sticks', async () => {
    const board = {
      ...{ thickness: 12, width: 100, length: 1300, price: euros(30) },
      ...{ thicknessGives: 'depth' as const, rejoint: null },
    };
    const plan = await planOf({ boards: [board] });
    expect(plan.mill[0]?.boards).toMatchObject({ boards: 1, price: 30, cost: 30 });
    expect(plan.stock[0]).toMatchObject({ sticksUsed: 10, buy: [], rack: [] });
    expect(plan.cost.lines.map(({ what, perCopy }) => [what, perCopy])).toEqual([['boards for ash', 30]]);
    const unpriced = await planOf({ boards: [{ ...board, price: null }] });
    expect(unpriced.cost.problems).toContain('boards for ash: no price is stated; it is not in the cost.');
  });

  /** 1200 − 1097 and the cut of 3.1 leave 100 less the breath: written as the stick's end less its cut, 98; two 597 leave nothing. */
  test('off-cuts from a stated length on, and sticks not used, come as a line for the file', async () => {
    const plan = await planOf({ keepOffcuts: 90, onHand: [{ length: 500, count: 2 }] });
    expect(plan.stock[0]?.keep).toEqual({
      overMm: 90,
      onHand: [
        { lengthMm: 500, count: 2 },
        { lengthMm: 98, count: 5 },
      ],
    });
    expect(writePlanText(plan)).toContain('The rack then holds: on_hand 2 of 500, 5 of 98');
    expect((await planOf({ keepOffcuts: 99 })).stock[0]?.keep).toEqual({ overMm: 99, onHand: [] });
  });

  test('what no stick holds is left out of the cost, and that is said', async () => {
    const plan = await planOf({ lengths: [{ length: 1000, price: euros(4) }] });
    const long = plan.strips.find(({ lengthMm }) => lengthMm === 1097)?.mark ?? '';
    expect(plan.stock[0]).toMatchObject({ leftOut: [long], sticksUsed: 10 });
    expect(plan.cost.problems).toEqual([`sticks of ash: none holds ${long}; what those take is not in the cost.`]);
    const none = await planOf({ lengths: [{ length: 500, price: euros(4) }] });
    expect(none.cost.problems).toHaveLength(1);
    expect(none.cost.problems[0]).toContain('none holds S1, S2');
  });
});
