import { inWholes } from "#lib/plan/words/numbers";

/** Stems short, in the word and weight of what is missing; "0" where nothing is. */
export const ShortCount = ({ stems }: { stems: number }) =>
  stems > 0 ? <strong className="short-word">{inWholes(stems)}</strong> : "0";
