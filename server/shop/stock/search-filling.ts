/**
 * The most valuable filling of one stick by depth-first search, densest size first, a branch given up when even
 * filling its space with the densest size left would not beat the best (Gilmore & Gomory 1963). For rooms too
 * finely divided for a table.
 */
import type { Filling, KnapsackItem } from './knapsack.ts';

export interface SearchedFilling extends Filling {
  /** True when the search went through: no filling is worth more. */
  readonly complete: boolean;
}

/** Looks at no more than `mostSteps` branches, and no further once `target` is reached. */
export function searchFilling(
  items: readonly KnapsackItem[],
  room: number,
  start: Filling,
  target: number,
  mostSteps: number,
): SearchedFilling {
  const order = items
    .map((item, index) => ({ ...item, index }))
    .filter(({ worth, most, weight }) => worth > 0 && most > 0 && weight <= room)
    .sort((a, b) => b.worth * a.weight - a.worth * b.weight || a.index - b.index);
  let best = start.worth;
  let bestCounts = start.counts;
  const counts = items.map(() => 0);
  let steps = 0;

  function descend(depth: number, space: number, worth: number): void {
    steps += 1;
    if (worth > best) {
      best = worth;
      bestCounts = [...counts];
    }
    const item = order[depth];
    if (!item || best >= target || steps >= mostSteps) return;
    for (let taken = Math.min(item.most, Math.floor(space / item.weight)); taken >= 0; taken--) {
      const left = space - taken * item.weight;
      const soFar = worth + taken * item.worth;
      const next = order[depth + 1];
      const reachable = next ? soFar + Math.floor((left * next.worth) / next.weight) : soFar;
      if (reachable <= best) {
        // Taking fewer of the denser size can only lower what is in reach.
        return;
      }
      counts[item.index] = taken;
      descend(depth + 1, left, soFar);
      counts[item.index] = 0;
      if (best >= target || steps >= mostSteps) return;
    }
  }
  descend(0, room, 0);
  return { worth: best, counts: bestCounts, complete: best >= target || steps < mostSteps };
}
