/** The master program: how often to use each pattern so that every demand is covered at least cost. */
import { maximum } from '../../geometry/numbers.ts';
import { type CuttingPlan, type CuttingTask, type Pattern, patternKey } from './cutting-task.ts';
import type { Entry, LinearProgram, LinearSolution, SearchLimits, WholeSolution } from './linear-solver.ts';

/** Prices by which new patterns are judged. */
export interface MasterPrices {
  /** Of one more piece of each size. */
  readonly sizes: readonly number[];
  /** Of one more stick allowed, by type; 0 or less. */
  readonly sticks: readonly number[];
}

export interface MasterSolution {
  /** Sticks by pattern, in the order of being added; fractions. */
  readonly uses: readonly number[];
  /** Cost of those, pieces not cut at their dear price; rounded as the solver rounds. */
  readonly value: number;
  readonly prices: MasterPrices;
}

/**
 * Rows: sizes, then stick types, then all counted sticks together. The first columns, one a size, stand for pieces not
 * cut: dear, so that they are used only while the patterns do not yet cover the demand.
 */
export class PatternProgram {
  private readonly task: CuttingTask;
  private readonly program: LinearProgram;
  private readonly known = new Set<string>();
  readonly patterns: Pattern[] = [];

  constructor(task: CuttingTask, program: LinearProgram) {
    this.task = task;
    this.program = program;
    for (const { demand } of task.sizes) program.addRow(demand, Infinity);
    for (const { limit } of task.sticks) program.addRow(-Infinity, limit);
    program.addRow(-Infinity, task.mostSticks);
    const dear = priceOfLack(task);
    task.sizes.forEach((_, size) => program.addColumn(dear, Infinity, [[size, 1]]));
  }

  /** Adds a pattern; false when it was there already. */
  add(pattern: Pattern): boolean {
    const key = patternKey(pattern);
    if (this.known.has(key)) return false;
    this.known.add(key);
    const { sizes, sticks } = this.task;
    const stickRow = sizes.length + pattern.stick;
    const pieces = pattern.counts.flatMap((count, size): Entry[] => (count > 0 ? [[size, count]] : []));
    const type = sticks[pattern.stick];
    const together: Entry[] = type?.counted ? [[sizes.length + sticks.length, 1]] : [];
    this.program.addColumn(type?.cost ?? 0, Infinity, [...pieces, [stickRow, 1], ...together]);
    this.patterns.push(pattern);
    return true;
  }

  solve(): MasterSolution | null {
    const solution = this.program.solve();
    return solution && this.read(solution);
  }

  private read({ columns, rowPrices, value }: LinearSolution): MasterSolution {
    const { length: sizes } = this.task.sizes;
    const anyStick = rowPrices[sizes + this.task.sticks.length] ?? 0;
    return {
      uses: columns.slice(sizes),
      value,
      prices: {
        sizes: rowPrices.slice(0, sizes),
        sticks: this.task.sticks.map(({ counted }, type) => (counted ? anyStick : 0) + (rowPrices[sizes + type] ?? 0)),
      },
    };
  }

  /** The best plan of the patterns in whole sticks; its bound holds for these patterns only. */
  solveWhole(limits: SearchLimits, start: CuttingPlan | null): { plan: CuttingPlan | null; bound: number } {
    const { length: sizes } = this.task.sizes;
    const counts = new Map(start?.map(({ pattern, count }) => [patternKey(pattern), count]));
    const uses = this.patterns.map((pattern) => counts.get(patternKey(pattern)) ?? 0);
    const values = [...this.task.sizes.map(() => 0), ...uses];
    const solution: WholeSolution = this.program.solveWhole(limits, start ? values : null);
    const plan = solution.columns?.slice(sizes).flatMap((count, index) => {
      const pattern = this.patterns[index];
      return pattern && count > 0 ? [{ pattern, count }] : [];
    });
    return { plan: plan ?? null, bound: solution.bound };
  }
}

/** More than any piece can be worth: where sticks are scarce, more than all that may be used together. */
function priceOfLack({ sizes, sticks, mostSticks }: CuttingTask): number {
  const dearest = Math.max(1, maximum(sticks.map(({ cost }) => cost)));
  const longest = maximum(sticks.map(({ room, limit }) => (limit === Infinity ? room : 0)));
  const scarce = mostSticks < Infinity || sizes.some(({ weight }) => weight > longest);
  if (!scarce) return 2 * dearest;
  const pieces = sizes.reduce((sum, { demand }) => sum + demand, 0);
  const had = (counted: boolean): number =>
    sticks.reduce((sum, stick) => (stick.counted === counted ? sum + Math.max(0, stick.limit) : sum), 0);
  return dearest * (1 + Math.min(pieces, had(false) + Math.min(had(true), Math.max(0, mostSticks))));
}
