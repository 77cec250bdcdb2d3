/** A cutting plan for one request: as cheap, or of as few sticks, as was found, with its proven bound. */
import { type CuttingPlan, planCost } from './cutting-task.ts';
import type { LinearSolver } from './linear-solver.ts';
import { type ReadRequest, readRequest, shortestTask } from './read-request.ts';
import { solveCutting } from './solve-cutting.ts';
import type { StockAnswer, StockRequest } from './stock-request.ts';
import type { Watch } from './watch.ts';
import { writeStockPlan } from './write-stock-plan.ts';

/**
 * Never throws for what a request says. The same request gives the same plan unless time cuts the search short:
 * the watch's, or the few seconds that one whole-number search may take. Without prices the fewest
 * sticks are sought first, then the least length of that many; with sticks in the rack, of those to buy.
 */
export async function cutOneStock(request: StockRequest, solver: LinearSolver, watch: Watch): Promise<StockAnswer> {
  const { read, problems } = readRequest(request);
  if (!read) return { plan: null, problems, interrupted: null };
  const { task } = read;
  const { plan: found, bound } = await solveCutting(task, solver, watch);
  if (!found) {
    const need = task.sizes.reduce((sum, { weight, demand }) => sum + weight * demand, 0);
    const have = task.sticks.reduce((sum, { room, limit }) => sum + (limit > 0 ? room * limit : 0), 0);
    const problem = { kind: 'notEnoughSticks', proven: need > have } as const;
    return { plan: null, problems: [...problems, problem], interrupted: watch.interruption() };
  }
  const { plan, leastMm } = await shortened(found, read, solver, watch);
  return { plan: writeStockPlan(request, read, { plan, bound, leastMm }), problems, interrupted: watch.interruption() };
}

/** Of plans with no more sticks than `found`, the one of the least length, and what no such plan is below in mm; null where there is no choice of lengths. */
async function shortened(
  found: CuttingPlan,
  read: ReadRequest,
  solver: LinearSolver,
  watch: Watch,
): Promise<{ readonly plan: CuttingPlan; readonly leastMm: number | null }> {
  const shortest = read.objective === 'sticks' ? shortestTask(read, planCost(read.task, found)) : null;
  if (!shortest) return { plan: found, leastMm: null };
  const quiet = { ...watch, report: () => undefined };
  const { plan, bound } = await solveCutting(shortest.task, solver, quiet, found);
  return { plan: plan ?? found, leastMm: bound * shortest.unitMm };
}
