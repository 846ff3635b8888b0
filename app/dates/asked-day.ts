import { z } from "zod";
import { type Day, daySchema, yearOf } from "#lib/domain/day";
import { DAY_IN_SEASONS, isSeasonYear } from "#lib/domain/season-years";

/** The day that an address asks for: none, one that can be planned, or what was typed and why it cannot. */
export type AskedDay =
  | { readonly kind: "none" }
  | { readonly kind: "day"; readonly day: Day }
  | { readonly kind: "refused"; readonly typed: string; readonly message: string };

const query = z.object({ on: z.string().trim().optional().catch(undefined) });

export function askedDay(parameters: Record<string, unknown>): AskedDay {
  const typed = query.parse(parameters).on ?? "";
  if (typed === "") return { kind: "none" };
  const day = daySchema.safeParse(typed);
  if (!day.success) return { kind: "refused", typed, message: day.error.issues[0].message };
  if (!isSeasonYear(yearOf(day.data))) return { kind: "refused", typed, message: DAY_IN_SEASONS };
  return { kind: "day", day: day.data };
}
