import { revalidatePath } from "next/cache";
import type { Problem } from "#lib/domain/problem";
import { type FormState, SAVED } from "./form-state";
import type { FormValues } from "./form-values";

type Outcome = { readonly ok: true } | { readonly ok: false; readonly problems: readonly Problem[] };

/** What a form's action answers once it has written, or was refused: every page is made again, or the problems go back with what was typed. */
export function taken(values: FormValues, outcome: Outcome): FormState {
  if (!outcome.ok) return values.refused(outcome.problems);
  revalidatePath("/", "layout");
  return SAVED;
}
