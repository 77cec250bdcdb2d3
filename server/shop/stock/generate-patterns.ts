/** Column generation (Gilmore & Gomory 1961): asks the prices of the master which filling is worth most, adds it, repeats. */
import { arithmeticTolerance } from '../../geometry/tolerance.ts';
import type { CuttingTask, Pattern } from './cutting-task.ts';
import { type DualBound, dualBound, nextPossible } from './dual-bound.ts';
import type { MasterSolution, PatternProgram } from './pattern-program.ts';
import { priceFilling, type PricedFilling } from './price-filling.ts';
import type { Watch } from './watch.ts';
import { worthsOf, worthUnit } from './worths.ts';

export interface Generation {
  /** The master's last solution, null when it was never solved. */
  readonly master: MasterSolution | null;
  /** The highest bound met, with the worths it comes from; null when there is none. */
  readonly best: (DualBound & { readonly worths: readonly number[] }) | null;
}

/**
 * Adds patterns until none lowers the cost or the watch says stop; unless `toTheEnd`, also when the bound cannot
 * rise to another whole number.
 */
export async function generatePatterns(
  task: CuttingTask,
  program: PatternProgram,
  watch: Watch,
  toTheEnd: boolean,
): Promise<Generation> {
  let best: Generation['best'] = null;
  let master: MasterSolution | null = null;
  while (watch.interruption() === null) {
    const next = program.solve();
    if (!next) break;
    master = next;
    const worths = worthsOf(task, master.prices.sizes);
    const priced = task.sticks.map(({ room }) => priceFilling(itemsOf(task, worths, room), room));
    const ceilings = priced.map(({ ceiling }) => ceiling);
    const met = dualBound(task, worths, ceilings);
    if (!best || met.bound > best.bound) best = { ...met, worths };
    const better = priced.flatMap((filling, stick) => betterPattern(task, master, filling, stick));
    const added = better.filter((pattern) => program.add(pattern));
    if (added.length === 0 || (!toTheEnd && nextPossible(best.bound) >= master.value)) break;
    await watch.rest();
  }
  return { master, best };
}

function itemsOf(task: CuttingTask, worths: readonly number[], room: number) {
  return task.sizes.map(({ weight, demand }, size) => ({
    weight,
    worth: worths[size] ?? 0,
    most: Math.min(demand, Math.floor(room / weight)),
  }));
}

/** The filling as a pattern when it is worth more than its stick. */
function betterPattern(
  task: CuttingTask,
  master: MasterSolution | null,
  { worth, counts }: PricedFilling,
  stick: number,
): Pattern[] {
  const type = task.sticks[stick];
  if (!type || type.limit <= 0) return [];
  const cost = (type.cost - (master?.prices.sticks[stick] ?? 0)) * worthUnit(task);
  return worth > cost * (1 + arithmeticTolerance) ? [{ stick, counts }] : [];
}
