/**
 * Rounds the master's fractions step by step, generating new patterns for what is left after each step: a dive
 * without backtracking, as in Belov & Scheithauer, Eur. J. Oper. Res. 171 (2006), 85–106, §3.
 */
import { append } from '../../geometry/numbers.ts';
import { arithmeticTolerance } from '../../geometry/tolerance.ts';
import {
  clippedPattern,
  type CuttingPlan,
  type CuttingTask,
  type Pattern,
  planCost,
  remainingTask,
} from './cutting-task.ts';
import { bestFirstFit, gathered } from './first-fit.ts';
import { generatePatterns } from './generate-patterns.ts';
import type { LinearSolver } from './linear-solver.ts';
import { PatternProgram } from './pattern-program.ts';
import type { Watch } from './watch.ts';

export interface Dive {
  readonly solver: LinearSolver;
  readonly task: CuttingTask;
  /** A plan this cheap ends the dive. */
  readonly target: number;
  readonly watch: Watch;
}

export interface DiveResult {
  /** The cheapest whole plan met on the way. */
  readonly plan: CuttingPlan | null;
  /** Patterns generated on the way, each fit for the task. */
  readonly patterns: readonly Pattern[];
}

/** Dives from `patterns`. `turn` 0 takes the largest fraction first, 1 the second largest, and so on; later steps the largest. */
export async function dive(
  { solver, task, target, watch }: Dive,
  patterns: readonly Pattern[],
  turn: number,
): Promise<DiveResult> {
  let best: CuttingPlan | null = null;
  let settled: CuttingPlan = [];
  let pool = patterns;
  const met: Pattern[] = [];
  for (let depth = 0; watch.interruption() === null; depth++) {
    const rest = remainingTask(task, settled);
    const filled = bestFirstFit(rest);
    const plan = filled && gathered([...settled, ...filled]);
    if (plan && (!best || planCost(task, plan) < planCost(task, best))) best = plan;
    if (best && planCost(task, best) <= target) break;
    if (rest.sizes.every(({ demand }) => demand === 0)) break;
    const chosen = await solver.withProgram(async (linear) => {
      const program = new PatternProgram(rest, linear);
      for (const pattern of pool) {
        const clipped = clippedPattern(rest, pattern);
        if (clipped) program.add(clipped);
      }
      const { master } = await generatePatterns(rest, program, watch, false);
      pool = program.patterns;
      append(met, pool);
      return master ? roundedDown(program.patterns, master.uses, depth === 0 ? turn : 0) : [];
    });
    if (chosen.length === 0) break;
    settled = [...settled, ...chosen];
  }
  return { plan: best, patterns: met };
}

/** Whole sticks of the fractions; where there are none, one stick of the fraction that is `turn`-th in size. */
function roundedDown(patterns: readonly Pattern[], uses: readonly number[], turn: number): CuttingPlan {
  const used = patterns
    .map((pattern, index) => ({ pattern, use: uses[index] ?? 0, index }))
    .filter(({ use }) => use > arithmeticTolerance)
    .sort((a, b) => b.use - a.use || a.index - b.index);
  const whole = used.flatMap(({ pattern, use }) => {
    const count = Math.floor(use + arithmeticTolerance);
    return count > 0 ? [{ pattern, count }] : [];
  });
  if (whole.length > 0 && turn === 0) return whole;
  const one = used[Math.min(turn, used.length - 1)];
  return one ? [{ pattern: one.pattern, count: 1 }] : [];
}
