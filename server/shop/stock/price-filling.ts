/** The most valuable filling of a stick, with a ceiling that no filling exceeds, in bounded time and memory. */
import { commonDivisor } from './cutting-task.ts';
import { fillByTable, tableSize, type Filling, type KnapsackItem } from './knapsack.ts';
import { searchFilling } from './search-filling.ts';

export interface PricedFilling extends Filling {
  /** No filling is worth more; equal to `worth` when the filling is known to be best. */
  readonly ceiling: number;
}

/** A table of this many cells takes milliseconds. */
const smallTable = 400_000;
const largestTable = 8_000_000;
const mostSteps = 100_000;

export function priceFilling(items: readonly KnapsackItem[], room: number): PricedFilling {
  const cells = tableSize(items, room);
  if (cells <= smallTable) return exactly(fillByTable(items, room));
  const nothing = { worth: 0, counts: items.map(() => 0) };
  const searched = searchFilling(items, room, nothing, Infinity, mostSteps);
  if (searched.complete) return exactly(searched);
  if (cells <= largestTable) return exactly(fillByTable(items, room));
  return priceCoarsely(items, room, Math.ceil(cells / largestTable), searched);
}

const exactly = ({ worth, counts }: Filling): PricedFilling => ({ worth, counts, ceiling: worth });

/**
 * Weights in coarser units: rounded down they give a ceiling (every true filling still fits), and the best
 * filling if it fits in truth; rounded up, a filling that fits for certain.
 */
function priceCoarsely(items: readonly KnapsackItem[], room: number, factor: number, found: Filling): PricedFilling {
  const unit = factor * (commonDivisor(items.map(({ weight }) => weight)) || 1);
  const inUnits = (round: (value: number) => number): KnapsackItem[] =>
    items.map((item) => ({ ...item, weight: round(item.weight / unit) }));
  const loose = fillByTable(inUnits(Math.floor), Math.floor(room / unit));
  const weight = items.reduce((sum, item, index) => sum + item.weight * (loose.counts[index] ?? 0), 0);
  if (weight <= room) return exactly(loose);
  const tight = fillByTable(inUnits(Math.ceil), Math.floor(room / unit));
  const best = tight.worth > found.worth ? tight : found;
  return { worth: best.worth, counts: best.counts, ceiling: loose.worth };
}
