/** Loads HiGHS (WebAssembly): a door, since it reads a file and is asynchronous. */
import loadHighs, { type Highs, type Model } from 'highs';
import type {
  LinearProgram,
  LinearSolution,
  LinearSolver,
  SearchLimits,
  WholeSolution,
} from '../shop/stock/linear-solver.ts';

/** `locateFile` says where the solver's `.wasm` lies when it is not beside its own code. */
export async function loadSolver(locateFile?: (file: string) => string): Promise<LinearSolver> {
  const highs = await loadHighs(locateFile ? { locateFile } : {});
  return {
    withProgram: (work) =>
      highs.withModel((model) => {
        model.options.set({ output_flag: false, random_seed: 0 });
        return work(programOf(highs, model));
      }),
  };
}

/** Whether the solver came to an end of its own, whatever it found; it may give up, which is no reason to throw. */
const ran = (model: Model): boolean => model.raw.run().status >= 0;

function programOf(highs: Highs, model: Model): LinearProgram {
  const { modelStatus, variableType } = highs.constants;
  let columns = 0;
  return {
    addRow: (lower, upper) => void model.addRow(lower, upper, { indices: [], values: [] }),
    addColumn(cost, upper, entries) {
      columns += 1;
      model.addCol(cost, 0, upper, { indices: entries.map(([row]) => row), values: entries.map(([, value]) => value) });
    },
    solve(): LinearSolution | null {
      if (!ran(model) || model.getModelStatus() !== modelStatus.optimal) return null;
      const { colValue, rowDual } = model.getSolution();
      return { value: model.getObjectiveValue(), columns: [...colValue], rowPrices: [...rowDual] };
    },
    solveWhole({ seconds, nodes }: SearchLimits, start): WholeSolution {
      for (let column = 0; column < columns; column++) model.changeColIntegrality(column, variableType.integer);
      model.options.set({ time_limit: seconds, mip_max_nodes: nodes, mip_rel_gap: 0, mip_abs_gap: 0 });
      if (start) model.setSolution({ colValue: Float64Array.from(start) });
      if (!ran(model)) return { columns: null, bound: -Infinity };
      if (model.getModelStatus() === modelStatus.infeasible) return { columns: null, bound: Infinity };
      const bound = Number(model.info.get('mip_dual_bound'));
      const found =
        Number.isFinite(model.getObjectiveValue()) &&
        Number(model.info.get('primal_solution_status')) === highs.constants.solutionStatus.feasible;
      return { columns: found ? [...model.getSolution().colValue].map(Math.round) : null, bound };
    },
  };
}
