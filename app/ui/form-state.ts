import type { Problem } from "#lib/domain/problem";

/** What an action says of a form: taken, or refused with every problem and all that was typed, by the name of the field. */
export type FormState = {
  readonly outcome: "fresh" | "saved" | "refused";
  readonly typed: Readonly<Record<string, readonly string[]>>;
  readonly problems: readonly Problem[];
};

export type FormAction = (before: FormState, form: FormData) => Promise<FormState>;

/** A form that was not sent yet. */
export const FRESH: FormState = { outcome: "fresh", typed: {}, problems: [] };

/** A form whose content was written. */
export const SAVED: FormState = { outcome: "saved", typed: {}, problems: [] };
