import { z } from "zod";

/**
 * How sure we are of a number: where it comes from. `published`, `published-secondary`, `trade` and `our reading` name a source id of
 * `lib/domain/catalogue/sources.ts`; the others stand alone. `published` is said only where the source says this very number of this crop;
 * `our reading` is a number that we took within a published range, carried over from another place or kind, or reckoned from what is published. `own`
 * is the farm's own number, which overrules the rest.
 */
export const MARKS = [
  "published",
  "published-secondary",
  "trade",
  "our reading",
  "common practice",
  "from memory",
  "own",
] as const;
export type Mark = (typeof MARKS)[number];

/** Where a number comes from: its mark, and the source id when it has one. */
export const originSchema = z.object({ mark: z.enum(MARKS), source: z.string().nullable() });
export type Origin = z.infer<typeof originSchema>;

/** A number with its origin. The unit is in the name of the field that holds it. */
export type Sourced = { readonly count: number } & Origin;

export const COMMON_PRACTICE: Origin = { mark: "common practice", source: null };
export const FROM_MEMORY: Origin = { mark: "from memory", source: null };
export const OWN: Origin = { mark: "own", source: null };

/** "published, DOLE-DAHLIA" · "our reading of USU-RANU" · "common practice" · "your own number" */
export const originInWords = ({ mark, source }: Origin): string =>
  source ? `${markInWords(mark)} ${source}` : markInWords(mark, true);

/** A mark as it stands before its source, or alone: "published," · "our reading of" · "your own number". */
export function markInWords(mark: Mark, isAlone = false): string {
  if (mark === "own") return "your own number";
  if (isAlone) return mark;
  return mark === "our reading" ? "our reading of" : `${mark},`;
}
