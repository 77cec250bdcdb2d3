/**
 * A cutting problem in whole numbers. A piece's weight is its length plus one kerf and a stick's room its length
 * less both trims plus one kerf, so that a filling fits exactly when its weights do not exceed the room.
 */

/** Pieces of one length. */
export interface PieceSize {
  readonly weight: number;
  readonly demand: number;
}

/** One length of stick. */
export interface StickType {
  readonly room: number;
  /** Whole number. */
  readonly cost: number;
  /** Sticks there are, Infinity where more can be bought. */
  readonly limit: number;
  /** Whether it is one of those that `mostSticks` limits. */
  readonly counted: boolean;
}

export interface CuttingTask {
  /** Heaviest first. */
  readonly sizes: readonly PieceSize[];
  readonly sticks: readonly StickType[];
  /** Most sticks of all counted types together, Infinity where it does not matter. */
  readonly mostSticks: number;
}

/** One filling of a stick: `counts` in the order of the task's sizes. */
export interface Pattern {
  readonly stick: number;
  readonly counts: readonly number[];
}

export interface PatternUse {
  readonly pattern: Pattern;
  readonly count: number;
}

/** Ways of cutting that together cover the demand, maybe with pieces to spare. */
export type CuttingPlan = readonly PatternUse[];

export const patternKey = ({ stick, counts }: Pattern): string => `${stick}:${counts.join(',')}`;

export function planCost(task: CuttingTask, plan: CuttingPlan): number {
  return plan.reduce((sum, { pattern, count }) => sum + count * (task.sticks[pattern.stick]?.cost ?? 0), 0);
}

export function sticksUsed(plan: CuttingPlan): number {
  return plan.reduce((sum, { count }) => sum + count, 0);
}

/** How many of a plan's sticks `mostSticks` limits. */
export function sticksCounted(task: CuttingTask, plan: CuttingPlan): number {
  return sticksUsed(plan.filter(({ pattern }) => task.sticks[pattern.stick]?.counted === true));
}

/** The greatest common divisor; that of nothing is 0. */
export function commonDivisor(values: readonly number[]): number {
  return values.reduce((divisor, value) => {
    let [larger, smaller] = [divisor, value];
    while (smaller !== 0) [larger, smaller] = [smaller, larger % smaller];
    return larger;
  }, 0);
}

/** What `plan` leaves to be cut, with the sticks it leaves: the same sizes, their demand lowered. */
export function remainingTask(task: CuttingTask, plan: CuttingPlan): CuttingTask {
  const demand = task.sizes.map((size) => size.demand);
  const limits = task.sticks.map(({ limit }) => limit);
  for (const { pattern, count } of plan) {
    pattern.counts.forEach((cut, size) => (demand[size] = Math.max(0, (demand[size] ?? 0) - cut * count)));
    limits[pattern.stick] = (limits[pattern.stick] ?? 0) - count;
  }
  return {
    sizes: task.sizes.map(({ weight }, index) => ({ weight, demand: demand[index] ?? 0 })),
    sticks: task.sticks.map((stick, index) => ({ ...stick, limit: limits[index] ?? 0 })),
    mostSticks: task.mostSticks - sticksCounted(task, plan),
  };
}

/** `pattern` without the pieces nobody wants; null when nothing is left of it. */
export function clippedPattern(task: CuttingTask, pattern: Pattern): Pattern | null {
  const counts = pattern.counts.map((count, size) => Math.min(count, task.sizes[size]?.demand ?? 0));
  return counts.some((count) => count > 0) ? { stick: pattern.stick, counts } : null;
}

/** Whether the plan keeps to the sticks there are and covers every demand. */
export function isWholePlan(task: CuttingTask, plan: CuttingPlan): boolean {
  const rest = remainingTask(task, plan);
  return (
    rest.mostSticks >= 0 &&
    rest.sticks.every(({ limit }) => limit >= 0) &&
    rest.sizes.every(({ demand }) => demand === 0)
  );
}
