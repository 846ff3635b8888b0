import type { Problem } from "#lib/domain/problem";

/**
 * What an action says of a form: taken, or refused with every problem and all that was typed, by the name of the field. `typed` is null
 * until an action has answered: the fields of the page hold it.
 */
export type FormState = {
  readonly outcome: "fresh" | "saved" | "refused";
  readonly typed: Readonly<Record<string, readonly string[]>> | null;
  readonly problems: readonly Problem[];
  /** Others have saved since the page was made: it was made again, and the next save is of what it shows now. */
  readonly isBehind?: boolean;
};

export type FormAction = (before: FormState, form: FormData) => Promise<FormState>;

/** A form that was not sent yet. */
export const FRESH: FormState = { outcome: "fresh", typed: null, problems: [] };

/** A form whose content was written. */
export const SAVED: FormState = { outcome: "saved", typed: null, problems: [] };

/** The form as it stood, when no answer came to it. */
export const unanswered = (before: FormState): FormState => ({ ...before, outcome: "refused", problems: NO_ANSWER });

const NO_ANSWER = [
  {
    place: "",
    message:
      "no answer came from the farm’s computer, so it is not known whether this was saved: look whether it is on, then send it again; what was saved already is not saved twice",
  },
];
