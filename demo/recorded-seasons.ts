import type { FarmDatabase } from "#db/client";
import { loadSnapshot } from "#db/read/read";
import { budLook } from "#db/schema/bud-looks";
import { coolerMove } from "#db/schema/cooler-moves";
import { cut } from "#db/schema/cuts";
import { review } from "#db/schema/reviews";
import { placePurchases } from "#db/write/purchases";
import { replaceBooking } from "#db/write/put-bookings";
import { addRow } from "#db/write/put-row";
import { importRecords } from "#db/write/records";
import { type Written, write } from "#db/write/write";
import { addDays, type Day, dayInYear, type MonthDay, toDayNumber, weekdayOfDayNumber } from "#lib/domain/day";
import type { FarmRecords } from "#lib/domain/farm-records";
import type { Snapshot } from "#lib/domain/snapshot";
import { type Plan, plan } from "#lib/plan/road/plan";
import { boughtIn, type Ordered, wintersGreens } from "./bought-in";
import { coolerEmptied } from "./cooler-emptied";
import { type Lived, livedSeason } from "./lived-season";
import { pastRecords } from "./past-records";
import { frostsSeen, plantsCounted } from "./plants-counted";
import { settledBookings } from "./settled-bookings";

/** Of seasons that are over the Thursdays were written down, on which most of a wedding is cut; of the season under way the picking days of the last fortnight, but for Saturdays, when everybody is at market. */
const onThursdays = (day: number): boolean => weekdayOfDayNumber(day) === 4;
const inFortnight = (day: number, until: number): boolean => day >= until - 14 && weekdayOfDayNumber(day) !== 6;

/** The seasons with records, by how many years ago. */
const YEARS_BEFORE = [2, 1, 0] as const;
type YearsBefore = (typeof YEARS_BEFORE)[number];

/** How the seasons came, by how many years ago: two years ago somewhat late and light, last year early and, by its weather, cut short by an early frost. */
const LIVED: Readonly<Record<YearsBefore, Lived>> = {
  2: { lateDays: 5, yieldFactor: 0.92, seed: 12, isWritten: onThursdays },
  1: { lateDays: -1, yieldFactor: 1.04, seed: 11, isWritten: onThursdays },
  0: { lateDays: 3, yieldFactor: 0.97, seed: 10, isWritten: inFortnight },
};

/**
 * Adds the two seasons before, with their plantings, bookings and what was recorded of them, and what was recorded of the farm's own season before `today`.
 * @param records  the farm's records of its season
 */
export function addRecordedSeasons(database: FarmDatabase, records: FarmRecords, season: number, today: Day): Written {
  for (const yearsBefore of YEARS_BEFORE) {
    const past = yearsBefore === 0 ? {} : pastRecords(records, season, yearsBefore);
    const losses = plantsCounted(past.plantings ?? records.plantings ?? [], season - yearsBefore, yearsBefore, today);
    const imported = importRecords(database, { ...past, losses });
    if (!imported.ok) return imported;
  }
  const read = loadSnapshot(database);
  if (!read.ok) return read;
  const killingFrosts = frostsSeen(read.parsed, [season - 2, season - 1], today);
  const snapshot = { ...read.parsed, farm: { ...read.parsed.farm, killingFrosts } };
  const plans = YEARS_BEFORE.map((yearsBefore) => plan(snapshot, season - yearsBefore));
  const frosts = importRecords(database, { farm: snapshot.farm });
  const lived = frosts.ok ? recordSeasons(database, plans, today) : frosts;
  const placed = lived.ok ? placePurchases(database, orderedIn(snapshot, plans, today)) : lived;
  return placed.ok ? lived : placed;
}

/** Writes down what was done in each season, as its plan of the whole season asked for it; gives the number of records. */
const recordSeasons = (database: FarmDatabase, plans: readonly Plan[], today: Day): Written =>
  write(database, () => {
    let rowCount = 0;
    for (const [index, asked] of plans.entries()) {
      const end = dayInYear("01-01" as MonthDay, asked.seasonYear + 1);
      const until = today < end ? today : end;
      const { cuts, budLooks, reviews } = livedSeason(asked, LIVED[YEARS_BEFORE[index]], toDayNumber(until));
      const moves = coolerEmptied(asked, cuts, until);
      const settled = settledBookings(asked, until);
      for (const row of cuts) addRow(database, cut, row);
      for (const row of budLooks) addRow(database, budLook, row);
      for (const row of reviews) addRow(database, review, row);
      for (const row of moves) addRow(database, coolerMove, row);
      for (const { id, ...draft } of settled) replaceBooking(database, id, draft);
      rowCount += cuts.length + budLooks.length + reviews.length + moves.length + settled.length;
    }
    return { title: "recorded the invented seasons", result: rowCount };
  });

/** Days ahead without an event in which there is time for the winter's tables. */
const QUIET_DAYS = 14;

/** What was ordered for the seasons' gaps, and in a quiet fortnight greens for the winter's tables. */
function orderedIn({ bookings, crops }: Snapshot, plans: readonly Plan[], today: Day): Ordered[] {
  const isNear = ({ eventOn }: { eventOn: Day }) => eventOn >= today && eventOn <= addDays(today, QUIET_DAYS);
  const greens = bookings.some(isNear) ? [] : wintersGreens(crops, today);
  return [...plans.flatMap((asked) => boughtIn(asked, today)), ...greens];
}
