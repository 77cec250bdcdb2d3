/** The cheapest cutting plan with a bound that no plan is below: first fit, patterns, dives, then a whole-number search. */
import { maximum } from '../../geometry/numbers.ts';
import { type CuttingPlan, type CuttingTask, isWholePlan, type Pattern, planCost } from './cutting-task.ts';
import { dive } from './dive.ts';
import { dualBound, nextPossible, provenBySolver } from './dual-bound.ts';
import { bestFirstFit } from './first-fit.ts';
import { enumeratePatterns } from './enumerate-patterns.ts';
import { type Generation, generatePatterns } from './generate-patterns.ts';
import type { LinearSolver } from './linear-solver.ts';
import { PatternProgram } from './pattern-program.ts';
import type { Watch } from './watch.ts';
import { worthUnit } from './worths.ts';

export interface CuttingSolution {
  /** Null when none was found. */
  readonly plan: CuttingPlan | null;
  /** No plan costs less. */
  readonly bound: number;
}

/** Dives before and after the whole-number search. */
const firstTurns = [0, 1, 2, 3, 4, 5, 6, 7];
const lastTurns = [8, 9, 10, 11, 12, 13];

/** Branches of the whole-number search; seldom reached, and the same on every machine. */
const mostNodes = 5000;
const searchShare = 0.5;

/** It cannot be cancelled while it runs, so it never runs longer than this. */
const mostSeconds = 5;

/** Patterns that a proof may look at, and steps to list them. */
const mostPatterns = 4000;
const mostSteps = 2_000_000;

/** `start` is a plan already known. */
export async function solveCutting(
  task: CuttingTask,
  solver: LinearSolver,
  watch: Watch,
  start: CuttingPlan | null = null,
): Promise<CuttingSolution> {
  const state = new SearchState(task, watch, start);
  state.raise(nextPossible(materialBound(task)));
  state.offer(bestFirstFit(task));
  if (state.settled()) return state;
  await solver.withProgram(async (linear) => {
    const program = new PatternProgram(task, linear);
    for (const pattern of firstPatterns(task, state.plan)) program.add(pattern);
    const { best } = await generatePatterns(task, program, watch, false);
    if (best) state.raise(nextPossible(best.bound));
    const diveAll = async (turns: readonly number[]): Promise<void> => {
      for (const turn of turns) {
        if (state.settled()) return;
        const result = await dive({ solver, task, target: state.bound, watch }, program.patterns, turn);
        state.offer(result.plan);
        for (const pattern of result.patterns) program.add(pattern);
      }
    };
    await diveAll(firstTurns);
    if (!state.settled()) await searchWhole(state, program, solver, watch);
    await diveAll(lastTurns);
  });
  return state;
}

/** The best plan and bound so far. */
class SearchState implements CuttingSolution {
  readonly task: CuttingTask;
  private readonly watch: Watch;
  plan: CuttingPlan | null;
  bound = 0;

  constructor(task: CuttingTask, watch: Watch, plan: CuttingPlan | null) {
    this.task = task;
    this.watch = watch;
    this.plan = plan;
  }

  get value(): number | null {
    return this.plan && planCost(this.task, this.plan);
  }

  offer(plan: CuttingPlan | null): void {
    if (!plan || !isWholePlan(this.task, plan)) return;
    if (this.plan && planCost(this.task, plan) >= planCost(this.task, this.plan)) return;
    this.plan = plan;
    this.watch.report({ value: this.value, bound: this.bound });
  }

  raise(bound: number): void {
    this.bound = Math.max(this.bound, bound);
    this.watch.report({ value: this.value, bound: this.bound });
  }

  settled(): boolean {
    return this.watch.interruption() !== null || (this.value ?? Infinity) <= this.bound;
  }
}

/**
 * A whole-number search: among all patterns that a better plan could use, if they can be listed, and then what it
 * proves is proven for every plan; otherwise among the patterns at hand.
 */
async function searchWhole(
  state: SearchState,
  program: PatternProgram,
  solver: LinearSolver,
  watch: Watch,
): Promise<void> {
  const { task, plan } = state;
  const { best } = await generatePatterns(task, program, watch, true);
  if (best) state.raise(nextPossible(best.bound));
  if (state.settled()) return;
  const value = state.value ?? Infinity;
  const limits = { seconds: Math.min(mostSeconds, watch.secondsLeft() * searchShare), nodes: mostNodes };
  const patterns = best && patternsOfBetterPlans(task, value, best);
  if (!patterns) {
    for (const { pattern } of plan ?? []) program.add(pattern);
    state.offer(program.solveWhole(limits, plan).plan);
    return;
  }
  await solver.withProgram((linear) => {
    const complete = new PatternProgram(task, linear);
    for (const pattern of patterns) complete.add(pattern);
    const result = complete.solveWhole(limits, null);
    state.offer(result.plan);
    state.raise(Math.min(value, provenBySolver(result.bound)));
    return Promise.resolve();
  });
}

/** Null when there are too many to list, or no plan is known. */
function patternsOfBetterPlans(
  task: CuttingTask,
  value: number,
  { bound, share, stickWorths, worths }: NonNullable<Generation['best']>,
): Pattern[] | null {
  if (value === Infinity || share <= 0) return null;
  const gap = Math.max(0, value - 1 - bound) * worthUnit(task);
  const least = stickWorths.map((worth) => Math.floor((worth - gap) / share));
  return enumeratePatterns(task, { worths, least, mostPatterns, mostSteps });
}

/** The length of wood needed over the length there is in a stick, by cost. */
function materialBound(task: CuttingTask): number {
  const dearest = maximum(task.sticks.map(({ cost, room }) => cost / room));
  const worthOf = (room: number): number => Math.floor(room * dearest * worthUnit(task));
  const worths = task.sizes.map(({ weight }) => worthOf(weight));
  return dualBound(
    task,
    worths,
    task.sticks.map(({ room }) => worthOf(room)),
  ).bound;
}

/** Those of a plan, and for every size and stick as many of it as go in. */
function firstPatterns(task: CuttingTask, plan: CuttingPlan | null): Pattern[] {
  const alone = task.sticks.flatMap(({ room }, stick) =>
    task.sizes.flatMap(({ weight, demand }, size) => {
      const count = Math.min(demand, Math.floor(room / weight));
      return count > 0 ? [{ stick, counts: task.sizes.map((_, at) => (at === size ? count : 0)) }] : [];
    }),
  );
  return [...(plan ?? []).map(({ pattern }) => pattern), ...alone];
}
