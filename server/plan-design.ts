/** The line to its end: analysis → blanks packed → sheets nested, sticks cut → plan. The one way to a plan, for every door. */
import type { Words } from '../grammar/words.ts';
import { type Analysis, repacked } from './analyse.ts';
import { written } from './words/write-words.ts';
import { buildPlan } from './shop/build-plan.ts';
import type { PlannedDesign } from './shop/planned-design.ts';
import { nestSheets } from './shop/sheets/nest-sheets.ts';
import { packWell } from './shop/blanks/nest-blanks.ts';
import { notchingBench } from './shop/sections/plan-settings.ts';
import type { ShopPlan } from './shop/shop-plan.ts';
import { lastRested } from './shop/stages.ts';
import type { LinearSolver } from './shop/stock/linear-solver.ts';
import { cutEveryStock, type StockCutting } from './shop/stock/cut-every-stock.ts';
import { cuttingDemands } from './shop/stock/stock-demands.ts';
import type { SearchClock, SearchProgress, Watch } from './shop/stock/watch.ts';

/** What the searches of a plan may take: a door has the solver and the clock, and somebody to tell. */
export interface Effort {
  readonly solver: () => Promise<LinearSolver>;
  /** Begins the time of one search; all blanks are packed, or all sticks cut, within it. */
  readonly startClock: () => SearchClock;
  /** Told what is looked for and how it stands. */
  readonly tell: (words: string) => void;
}

/** A design with the plan made of it: its blanks are packed as the plan counts them. */
export type Planned<Packed extends PlannedDesign = Analysis> = Packed & {
  /** As the stages say it; compared with another one whatever the units of their files. */
  readonly said: ShopPlan<Words>;
  /** As it is written, in the units of its file. */
  readonly plan: ShopPlan;
};

/** The plan of what was read; `source` is the name of its file, as the person gave it. The same effort comes to the same plan. */
export const planDesign = async (analysis: Analysis, source: string, effort: Effort): Promise<Planned> =>
  planPacked(await packDesign(analysis, effort), source, effort);

/** The analysis with its blanks packed as well as the effort allows; a plan counts what they are made of. */
export async function packDesign(analysis: Analysis, effort: Effort): Promise<Analysis> {
  if (analysis.blanks.length === 0) return analysis;
  const watch = watchOver('Packing blanks', effort.startClock(), effort);
  return repacked(analysis, await packWell(analysis.blanks, await effort.solver(), watch));
}

/** The plan of a design whose blanks are packed. */
export async function planPacked<Packed extends PlannedDesign>(
  packed: Packed,
  source: string,
  effort: Effort,
): Promise<Planned<Packed>> {
  const nested = await lastRested(nestSheets(packed.design), effort.startClock());
  const cuttings = await cutSticks(packed, effort);
  const said = buildPlan(packed, source, { nested, cuttings });
  return { ...packed, said, plan: written(said, packed.design.units) };
}

/** The cutting plans of the design's stocks, for the bench that notches. */
async function cutSticks(packed: PlannedDesign, effort: Effort): Promise<StockCutting[]> {
  const bench = notchingBench(packed.design.benches);
  const demands = cuttingDemands(packed, bench?.trim ?? 0);
  const solver = await effort.solver();
  const clock = effort.startClock();
  return cutEveryStock(demands, bench, solver, (stock) => watchOver(`cutting ${stock}`, clock, effort));
}

const watchOver = (doing: string, clock: SearchClock, { tell }: Effort): Watch => ({
  ...clock,
  report: (progress) => tell(`${doing}: ${standing(progress)}`),
});

const standing = ({ value, bound }: SearchProgress): string =>
  value === null ? `at least ${bound}` : `${value} found, at least ${bound}`;
