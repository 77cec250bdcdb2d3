/** Cutting plans at the door: loads the solver from where it lies and gives the search its time. */
import { existsSync, realpathSync } from 'node:fs';
import { dirname, join } from 'node:path';
import type { Analysis } from '../analyse.ts';
import { loadSolver } from '../shop/stock/load-solver.ts';
import { planStock, type StockCutting } from '../shop/stock/plan-stock.ts';
import { startWatch } from '../shop/stock/start-watch.ts';

/** Seconds after which the best plan so far is given, with its gap. */
const patience = 20;

/** The cutting plans of a design's stocks. The kerf is the first that a bench states; a stick loses nothing at its ends. */
export async function cuttingPlans({ design, kinds }: Analysis): Promise<StockCutting[]> {
  const solver = await loadSolver(besideTheProgram());
  const kerfMm = design.benches.find(({ kerf }) => kerf !== null)?.kerf ?? 0;
  return planStock(kinds, { kerfMm, endTrimMm: 0 }, solver, startWatch({ seconds: patience }));
}

/** The bundled command has the solver's code beside it; run from source, the solver finds its own. */
function besideTheProgram(): ((file: string) => string) | undefined {
  const program = process.argv[1];
  if (program === undefined || !existsSync(program)) return undefined;
  const folder = dirname(realpathSync(program));
  return existsSync(join(folder, 'highs.wasm')) ? (file) => join(folder, file) : undefined;
}
