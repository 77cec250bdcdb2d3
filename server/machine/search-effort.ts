/** What the doors give the searches of a plan: the solver from where it lies, and time on the real clock. */
import type { Effort } from '../plan-design.ts';
import type { LinearSolver } from '../shop/stock/linear-solver.ts';
import { loadSolver } from './load-solver.ts';
import { startWatch } from './start-watch.ts';
import { besideTheProgram } from './carried-files.ts';

/** Seconds after which a search gives the best it has found, with its gap: the same at every door, so that all come to one plan. */
const patience = 20;

export interface SearchCare {
  /** Ends the searches; the best found so far is given. */
  readonly signal?: AbortSignal;
  /** How a search stands, in words. */
  readonly onProgress?: (words: string) => void;
}

/** The effort that every plan is made with. */
export const usualEffort = ({ signal, onProgress }: SearchCare = {}): Effort => ({
  solver: solverAtHand,
  startClock: () => startWatch({ seconds: patience, ...(signal && { signal }) }),
  tell: (words) => onProgress?.(words),
});

/** The solver, from where it lies. */
export const solverAtHand = (): Promise<LinearSolver> => loadSolver(solverPlace());

/** The bundled command has the solver's code beside it; run from source, the solver finds its own. */
function solverPlace(): ((file: string) => string) | undefined {
  return besideTheProgram('highs.wasm') === null ? undefined : (file) => besideTheProgram(file) ?? file;
}
