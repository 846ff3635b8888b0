import { partsOf } from "./multipart";

/**
 * Whether the body of a form's call can be what a page of this tool sent. The framework unpacks such a body into values with references among
 * them, which is a language of its own; here it is held to the few words of it that our forms speak, before it is unpacked: every reference
 * leads to a row that was sent, none reaches into the inside of an object, and no value poses as a promise.
 *
 * @param hasAction  whether a script made the call and named the action in a header; else the browser sent the form by itself
 */
export function isWellFormed(contentType: string, hasAction: boolean, body: Buffer): boolean {
  if (!/^multipart\//i.test(contentType)) return hasAction && arePlain(new Map([["0", body.toString("utf8")]]));
  const parts = partsOf(contentType, body);
  if (!parts) return false;
  const isRow = hasAction ? /^(\$ACTION_\d+:)?\d+$/ : /^\$ACTION_\d+:\d+$/;
  const rows = new Map(parts.flatMap(({ name, text }) => (isRow.test(name) ? [[name, text ?? ""] as const] : [])));
  return (!hasAction || rows.has("0")) && arePlain(rows);
}

/** Whether each row is JSON of plain values. Rows of one call share what stands before their number; references count in hexadecimal. */
function arePlain(rows: ReadonlyMap<string, string>): boolean {
  return [...rows].every(([name, row]) => {
    const call = name.replace(/\d+$/, "");
    try {
      const value: unknown = JSON.parse(row);
      // What an action is called with is a list, an empty one where it takes nothing.
      if (name === "0" && !Array.isArray(value)) return false;
      // A form that the browser sends by itself carries the state before it, in a list.
      if (BOUND.test(name) && !(Array.isArray(value) && value.length > 0)) return false;
      return isPlain(value, (id) => rows.has(`${call}${Number.parseInt(id, 16)}`));
    } catch {
      // No JSON, or nested so deep that no form of ours can be meant.
      return false;
    }
  });
}

const BOUND = /^\$ACTION_\d+:1$/;

/** Values that are written as a word: those that JSON has no letters for. */
const WORDS = /^\$(undefined|NaN|Infinity|-Infinity|-0)$/;
const FORM = /^\$K[0-9a-f]{1,8}$/;
const REFERENCE = /^\$@?([0-9a-f]{1,8})((?::[^:]+)*)$/;
const INSIDES = ["__proto__", "constructor", "prototype", "then"];

/** Whether a value is made of plain values, forms, and references to rows that are there. */
function isPlain(value: unknown, hasRow: (id: string) => boolean): boolean {
  if (typeof value === "string") return !value.startsWith("$") || isKnownWord(value, hasRow);
  if (typeof value !== "object" || value === null) return true;
  if (Array.isArray(value)) return value.every((inside) => isPlain(inside, hasRow));
  return Object.entries(value).every(([key, inside]) => !INSIDES.includes(key) && isPlain(inside, hasRow));
}

function isKnownWord(word: string, hasRow: (id: string) => boolean): boolean {
  if (word.startsWith("$$") || WORDS.test(word) || FORM.test(word)) return true;
  const [, id, path] = REFERENCE.exec(word) ?? [];
  return id !== undefined && hasRow(id) && !path?.split(":").some((step) => INSIDES.includes(step));
}
