import { type Problem, problemsOf } from "#lib/domain/problem";

/** What a domain schema offers here. */
type Schema<T> = {
  safeParse(input: unknown): { success: true; data: T } | { success: false; error: Parameters<typeof problemsOf>[0] };
};

/** Parses rows one by one and gathers everything that is wrong with any of them, each under its row's id: "plantings[12].plantedOn". */
export class RowParser {
  readonly problems: Problem[] = [];

  /** The rows that parse, in their order. `shape` gives a row the form that `schema` parses, when it has not got it. */
  all<Row extends { readonly id: number }, T>(
    name: string,
    schema: Schema<T>,
    rows: readonly Row[],
    shape: (row: Row) => unknown = (row) => row,
  ): T[] {
    const parsed: T[] = [];
    for (const row of rows) {
      const read = schema.safeParse(shape(row));
      if (read.success) parsed.push(read.data);
      else this.problems.push(...problemsOf(read.error, `${name}[${row.id}]`));
    }
    return parsed;
  }

  /** The only row of its kind, or undefined when it does not parse. */
  one<T>(name: string, schema: Schema<T>, row: unknown): T | undefined {
    const read = schema.safeParse(row);
    if (read.success) return read.data;
    this.problems.push(...problemsOf(read.error, name));
    return undefined;
  }

  /** Children by the id of their parent, in their order. Those whose parent is missing are problems. */
  byParent<Row extends { readonly id: number }>(
    name: string,
    parents: readonly { readonly id: number }[],
    rows: readonly Row[],
    parentOf: (row: Row) => number,
  ): (parentId: number) => readonly Row[] {
    const children = new Map<number, Row[]>(parents.map(({ id }) => [id, []]));
    for (const row of rows) {
      const siblings = children.get(parentOf(row));
      if (siblings) siblings.push(row);
      else
        this.problems.push({
          place: `${name}[${row.id}]`,
          message: `belongs to ${parentOf(row)}, which does not exist`,
        });
    }
    return (parentId) => children.get(parentId) ?? [];
  }
}
