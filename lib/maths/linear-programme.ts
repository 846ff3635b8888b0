import loadHighs, { type Highs } from "highs";

/** `lower <= Σ coefficients × columns <= upper`; use ±Infinity for an open side. Columns of a row differ from each other. */
export type ProgrammeRow = {
  readonly lower: number;
  readonly upper: number;
  readonly columns: readonly number[];
  readonly coefficients: readonly number[];
};

/** Least `Σ costs × columns` within bounds and rows. One entry a column in each list. */
export type Programme = {
  readonly costs: readonly number[];
  readonly lowers: readonly number[];
  readonly uppers: readonly number[];
  readonly rows: readonly ProgrammeRow[];
};

/** Nothing is cheaper, as near as floating point comes; null where nothing keeps to the rows. */
export type ProgrammeAnswer = {
  readonly objective: number;
  readonly columns: Float64Array;
  /** What one more on a row's binding side would cost. */
  readonly rowPrices: Float64Array;
  /** What each row adds up to. */
  readonly rowSums: Float64Array;
} | null;

/** A programme kept open, so that rows and bounds can change between solves and each solve starts from the last. Close it when done. */
export type OpenProgramme = {
  readonly solve: () => ProgrammeAnswer;
  readonly addRows: (rows: readonly ProgrammeRow[]) => void;
  /** Later rows move down to fill the places. */
  readonly removeRows: (places: readonly number[]) => void;
  /** New bounds for the first columns, as many as there are entries. */
  readonly setBounds: (lowers: readonly number[], uppers: readonly number[]) => void;
  readonly close: () => void;
};

/** The solver, as an argument: whoever plans need not know which it is. Throws RangeError if a programme has no column. */
export type LinearSolver = { readonly open: (programme: Programme) => OpenProgramme };

let loaded: Promise<LinearSolver> | null = null;

/** The HiGHS solver (https://highs.dev, MIT licence), compiled to WebAssembly. Loaded once, however often it is asked for. */
export function loadLinearSolver(): Promise<LinearSolver> {
  loaded ??= loadHighs().then((highs) => ({ open: (programme) => open(highs, programme) }));
  return loaded;
}

/** One solve of one programme. */
export function solveOnce(solver: LinearSolver, programme: Programme): ProgrammeAnswer {
  const opened = solver.open(programme);
  try {
    return opened.solve();
  } finally {
    opened.close();
  }
}

function open(highs: Highs, { costs, lowers, uppers, rows: firstRows }: Programme): OpenProgramme {
  const columnCount = costs.length;
  if (columnCount === 0) throw new RangeError("costs must name at least one column, got none");
  const { optimal, infeasible, unboundedOrInfeasible } = highs.constants.modelStatus;
  const model = highs.createModel({
    numCols: columnCount,
    numRows: firstRows.length,
    colCost: costs,
    colLower: lowers,
    colUpper: uppers,
    ...rowArrays(firstRows, columnCount),
  });
  model.options.set({ output_flag: false });
  return {
    solve: () => {
      model.zeroAllClocks();
      model.run();
      const status = model.getModelStatus();
      if (status === infeasible || status === unboundedOrInfeasible) return null;
      if (status !== optimal)
        throw new RangeError(`the programme must have a least cost, the solver ends with model status ${status}`);
      const { colValue, rowValue, rowDual } = model.getSolution();
      const objective = model.getObjectiveValue();
      return { objective, columns: colValue.subarray(0, columnCount), rowPrices: rowDual, rowSums: rowValue };
    },
    addRows: (rows) => {
      const { rowLower, rowUpper, matrix } = rowArrays(rows, columnCount);
      if (rows.length > 0)
        model.addRows({ lower: Float64Array.from(rowLower), upper: Float64Array.from(rowUpper), matrix });
    },
    removeRows: (places) => {
      if (places.length > 0) model.deleteRows({ kind: "set", indices: [...places].sort((a, b) => a - b) });
    },
    setBounds: (leasts, mosts) => {
      if (leasts.length > 0) model.changeColsBounds({ kind: "range", from: 0, to: leasts.length - 1 }, leasts, mosts);
    },
    close: () => model.dispose(),
  };
}

/** Rows as compressed arrays. */
function rowArrays(rows: readonly ProgrammeRow[], columnCount: number) {
  const starts = [0];
  for (const row of rows) starts.push(starts[starts.length - 1] + row.columns.length);
  const matrix = {
    format: "csr" as const,
    numRows: rows.length,
    numCols: columnCount,
    starts: Int32Array.from(starts),
    indices: Int32Array.from(rows.flatMap(({ columns }) => columns)),
    values: Float64Array.from(rows.flatMap(({ coefficients }) => coefficients)),
  };
  return { rowLower: rows.map(({ lower }) => lower), rowUpper: rows.map(({ upper }) => upper), matrix };
}
