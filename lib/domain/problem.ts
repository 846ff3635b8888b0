import type { z } from "zod";

/**
 * Something wrong with data from outside: where it stands, what is wrong and how to mend it.
 * Bad data gives every problem at once, never the first alone.
 */
export type Problem = { readonly place: string; readonly message: string };

/** A parse that may refuse: the thing, or all that is wrong with it. */
export type Parsed<T> = { ok: true; parsed: T } | { ok: false; problems: readonly Problem[] };

/** Every issue of a zod error as a problem; `root` names the thing that was parsed ("plantings[12]"). */
export function problemsOf(error: z.ZodError, root = ""): Problem[] {
  return error.issues.map((issue) => ({ place: placeOf(root, issue.path), message: issue.message }));
}

function placeOf(root: string, path: readonly PropertyKey[]): string {
  return path.reduce<string>(
    (place, step) =>
      typeof step === "number" ? `${place}[${step}]` : place ? `${place}.${String(step)}` : String(step),
    root,
  );
}
