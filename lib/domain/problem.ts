import type { z } from "zod";

/**
 * Something wrong with data from outside: where it stands, what is wrong and how to mend it.
 * Bad data gives every problem at once, never the first alone.
 */
export type Problem = { readonly place: string; readonly message: string };

/** A parse that may refuse: the thing, or all that is wrong with it. */
export type Parsed<T> = { ok: true; parsed: T } | { ok: false; problems: readonly Problem[] };

/** As many problems as anybody mends at once; what has more was not typed by hand. */
export const MOST_PROBLEMS = 1000;

/**
 * The issues of a zod error as problems; `root` names the thing that was parsed ("plantings[12]"). After {@link MOST_PROBLEMS} comes one
 * that says how many more there are.
 */
export function problemsOf(error: z.ZodError, root = ""): Problem[] {
  const problems = error.issues
    .slice(0, MOST_PROBLEMS)
    .map((issue) => ({ place: placeOf(root, issue.path), message: issue.message }));
  const moreCount = error.issues.length - problems.length;
  return moreCount > 0
    ? [...problems, { place: root, message: `and ${moreCount} more problems: mend these first` }]
    : problems;
}

function placeOf(root: string, path: readonly PropertyKey[]): string {
  return path.reduce<string>(
    (place, step) =>
      typeof step === "number" ? `${place}[${step}]` : place ? `${place}.${String(step)}` : String(step),
    root,
  );
}
