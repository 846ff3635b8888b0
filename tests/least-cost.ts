import loadHighs, { type Highs } from "highs";

/**
 * A programme as plain lists, for the slow second method: least Σ cost × column, each column from 0 to its `upper` (in whole numbers where it is
 * to be whole), each row's sum from `lower` to `upper`. Nothing of lib stands in it, so that it can check lib.
 */
export class LinearProgramme {
  readonly #costs: number[] = [];
  readonly #uppers: number[] = [];
  readonly #isWhole: boolean[] = [];
  readonly #rows: { lower: number; upper: number; columns: number[]; coefficients: number[] }[] = [];

  /** A new column; its place. */
  column(cost: number, upper = Number.POSITIVE_INFINITY, isWhole = false): number {
    this.#uppers.push(upper);
    this.#isWhole.push(isWhole);
    return this.#costs.push(cost) - 1;
  }

  /** A new row without columns; its place. */
  row(lower: number, upper: number): number {
    return this.#rows.push({ lower, upper, columns: [], coefficients: [] }) - 1;
  }

  put(row: number, column: number, coefficient: number): void {
    this.#rows[row].columns.push(column);
    this.#rows[row].coefficients.push(coefficient);
  }

  /** The least cost, found by HiGHS (https://highs.dev). Throws Error unless it says that it is optimal. */
  leastCost(highs: Highs): number {
    return this.leastColumns(highs).reduce((sum, column, place) => sum + column * this.#costs[place], 0);
  }

  /** The columns that cost least. */
  leastColumns(highs: Highs): Float64Array {
    if (this.#costs.length === 0) return new Float64Array(0);
    const starts = [0];
    for (const { columns } of this.#rows) starts.push(starts[starts.length - 1] + columns.length);
    const { integer, continuous } = highs.constants.variableType;
    const integrality = this.#isWhole.map((isWhole) => (isWhole ? integer : continuous));
    const model = highs.createModel({
      numCols: this.#costs.length,
      numRows: this.#rows.length,
      colCost: this.#costs,
      colLower: this.#costs.map(() => 0),
      colUpper: this.#uppers,
      ...(this.#isWhole.includes(true) ? { integrality } : {}),
      rowLower: this.#rows.map(({ lower }) => lower),
      rowUpper: this.#rows.map(({ upper }) => upper),
      matrix: {
        format: "csr",
        numRows: this.#rows.length,
        numCols: this.#costs.length,
        starts: Int32Array.from(starts),
        indices: Int32Array.from(this.#rows.flatMap(({ columns }) => columns)),
        values: Float64Array.from(this.#rows.flatMap(({ coefficients }) => coefficients)),
      },
    });
    try {
      model.options.set({ output_flag: false, mip_rel_gap: 0, mip_abs_gap: 0.5 });
      model.run();
      if (model.getModelStatus() !== highs.constants.modelStatus.optimal)
        throw new Error(`HiGHS ends with model status ${model.getModelStatus()}`);
      return Float64Array.from(model.getSolution().colValue);
    } finally {
      model.dispose();
    }
  }
}

export const highs: Promise<Highs> = loadHighs();
