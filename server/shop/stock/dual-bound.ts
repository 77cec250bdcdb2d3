/**
 * A bound below the cost of every cutting plan, from any worths whatever: it needs no trust in the linear program
 * that suggested them. Weak duality; without a limit on sticks it is Farley's bound (Oper. Res. 38, 1990, 922–923).
 */
import { minimum } from '../../geometry/numbers.ts';
import { arithmeticTolerance, stepTolerance } from '../../geometry/tolerance.ts';
import type { CuttingTask } from './cutting-task.ts';
import { worthUnit } from './worths.ts';

export interface DualBound {
  /** In units of the objective, not rounded. */
  readonly bound: number;
  /** The worths times this are prices at which no stick pays more than it costs. */
  readonly share: number;
  /** Cost of a stick of each type and of its scarcity, as a worth. */
  readonly stickWorths: readonly number[];
}

/** `ceilings[t]` is no less than the worth of any filling of stick type t. */
export function dualBound(task: CuttingTask, worths: readonly number[], ceilings: readonly number[]): DualBound {
  const unit = worthUnit(task);
  const isScarce = task.mostSticks < Infinity;
  const types = task.sticks.map(({ cost, limit, counted }, type) => ({
    cost: cost * unit,
    limit,
    isCounted: isScarce && counted,
    ceiling: ceilings[type] ?? 0,
  }));
  const endless = types.filter(({ limit }) => limit === Infinity);
  const shares = endless.flatMap(({ cost, ceiling, isCounted }) => (isCounted || ceiling <= 0 ? [] : cost / ceiling));
  const share = Math.min(1, minimum(shares));
  const losses = endless.flatMap(({ cost, ceiling, isCounted }) => (isCounted ? cost - share * ceiling : []));
  const anyStick = Math.min(0, minimum(losses));
  const ownCosts = types.map(({ cost, isCounted }) => (isCounted ? cost - anyStick : cost));
  const stickWorths = types.map(({ limit, ceiling }, type) =>
    limit === Infinity ? (ownCosts[type] ?? 0) : Math.max(ownCosts[type] ?? 0, share * ceiling),
  );
  const wanted = task.sizes.reduce((sum, { demand }, size) => sum + demand * (worths[size] ?? 0), 0);
  const scarcity = types.reduce((sum, { limit }, type) => {
    const extra = (stickWorths[type] ?? 0) - (ownCosts[type] ?? 0);
    return limit === Infinity ? sum : sum + limit * extra;
  }, 0);
  const allSticks = isScarce ? task.mostSticks * anyStick : 0;
  return { bound: (share * wanted + allSticks - scarcity) / unit, share, stickWorths };
}

/** The least whole cost no less than `bound`, which carries the rounding of arithmetic only. */
export function nextPossible(bound: number): number {
  return Math.max(0, Math.ceil(bound - arithmeticTolerance * Math.max(1, Math.abs(bound))));
}

/** The whole cost that a solver's bound proves: it works to its own tolerance, so only a clear half counts. */
export function provenBySolver(bound: number): number {
  return bound === Infinity ? Infinity : Math.max(0, Math.round(bound - stepTolerance * Math.abs(bound)));
}
