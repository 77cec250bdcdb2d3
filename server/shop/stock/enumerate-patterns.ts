/**
 * Every pattern that a plan better than the one known could use: those whose reduced cost is no more than the gap
 * (reduced-cost fixing). Where they are few, the whole-number search among them settles the task for good.
 */
import type { CuttingTask, Pattern } from './cutting-task.ts';

export interface PatternDemand {
  /** By size. */
  readonly worths: readonly number[];
  /** Least worth a filling of each stick type must have. */
  readonly least: readonly number[];
  readonly mostPatterns: number;
  readonly mostSteps: number;
}

/** Fillings to which no piece can be added, by stick type; null when there are too many. */
export function enumeratePatterns(task: CuttingTask, demand: PatternDemand): Pattern[] | null {
  const { worths, least, mostPatterns, mostSteps } = demand;
  const order = task.sizes
    .map(({ weight, demand: most }, size) => ({ weight, most, worth: worths[size] ?? 0, size }))
    .filter(({ most }) => most > 0)
    .sort((a, b) => b.worth * a.weight - a.worth * b.weight || a.size - b.size);
  const found: Pattern[] = [];
  const counts = task.sizes.map(() => 0);
  let steps = 0;

  function descend(stick: number, depth: number, space: number, missing: number): void {
    steps += 1;
    if (steps > mostSteps || found.length > mostPatterns) return;
    const item = order[depth];
    if (!item) {
      const canTakeMore = order.some(({ weight, most, size }) => weight <= space && (counts[size] ?? 0) < most);
      if (missing <= 0 && !canTakeMore) found.push({ stick, counts: [...counts] });
      return;
    }
    if (space * item.worth < missing * item.weight) return;
    for (let taken = Math.min(item.most, Math.floor(space / item.weight)); taken >= 0; taken--) {
      counts[item.size] = taken;
      descend(stick, depth + 1, space - taken * item.weight, missing - taken * item.worth);
    }
    counts[item.size] = 0;
  }
  for (const [stick, { room, limit }] of task.sticks.entries()) {
    if (limit > 0) descend(stick, 0, room, least[stick] ?? 0);
  }
  return steps > mostSteps || found.length > mostPatterns ? null : found;
}
