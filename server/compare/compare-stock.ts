/** How many sticks more or fewer each stock takes. The patterns they are cut in are left aside: several may be equally good. */
import { samePlanFigure } from '../geometry/tolerance.ts';
import type { PlanStock } from '../shop/shop-plan.ts';
import type { StockChange, StockFigures } from './design-change.ts';

export function compareStock(old: readonly PlanStock[], now: readonly PlanStock[]): StockChange[] {
  const names = [...new Set([...now, ...old].map(({ stock }) => stock))];
  return names.flatMap((name): StockChange[] => {
    const before = old.find(({ stock }) => stock === name);
    const after = now.find(({ stock }) => stock === name);
    if (before && after && sameStock(before, after)) return [];
    return [
      {
        change: before && after ? 'changed' : after ? 'new' : 'gone',
        stock: name,
        more: (after?.sticksUsed ?? 0) - (before?.sticksUsed ?? 0),
        old: before ? figuresOf(before) : null,
        new: after ? figuresOf(after) : null,
      },
    ];
  });
}

/** Equal totals count as the same plan even where the search took other lengths to the same end. */
const sameStock = (a: PlanStock, b: PlanStock): boolean =>
  a.sticksUsed === b.sticksUsed &&
  samePlanFigure(a.stickMm, b.stickMm) &&
  samePlanFigure(a.needMm, b.needMm) &&
  samePlanFigure(a.cost ?? 0, b.cost ?? 0) &&
  (a.cost === null) === (b.cost === null);

function figuresOf({ sticksUsed, sticks, needMm, cost }: PlanStock): StockFigures {
  const byLength: Record<string, number> = {};
  for (const { lengthMm, count } of sticks) byLength[lengthMm] = (byLength[lengthMm] ?? 0) + count;
  return { sticks: sticksUsed, byLength, needMm, cost };
}
