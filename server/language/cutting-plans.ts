/** Cutting plans and packed blanks at the doors: loads the solver from where it lies, gives the search its time, tells how it stands. */
import { type Analysis, repacked } from '../analyse.ts';
import { packWell } from '../shop/blanks/nest-blanks.ts';
import { notchingBench } from '../shop/sections/plan-settings.ts';
import type { LinearSolver } from '../shop/stock/linear-solver.ts';
import { loadSolver } from '../shop/stock/load-solver.ts';
import { cutEveryStock, type StockCutting } from '../shop/stock/cut-every-stock.ts';
import { startWatch } from '../shop/stock/start-watch.ts';
import { cuttingDemands } from '../shop/stock/stock-demands.ts';
import { besideTheProgram } from './carried-files.ts';

/** Seconds after which the best plan so far is given, with its gap. */
const patience = 20;

export interface CuttingOptions {
  /** In place of our own patience. */
  readonly seconds?: number;
  /** Ends the search; the best plan so far is given. */
  readonly signal?: AbortSignal;
  /** How the search stands, in words. */
  readonly onProgress?: (words: string) => void;
}

/** The cutting plans of a design's stocks, for the bench that notches. */
export async function cuttingPlans(
  analysis: Analysis,
  { seconds = patience, signal, onProgress }: CuttingOptions = {},
): Promise<StockCutting[]> {
  const solver = await solverAtHand();
  const bench = notchingBench(analysis.design.benches);
  const end = performance.now() + seconds * 1000;
  return cutEveryStock(cuttingDemands(analysis, bench?.trim ?? 0), bench?.kerf ?? null, solver, (stock) =>
    startWatch({
      seconds: (end - performance.now()) / 1000,
      ...(signal && { signal }),
      onProgress: ({ value, bound }) => onProgress?.(`cutting ${stock}: ${standing(value, bound)}`),
    }),
  );
}

/** The analysis with its blanks packed as well as the time allows; a plan counts what they are made of. */
export async function withPackedBlanks(
  analysis: Analysis,
  { seconds = patience, signal, onProgress }: CuttingOptions = {},
): Promise<Analysis> {
  if (analysis.blanks.length === 0) return analysis;
  const watch = startWatch({
    seconds,
    ...(signal && { signal }),
    onProgress: ({ value, bound }) => onProgress?.(`Packing blanks: ${standing(value, bound)}`),
  });
  return repacked(analysis, await packWell(analysis.blanks, await solverAtHand(), watch));
}

const standing = (value: number | null, bound: number): string =>
  value === null ? `at least ${bound}` : `${value} found, at least ${bound}`;

/** The solver, from where it lies. */
export const solverAtHand = (): Promise<LinearSolver> => loadSolver(solverPlace());

/** The bundled command has the solver's code beside it; run from source, the solver finds its own. */
function solverPlace(): ((file: string) => string) | undefined {
  return besideTheProgram('highs.wasm') === null ? undefined : (file) => besideTheProgram(file) ?? file;
}
