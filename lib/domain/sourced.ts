import { z } from "zod";

/**
 * How sure we are of a number: where it comes from. `published`, `published-secondary` and `trade` name a source id of
 * `lib/domain/catalogue/sources.ts`; the others stand alone. `own` is the farm's own number, which overrules the rest.
 */
export const MARKS = ["published", "published-secondary", "trade", "common practice", "from memory", "own"] as const;
export type Mark = (typeof MARKS)[number];

/** Where a number comes from: its mark, and the source id when it has one. */
export const originSchema = z.object({ mark: z.enum(MARKS), source: z.string().nullable() });
export type Origin = z.infer<typeof originSchema>;

/** A number with its origin. The unit is in the name of the field that holds it. */
export type Sourced = { readonly count: number } & Origin;

export const COMMON_PRACTICE: Origin = { mark: "common practice", source: null };
export const FROM_MEMORY: Origin = { mark: "from memory", source: null };
export const OWN: Origin = { mark: "own", source: null };

/** "published, DOLE-DAHLIA" · "common practice" · "your own number" */
export function originInWords({ mark, source }: Origin): string {
  if (mark === "own") return "your own number";
  return source ? `${mark}, ${source}` : mark;
}
