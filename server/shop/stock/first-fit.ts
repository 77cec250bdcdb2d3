/** First-fit decreasing: every piece, longest first, into the first stick begun that has room for it. */
import {
  type CuttingPlan,
  type CuttingTask,
  patternKey,
  type PatternUse,
  planCost,
  type StickType,
} from './cutting-task.ts';

interface BegunStick {
  readonly type: number;
  space: number;
  readonly counts: number[];
}

/** With new sticks taken from `order`, the first with room that is left; null when they run out. */
export function firstFitDecreasing(task: CuttingTask, order: readonly number[]): CuttingPlan | null {
  const begun: BegunStick[] = [];
  const left = task.sticks.map(({ limit }) => limit);
  let countedLeft = task.mostSticks;
  for (const [size, { weight, demand }] of task.sizes.entries()) {
    let first = 0;
    for (let piece = 0; piece < demand; piece++) {
      while (first < begun.length && (begun[first]?.space ?? 0) < weight) first += 1;
      let stick = begun[first];
      if (!stick) {
        const type = order.find((at) => (left[at] ?? 0) > 0 && canTake(task.sticks[at], weight, countedLeft));
        if (type === undefined) return null;
        stick = { type, space: task.sticks[type]?.room ?? 0, counts: task.sizes.map(() => 0) };
        left[type] = (left[type] ?? 0) - 1;
        if (task.sticks[type]?.counted) countedLeft -= 1;
        begun.push(stick);
      }
      stick.space -= weight;
      stick.counts[size] = (stick.counts[size] ?? 0) + 1;
    }
  }
  return gathered(begun.map(({ type, counts }) => ({ pattern: { stick: type, counts }, count: 1 })));
}

const canTake = (stick: StickType | undefined, weight: number, countedLeft: number): boolean =>
  stick !== undefined && stick.room >= weight && (!stick.counted || countedLeft > 0);

/** Equal patterns as one, in the order met. */
export function gathered(plan: CuttingPlan): CuttingPlan {
  const uses = new Map<string, PatternUse>();
  for (const { pattern, count } of plan) {
    const key = patternKey(pattern);
    uses.set(key, { pattern, count: count + (uses.get(key)?.count ?? 0) });
  }
  return [...uses.values()];
}

/** The cheapest of the first-fit plans that begin with each type in turn, the rest by falling or rising room. */
export function bestFirstFit(task: CuttingTask): CuttingPlan | null {
  const types = task.sticks.map((_, index) => index);
  const room = (type: number): number => task.sticks[type]?.room ?? 0;
  const falling = [...types].sort((a, b) => room(b) - room(a));
  const orders = types.flatMap((first) =>
    [falling, [...falling].reverse()].map((rest) => [first, ...rest.filter((type) => type !== first)]),
  );
  let best: CuttingPlan | null = null;
  for (const order of orders) {
    const plan = firstFitDecreasing(task, order);
    if (plan && (!best || planCost(task, plan) < planCost(task, best))) best = plan;
  }
  return best;
}
