/** The cheapest cutting plan with a bound that no plan is below: first fit, patterns, dives, then a whole-number search. */
import {
  commonDivisor,
  type CuttingPlan,
  type CuttingTask,
  isWholePlan,
  type Pattern,
  planCost,
} from './cutting-task.ts';
import { dive } from './dive.ts';
import { dualBound, nextPossible } from './dual-bound.ts';
import { bestFirstFit } from './first-fit.ts';
import { generatePatterns } from './generate-patterns.ts';
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
const firstTurns = [0, 1, 2, 3];
const lastTurns = [4, 5, 6, 7, 8, 9];

/** Branches of the whole-number search; seldom reached, and the same on every machine. */
const mostNodes = 5000;
const searchShare = 0.5;

/** `start` is a plan already known. */
export async function solveCutting(
  task: CuttingTask,
  solver: LinearSolver,
  watch: Watch,
  start: CuttingPlan | null = null,
): Promise<CuttingSolution> {
  const step = commonDivisor(task.sticks.map(({ cost }) => cost)) || 1;
  let best = start;
  let bound = nextPossible(materialBound(task), step);
  const offer = (plan: CuttingPlan | null): void => {
    if (!plan || !isWholePlan(task, plan)) return;
    if (best && planCost(task, plan) >= planCost(task, best)) return;
    best = plan;
    tell();
  };
  const raise = (to: number): void => {
    bound = Math.max(bound, nextPossible(to, step));
    tell();
  };
  const tell = (): void => watch.report({ value: best && planCost(task, best), bound });
  const settled = (): boolean => watch.interruption() !== null || (best !== null && planCost(task, best) <= bound);

  offer(bestFirstFit(task));
  if (settled()) return { plan: best, bound };
  return solver.withProgram(async (linear) => {
    const program = new PatternProgram(task, linear);
    for (const pattern of firstPatterns(task, best)) program.add(pattern);
    const generation = await generatePatterns(task, program, step, watch);
    raise(generation.bound);
    const diveAll = async (turns: readonly number[]): Promise<void> => {
      for (const turn of turns) {
        if (settled()) return;
        const result = await dive({ solver, task, step, target: bound, watch }, program.patterns, turn);
        offer(result.plan);
        for (const pattern of result.patterns) program.add(pattern);
      }
    };
    await diveAll(firstTurns);
    if (!settled()) {
      const limits = { seconds: watch.secondsLeft() * searchShare, nodes: mostNodes };
      offer(program.solveWhole(limits, best).plan);
    }
    await diveAll(lastTurns);
    return { plan: best, bound };
  });
}

/** The length of wood needed over the length there is in a stick, by cost. */
function materialBound(task: CuttingTask): number {
  const longest = Math.max(...task.sticks.map(({ room }) => room));
  const worthOf = (length: number): number => Math.floor((length / longest) * worthUnit);
  return dualBound(
    task,
    task.sizes.map(({ weight }) => worthOf(weight)),
    task.sticks.map(({ room }) => worthOf(room)),
  );
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
