/**
 * The most valuable filling of one stick by dynamic programming over its room: the bounded knapsack, each size
 * split into lots of 1, 2, 4 … pieces (Martello & Toth, Knapsack Problems, 1990, §3.2 and §2.6).
 */
import { commonDivisor } from './cutting-task.ts';

/** A size as the knapsack sees it; all whole numbers, `most` the pieces that may be taken. */
export interface KnapsackItem {
  readonly weight: number;
  readonly worth: number;
  readonly most: number;
}

/** A filling; `counts` in the order of the items. */
export interface Filling {
  readonly worth: number;
  readonly counts: readonly number[];
}

interface Lot {
  readonly item: number;
  readonly pieces: number;
  readonly weight: number;
  readonly worth: number;
}

function lotsOf(items: readonly KnapsackItem[]): Lot[] {
  return items.flatMap(({ weight, worth, most }, item) => {
    const lots: Lot[] = [];
    for (let left = worth > 0 ? most : 0, next = 1; left > 0; left -= next, next *= 2) {
      const pieces = Math.min(next, left);
      lots.push({ item, pieces, weight: weight * pieces, worth: worth * pieces });
      next = pieces;
    }
    return lots;
  });
}

/** Cells of the table that `fillByTable` would fill. */
export function tableSize(items: readonly KnapsackItem[], room: number): number {
  const divisor = commonDivisor(items.map(({ weight }) => weight)) || 1;
  return lotsOf(items).length * (Math.floor(room / divisor) + 1);
}

/** The best filling there is. Time and memory grow with `tableSize`. */
export function fillByTable(items: readonly KnapsackItem[], room: number): Filling {
  const divisor = commonDivisor(items.map(({ weight }) => weight)) || 1;
  const lots = lotsOf(items);
  const width = Math.floor(room / divisor) + 1;
  const best = new Float64Array(width);
  const taken = new Uint8Array(width * lots.length);
  lots.forEach((lot, row) => {
    const weight = lot.weight / divisor;
    for (let space = width - 1; space >= weight; space--) {
      const worth = (best[space - weight] ?? 0) + lot.worth;
      if (worth > (best[space] ?? 0)) {
        best[space] = worth;
        taken[row * width + space] = 1;
      }
    }
  });
  const counts = items.map(() => 0);
  let space = width - 1;
  for (let row = lots.length - 1; row >= 0; row--) {
    const lot = lots[row];
    if (!lot || taken[row * width + space] === 0) continue;
    counts[lot.item] = (counts[lot.item] ?? 0) + lot.pieces;
    space -= lot.weight / divisor;
  }
  return { worth: best[width - 1] ?? 0, counts };
}
