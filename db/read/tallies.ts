import { and, asc, eq } from "drizzle-orm";
import type { FarmDatabase } from "#db/client";
import { tally } from "#db/schema/tallies";
import type { KeptTally } from "#lib/domain/tally";

/** The tallies of a day that stand, in the order in which they came. */
export const talliesOn = (database: FarmDatabase, day: string): KeptTally[] =>
  database.select().from(tally).where(eq(tally.cutOn, day)).orderBy(asc(tally.id)).all();

/** A row of a day's list: a variety in a bed. */
export type TallyPlace = { readonly cutOn: string; readonly bedId: number; readonly varietyId: number };

/** The rows of `tally` at a place. */
export const talliesAt = (database: FarmDatabase, { cutOn, bedId, varietyId }: TallyPlace) =>
  database
    .select()
    .from(tally)
    .where(and(eq(tally.cutOn, cutOn), eq(tally.bedId, bedId), eq(tally.varietyId, varietyId)))
    .all();
