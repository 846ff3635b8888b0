import type { Part } from "./multipart";

/** An action that nobody may call: what is named in a way that no form of the tool has. */
const UNKNOWN = "";

/**
 * The actions that a form's call names, by their names on the wire: in a header where a script made the call, else in the form's own hidden fields, by
 * itself or in a row that carries bound values. What names none calls none.
 */
export function calledActions(header: string | undefined, parts: readonly Part[]): string[] {
  if (header !== undefined) return [header];
  return parts.flatMap(({ name }) => {
    if (!name.startsWith("$ACTION_") || name === "$ACTION_KEY" || /^\$ACTION_\d+:\d+$/.test(name)) return [];
    const [, plain] = /^\$ACTION_ID_(.*)$/.exec(name) ?? [];
    if (plain !== undefined) return [plain];
    const [, row] = /^\$ACTION_REF_(\d+)$/.exec(name) ?? [];
    const rows = row === undefined ? [] : parts.filter((part) => part.name === `$ACTION_${row}:0`);
    return rows.length === 0 ? [UNKNOWN] : rows.map(({ text }) => idIn(text ?? ""));
  });
}

function idIn(row: string): string {
  try {
    const read: unknown = JSON.parse(row);
    return typeof read === "object" && read !== null && "id" in read ? String(read.id) : UNKNOWN;
  } catch {
    return UNKNOWN;
  }
}
