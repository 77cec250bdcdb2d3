/**
 * What pieces are worth to a pricing of patterns: whole multiples of a very small share of the dearest stick's
 * cost, few enough that sums and comparisons of worths are exact.
 */
import { maximum } from '../../geometry/numbers.ts';
import type { CuttingTask } from './cutting-task.ts';

const worthsToADearestStick = 2 ** 22;

/** A piece is worth no more than this many of the dearest sticks, however dear its lack. */
const mostSticksWorth = 2 ** 5;

/** Worth of one unit of the objective. */
export function worthUnit(task: CuttingTask): number {
  return worthsToADearestStick / Math.max(1, maximum(task.sticks.map(({ cost }) => cost)));
}

/** Prices of a linear program (they carry its rounding) as whole worths, never below 0 and never beyond exact arithmetic. */
export function worthsOf(task: CuttingTask, prices: readonly number[]): number[] {
  const unit = worthUnit(task);
  const most = mostSticksWorth * worthsToADearestStick;
  return prices.map((price) => Math.min(most, Math.max(0, Math.floor(price * unit))));
}
