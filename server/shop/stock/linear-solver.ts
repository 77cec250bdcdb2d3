/** What the cutting plans ask of a solver of linear and whole-number programs, which a door loads. */

/** Row and coefficient of a new column. */
export type Entry = readonly [row: number, value: number];

export interface LinearSolution {
  readonly value: number;
  readonly columns: readonly number[];
  /** Change of the value for one more of each row's bound. */
  readonly rowPrices: readonly number[];
}

export interface WholeSolution {
  /** Null when none was found. */
  readonly columns: readonly number[] | null;
  /** No whole-number solution is below it; −Infinity when unknown, Infinity when there is none. */
  readonly bound: number;
}

/** Where a whole-number search stops; the first reached counts. */
export interface SearchLimits {
  readonly seconds: number;
  readonly nodes: number;
}

/** A minimisation. Rows and columns count from 0 in the order of being added; columns are 0 or more. */
export interface LinearProgram {
  addRow(lower: number, upper: number): void;
  addColumn(cost: number, upper: number, entries: readonly Entry[]): void;
  /** Null when there is no solution. Starts from the last one. */
  solve(): LinearSolution | null;
  /** With every column a whole number; `start` is a solution already known. */
  solveWhole(limits: SearchLimits, start: readonly number[] | null): WholeSolution;
}

export interface LinearSolver {
  /** Lends a new program to `work` and frees it afterwards. */
  withProgram<Result>(work: (program: LinearProgram) => Promise<Result>): Promise<Result>;
}
