/** A cutting plan for one request: as cheap, or of as few sticks, as was found, with its proven bound. */
import { planCost } from './cutting-task.ts';
import type { LinearSolver } from './linear-solver.ts';
import { readRequest, shortestTask } from './read-request.ts';
import { solveCutting } from './solve-cutting.ts';
import type { StockAnswer, StockRequest } from './stock-request.ts';
import type { Watch } from './watch.ts';
import { writeStockPlan } from './write-stock-plan.ts';

/**
 * Never throws for what a request says. The same request gives the same plan unless time cuts the search short:
 * the watch's, or the few seconds that one whole-number search may take. Without prices the fewest
 * sticks are sought first, then the least length of that many; with sticks in the rack, the fewest to buy.
 */
export async function cutOneStock(request: StockRequest, solver: LinearSolver, watch: Watch): Promise<StockAnswer> {
  const { read, problems } = readRequest(request);
  if (!read) return { plan: null, problems, interrupted: null };
  const { task, objective } = read;
  const { plan: found, bound } = await solveCutting(task, solver, watch);
  if (!found) {
    const need = task.sizes.reduce((sum, { weight, demand }) => sum + weight * demand, 0);
    const have = task.sticks.reduce((sum, { room, limit }) => sum + (limit > 0 ? room * limit : 0), 0);
    const problem = { kind: 'notEnoughSticks', proven: need > have } as const;
    return { plan: null, problems: [...problems, problem], interrupted: watch.interruption() };
  }
  let plan = found;
  if (objective === 'sticks' && task.sticks.length > 1 && task.sticks.every(({ cost }) => cost > 0)) {
    const shortest = shortestTask(read, planCost(task, found));
    const quiet = { ...watch, report: () => undefined };
    plan = (await solveCutting(shortest, solver, quiet, found)).plan ?? found;
  }
  return { plan: writeStockPlan(request, read, plan, bound), problems, interrupted: watch.interruption() };
}
