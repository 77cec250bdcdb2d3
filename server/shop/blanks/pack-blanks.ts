/**
 * Cut-outs on the fewest blanks: patterns of compatible places by column generation, priced by an exact search for the
 * worthiest set of places, with a bound that no packing is below (A. A. Farley, Operations Research 38, 1990: the worth
 * of everything wanted over the most that one blank can hold).
 */
import { sum as sumOf } from '../../geometry/numbers.ts';
import { stepTolerance } from '../../geometry/tolerance.ts';
import type { Entry, LinearProgram, LinearSolver } from '../stock/linear-solver.ts';
import type { Watch } from '../stock/watch.ts';
import { conflictCliques, conflictTable, spotCliques } from './conflict-table.ts';
import type { BlankPacking, FilledBlank } from './cut-out.ts';
import { countsOf, firstPacking, firstPatterns, packingOf, type PackingTask, type Pattern } from './packing-task.ts';

/** Branches of one search; the same on every machine. */
const mostNodes = 400;
const mostSeconds = 4;
const mostRounds = 60;

/** A packing at once, without search. */
export const packQuickly = (task: PackingTask): BlankPacking => ({
  blanks: firstPacking(task, firstPatterns(task)),
  bound: task.areaBound,
  homeless: task.homeless,
});

/** The best packing that is found while the watch lasts. */
export async function packBlanks(task: PackingTask, solver: LinearSolver, watch: Watch): Promise<BlankPacking> {
  const search = new PackingSearch(task, watch);
  if (!search.settled()) await search.run(solver);
  return { blanks: search.blanks, bound: search.bound, homeless: task.homeless };
}

interface Priced {
  /** The worthiest set found, null when none was. */
  readonly pattern: Pattern | null;
  readonly worth: number;
  /** No set is worth more. */
  readonly most: number;
}

class PackingSearch {
  private readonly task: PackingTask;
  private readonly watch: Watch;
  private readonly patterns: Pattern[];
  blanks: FilledBlank[];
  bound: number;

  constructor(task: PackingTask, watch: Watch) {
    this.task = task;
    this.watch = watch;
    this.patterns = firstPatterns(task);
    this.blanks = firstPacking(task, this.patterns);
    this.bound = task.areaBound;
    this.report();
  }

  settled(): boolean {
    return this.watch.interruption() !== null || blanksIn(this.blanks) <= this.bound;
  }

  async run(solver: LinearSolver): Promise<void> {
    const { places, conflict, gap } = this.task;
    const cliques = conflictCliques(conflictTable(places.length, conflict), spotCliques(places, gap));
    await solver.withProgram(async (master) => {
      for (const { count } of this.task.cutOuts) master.addRow(count, Infinity);
      for (const pattern of this.patterns) this.addColumn(master, pattern);
      for (let round = 0; round < mostRounds && !this.settled(); round++) {
        const prices = master.solve()?.rowPrices;
        if (!prices) return;
        const { pattern, worth, most } = await this.worthiest(solver, cliques, prices);
        if (!this.task.thinned) this.raise(Math.ceil(this.worthOfAll(prices) / Math.max(1, most) - stepTolerance));
        if (!pattern || worth <= 1 + stepTolerance) break;
        this.patterns.push(pattern);
        this.addColumn(master, pattern);
        await this.watch.rest();
      }
      if (!this.settled()) this.offer(master.solveWhole(this.limits(), null).columns);
    });
  }

  private limits(): { seconds: number; nodes: number } {
    return { seconds: Math.min(mostSeconds, this.watch.secondsLeft()), nodes: mostNodes };
  }

  private raise(bound: number): void {
    this.bound = Math.max(this.bound, bound);
    this.report();
  }

  private offer(times: readonly number[] | null): void {
    const packing = times && packingOf(this.task, this.patterns, times);
    if (!packing || blanksIn(packing) >= blanksIn(this.blanks)) return;
    this.blanks = packing;
    this.report();
  }

  private report(): void {
    this.watch.report({ value: blanksIn(this.blanks), bound: this.bound });
  }

  private addColumn(master: LinearProgram, pattern: Pattern): void {
    const counts = countsOf(this.task, pattern);
    const entries = counts.flatMap((count, kind): Entry[] => (count > 0 ? [[kind, count]] : []));
    master.addColumn(1, Infinity, entries);
  }

  private worthOfAll(prices: readonly number[]): number {
    return sumOf(this.task.cutOuts.map(({ count }, kind) => count * (prices[kind] ?? 0)));
  }

  /** The compatible places whose cut-outs are worth most together at these prices. */
  private async worthiest(
    solver: LinearSolver,
    cliques: readonly (readonly number[])[],
    prices: readonly number[],
  ): Promise<Priced> {
    const { cutOuts, places, kinds } = this.task;
    const priceOf = (place: number): number => prices[kinds[place] ?? 0] ?? 0;
    return solver.withProgram((program) => {
      cliques.forEach(() => program.addRow(-Infinity, 1));
      cutOuts.forEach(({ count }) => program.addRow(-Infinity, count));
      const rows = places.map((_, place): Entry[] => [[cliques.length + (kinds[place] ?? 0), 1]]);
      cliques.forEach((clique, row) => clique.forEach((place) => rows[place]?.push([row, 1])));
      rows.forEach((entries, place) => program.addColumn(-priceOf(place), 1, entries));
      const { columns, bound } = program.solveWhole(this.limits(), null);
      const pattern = columns?.flatMap((used, place) => (Math.round(used) === 1 ? [place] : [])) ?? null;
      const worth = sumOf((pattern ?? []).map(priceOf));
      return Promise.resolve({ pattern, worth, most: bound === -Infinity ? this.worthOfAll(prices) : -bound });
    });
  }
}

const blanksIn = (blanks: readonly FilledBlank[]): number => sumOf(blanks.map(({ count }) => count));
