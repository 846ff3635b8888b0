import type { FormValues } from "../../ui/form-values";

/** The id chosen from the farm's own rows; refused in words when none is, or it is gone meanwhile. */
export function chosen(values: FormValues, name: string, rows: readonly { id: number }[], what: string): number {
  const id = values.hiddenNumber(name);
  if (Number.isNaN(id)) values.refuse(name, `choose ${what}`);
  else if (!rows.some((row) => row.id === id)) values.refuse(name, `this one is gone: choose ${what}`);
  return id;
}
