import { eq } from "drizzle-orm";
import type { FarmDatabase } from "#db/client";
import { farm } from "#db/schema/farm";
import { type Day, inFull, yearOf } from "#lib/domain/day";
import { refuse } from "./refusal";
import { type Written, write } from "./write";

/** Writes down the killing frost of a season, in the place of one of the same year, and leaves every other setting as it is. */
export const recordFrost = (database: FarmDatabase, on: Day): Written<Day> =>
  write(database, () => {
    putFrosts(database, (frosts) => [...withoutYear(frosts, yearOf(on)), on].sort());
    return { title: `wrote down a killing frost on ${inFull(on)}`, result: on };
  });

/** Takes the killing frost of a year back. Refused when none was written down. */
export const removeFrost = (database: FarmDatabase, year: number): Written<number> =>
  write(database, () => {
    putFrosts(database, (frosts) => {
      const left = withoutYear(frosts, year);
      return left.length < frosts.length ? left : refuse("year", `no killing frost of ${year} is written down`);
    });
    return { title: `took back the killing frost of ${year}`, result: year };
  });

const withoutYear = (frosts: readonly string[], year: number) => frosts.filter((on) => !on.startsWith(`${year}-`));

function putFrosts(database: FarmDatabase, changed: (frosts: readonly string[]) => readonly string[]): void {
  const row = database.select({ id: farm.id, killingFrosts: farm.killingFrosts }).from(farm).get();
  if (!row) refuse("farm", "the farm has not been started yet");
  database
    .update(farm)
    .set({ killingFrosts: changed(row.killingFrosts.map(String)) })
    .where(eq(farm.id, row.id))
    .run();
}
