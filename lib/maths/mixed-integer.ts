import loadHighs, { type Highs, type Model, type SymbolDisposable } from "highs";

/** `lower <= Σ coefficients × columns <= upper`; use ±Infinity for an open side. Columns of a row differ from each other. */
export type ProgrammeRow = {
  readonly lower: number;
  readonly upper: number;
  readonly columns: readonly number[];
  readonly coefficients: readonly number[];
};

/** Least `Σ costs × columns` within bounds and rows; a column marked whole takes whole numbers. One entry a column in each list. */
export type Programme = {
  readonly costs: readonly number[];
  readonly lowers: readonly number[];
  readonly uppers: readonly number[];
  readonly isWhole: readonly boolean[];
  readonly rows: readonly ProgrammeRow[];
};

/**
 * `optimal`: nothing is cheaper, for whole-number programmes to within half a unit of cost, which with whole costs is exact.
 * `infeasible`: nothing keeps to the rows. `stopped`: told to stop; `bound` still holds, and `columns` is the best found, if
 * `objective` is finite. `reducedCosts` and `rowPrices` are filled for programmes without whole columns: what
 * each column off its bound would cost, and what one more on a row's binding side would.
 */
export type ProgrammeAnswer = {
  readonly status: "optimal" | "infeasible" | "stopped";
  readonly objective: number;
  readonly bound: number;
  readonly columns: Float64Array;
  readonly reducedCosts: Float64Array;
  readonly rowPrices: Float64Array;
  /** What each row adds up to. */
  readonly rowSums: Float64Array;
};

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

/** The solver, as an argument: whoever plans need not know which it is. */
export type MixedIntegerSolver = {
  /**
   * @param isStopped  asked again and again within a solve of whole columns: once it says so, the solve ends as `stopped`
   * @throws RangeError if there is no column
   */
  readonly open: (programme: Programme, isStopped?: () => boolean) => OpenProgramme;
};

let loaded: Promise<MixedIntegerSolver> | null = null;

/** The HiGHS solver (https://highs.dev, MIT licence), compiled to WebAssembly. Loaded once, however often it is asked for. */
export function loadMixedIntegerSolver(): Promise<MixedIntegerSolver> {
  loaded ??= loadHighs().then((highs) => ({ open: (programme, isStopped) => open(highs, programme, isStopped) }));
  return loaded;
}

/** One solve of one programme. */
export function solveOnce(
  solver: MixedIntegerSolver,
  programme: Programme,
  isStopped?: () => boolean,
): ProgrammeAnswer {
  const opened = solver.open(programme, isStopped);
  try {
    return opened.solve();
  } finally {
    opened.close();
  }
}

function open(highs: Highs, programme: Programme, isStopped: () => boolean = () => false): OpenProgramme {
  const columnCount = programme.costs.length;
  if (columnCount === 0) throw new RangeError("costs must name at least one column, got none");
  const hasWhole = programme.isWhole.some(Boolean);
  const { integer, continuous } = highs.constants.variableType;
  const model = highs.createModel({
    numCols: columnCount,
    numRows: programme.rows.length,
    colCost: programme.costs,
    colLower: programme.lowers,
    colUpper: programme.uppers,
    ...rowArrays(programme.rows, columnCount),
    ...(hasWhole ? { integrality: programme.isWhole.map((whole) => (whole ? integer : continuous)) } : {}),
  });
  model.options.set({ output_flag: false, mip_rel_gap: 0, mip_abs_gap: 0.5 });
  return {
    solve: () => {
      model.zeroAllClocks();
      model.run(hasWhole ? interruptedWhen(highs, isStopped) : undefined);
      return answerOf(highs, model, columnCount, hasWhole);
    },
    addRows: (rows) => {
      const { rowLower, rowUpper, matrix } = rowArrays(rows, columnCount);
      if (rows.length > 0)
        model.addRows({ lower: Float64Array.from(rowLower), upper: Float64Array.from(rowUpper), matrix });
    },
    removeRows: (places) => {
      if (places.length > 0) model.deleteRows({ kind: "set", indices: [...places].sort((a, b) => a - b) });
    },
    setBounds: (lowers, uppers) => {
      if (lowers.length > 0) model.changeColsBounds({ kind: "range", from: 0, to: lowers.length - 1 }, lowers, uppers);
    },
    close: () => model.dispose(),
  };
}

/** HiGHS asks between its own steps, in the search for whole columns and within each programme that it solves on the way. */
function interruptedWhen({ constants: { callbackType } }: Highs, isStopped: () => boolean) {
  const ask = (event: { readonly interrupt: () => void }): undefined => {
    if (isStopped()) event.interrupt();
  };
  return { [callbackType.mipInterrupt]: ask, [callbackType.simplexInterrupt]: ask };
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

function answerOf(
  highs: Highs,
  model: SymbolDisposable<Model>,
  columnCount: number,
  hasWhole: boolean,
): ProgrammeAnswer {
  const { optimal, infeasible, unboundedOrInfeasible, interrupted } = highs.constants.modelStatus;
  const status = model.getModelStatus();
  if (status === infeasible || status === unboundedOrInfeasible) {
    const none = new Float64Array(0);
    const nothing = Number.POSITIVE_INFINITY;
    return {
      status: "infeasible",
      objective: nothing,
      bound: nothing,
      columns: none,
      reducedCosts: none,
      rowPrices: none,
      rowSums: none,
    };
  }
  if (status !== optimal && status !== interrupted)
    throw new RangeError(`the programme must have a least cost, the solver ends with model status ${status}`);
  const { colValue, colDual, rowValue, rowDual } = model.getSolution();
  const objective = model.getObjectiveValue();
  const bound = hasWhole ? Number(model.info.get("mip_dual_bound")) : objective;
  return {
    status: status === optimal ? "optimal" : "stopped",
    objective,
    bound,
    columns: colValue.subarray(0, columnCount),
    reducedCosts: hasWhole ? new Float64Array(0) : colDual,
    rowPrices: hasWhole ? new Float64Array(0) : rowDual,
    rowSums: rowValue,
  };
}
