/**
 * A bound below the cost of every cutting plan, from any worths whatever: it needs no trust in the linear program
 * that suggested them. Weak duality; without a limit on sticks it is Farley's bound (Oper. Res. 38, 1990, 922–923).
 */
import { arithmeticTolerance } from '../../geometry/tolerance.ts';
import type { CuttingTask } from './cutting-task.ts';
import { worthUnit } from './worths.ts';

/** `ceilings[t]` is no less than the worth of any filling of stick type t. In units of the objective, not rounded. */
export function dualBound(task: CuttingTask, worths: readonly number[], ceilings: readonly number[]): number {
  const wanted = task.sizes.reduce((sum, { demand }, size) => sum + demand * (worths[size] ?? 0), 0);
  const shortfalls = task.sticks.map(({ cost }, type) => cost * worthUnit - (ceilings[type] ?? 0));
  const endless = shortfalls.filter((_, type) => task.sticks[type]?.limit === Infinity);
  if (task.mostSticks < Infinity) {
    const anyStick = Math.min(0, ...endless);
    const scarce = sumOver(task, (limit, type) => limit * Math.min(0, (shortfalls[type] ?? 0) - anyStick));
    return (wanted + task.mostSticks * anyStick + scarce) / worthUnit;
  }
  const share = task.sticks.reduce((least, { cost, limit }, type) => {
    const ceiling = ceilings[type] ?? 0;
    return limit === Infinity && ceiling > 0 ? Math.min(least, (cost * worthUnit) / ceiling) : least;
  }, 1);
  const scarce = sumOver(task, (limit, type) => {
    const cost = (task.sticks[type]?.cost ?? 0) * worthUnit;
    return limit * Math.min(0, cost - share * (ceilings[type] ?? 0));
  });
  return (share * wanted + scarce) / worthUnit;
}

function sumOver(task: CuttingTask, term: (limit: number, type: number) => number): number {
  return task.sticks.reduce((sum, { limit }, type) => (limit < Infinity ? sum + term(limit, type) : sum), 0);
}

/** The least multiple of `step` that is no less than `bound`: plans cost whole multiples of it. */
export function nextPossible(bound: number, step: number): number {
  const steps = bound / step;
  return step * Math.max(0, Math.ceil(steps - arithmeticTolerance * Math.max(1, Math.abs(steps))));
}
