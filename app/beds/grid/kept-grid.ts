import { z } from "zod";
import type { GridRows } from "#lib/sheets/grid";

const schema = z.array(z.array(z.string())).min(1);

/** The rows that this browser kept as text; null where they are none, or of a grid with more or fewer columns, as another version had it. */
export function keptGrid(kept: string, columnCount: number): GridRows | null {
  try {
    const { data } = schema.safeParse(JSON.parse(kept));
    return data?.every((row) => row.length === columnCount) ? data : null;
  } catch {
    return null;
  }
}
