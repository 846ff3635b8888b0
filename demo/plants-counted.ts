import { type Day, dayInYear, type MonthDay, toDay, toDayNumber } from "#lib/domain/day";
import type { LossRecord, PlantingRecord } from "#lib/domain/farm-records";
import type { LossCause } from "#lib/domain/records/loss";
import type { Snapshot } from "#lib/domain/snapshot";
import { frostOnRecord } from "#lib/plan/road/first-frost";

/** The bed that was left in the ground for trial over the winter before the season so many years ago. That of the farm's own season is on its sheet. */
export const TRIAL_BED: Readonly<Record<number, string>> = { 1: "Long Field 10", 2: "Long Field 6" };

/** Of ten clumps, those that a count missed, by bed in turn. Invented. */
const MISSED_IN_STORE = [1, 0, 2, 1, 1, 0, 2] as const;
const MISSED_IN_GROUND = [2, 3] as const;

/** What took plants in summer, by how many seasons ago: bed, day, what, and plants left of ten. Invented. */
const TAKEN: Readonly<
  Record<number, { readonly bed: string; readonly on: MonthDay; readonly cause: LossCause; readonly ofTen: number }>
> = {
  0: { bed: "Long Field 3", on: "05-24" as MonthDay, cause: "voles", ofTen: 9 },
  1: { bed: "South Slope 9", on: "07-14" as MonthDay, cause: "hail or wind", ofTen: 6 },
  2: { bed: "Long Field 3", on: "06-20" as MonthDay, cause: "voles", ofTen: 5 },
};

/**
 * What somebody counted of the plants of a season until a day: in spring the clumps that came out of the store and through the winter in the ground, in summer a bed that
 * voles or hail took. Of beds planted after 15 May nobody counted what came out of the store.
 * @param plantings  those of the season, which is that of `year`
 * @param until      the first day that is not over
 */
export function plantsCounted(
  plantings: readonly PlantingRecord[],
  year: number,
  yearsBefore: number,
  until: Day,
): LossRecord[] {
  const dahlias = plantings.filter(({ crop }) => crop === "Dahlia");
  const kept = dahlias.filter(({ treatment }) => treatment === "kept-in-ground");
  const dug = dahlias.filter(
    ({ treatment, plantedOn }) => treatment === "spring-planted" && plantedOn <= `${year}-05-15`,
  );
  const taken = TAKEN[yearsBefore];
  const counts = [
    ...dug.map((row, index) =>
      lossOf(row, row.plantedOn, "winter in store", 10 - MISSED_IN_STORE[index % MISSED_IN_STORE.length]),
    ),
    ...kept.map((row, index) =>
      lossOf(row, onDayOf(year, "04-20"), "winter in the ground", 10 - MISSED_IN_GROUND[index % 2]),
    ),
    ...plantings
      .filter(({ bed }) => bed === taken?.bed)
      .map((row) => lossOf(row, onDayOf(year, taken.on), taken.cause, taken.ofTen)),
  ];
  return counts.filter(({ seenOn }) => seenOn < until);
}

const onDayOf = (year: number, monthDay: string): Day => dayInYear(monthDay as MonthDay, year);

const lossOf = (
  { bed, crop, variety, colour, plantCount }: PlantingRecord,
  seenOn: Day,
  cause: LossCause,
  ofTen: number,
): LossRecord => ({
  ...{ bed, crop, variety, colour, seenOn, cause },
  plantsBefore: plantCount,
  plantsLeft: Math.round((plantCount * ofTen) / 10),
});

/** The killing frosts of the seasons that are over, from the recorded weather: the first of each autumn. */
export function frostsSeen({ weather }: Pick<Snapshot, "weather">, seasons: readonly number[], until: Day): Day[] {
  return seasons.flatMap((year) => {
    const end = Math.min(toDayNumber(until) - 1, toDayNumber(onDayOf(year, "12-31")));
    const frost = weather && frostOnRecord(weather, year, end);
    return frost === null ? [] : toDay(frost);
  });
}
