import type { FarmDatabase } from "#db/client";
import { loadSnapshot } from "#db/read/read";
import { budLook } from "#db/schema/bud-looks";
import { cut } from "#db/schema/cuts";
import { review } from "#db/schema/reviews";
import { addRow } from "#db/write/put-row";
import { importRecords } from "#db/write/records";
import { type Written, write } from "#db/write/write";
import { type Day, dayInYear, type MonthDay, toDayNumber, weekdayOfDayNumber } from "#lib/domain/day";
import type { FarmRecords } from "#lib/domain/farm-records";
import { type Lived, livedSeason } from "./lived-season";
import { pastRecords } from "./past-records";

/** Of seasons that are over the Thursdays were written down, on which most of a wedding is cut; of the season under way the picking days of the last fortnight, but for Saturdays, when everybody is at market. */
const onThursdays = (day: number): boolean => weekdayOfDayNumber(day) === 4;
const inFortnight = (day: number, until: number): boolean => day >= until - 14 && weekdayOfDayNumber(day) !== 6;

/** How the seasons came, by how many years ago: two years ago somewhat late and light, last year early and, by its weather, cut short by an early frost. */
const LIVED: Readonly<Record<0 | 1 | 2, Omit<Lived, "seasonYear">>> = {
  2: { lateDays: 5, yieldFactor: 0.92, seed: 12, isWritten: onThursdays },
  1: { lateDays: -1, yieldFactor: 1.04, seed: 11, isWritten: onThursdays },
  0: { lateDays: 3, yieldFactor: 0.97, seed: 10, isWritten: inFortnight },
};

/**
 * Adds the two seasons before, with their plantings, bookings and what was recorded of them, and what was recorded of the farm's own season before `today`.
 * @param records  the farm's records of its season
 */
export function addRecordedSeasons(database: FarmDatabase, records: FarmRecords, season: number, today: Day): Written {
  for (const yearsBefore of [2, 1]) {
    const imported = importRecords(database, pastRecords(records, season, yearsBefore));
    if (!imported.ok) return imported;
  }
  const read = loadSnapshot(database);
  if (!read.ok) return read;
  return write(database, () => {
    let rowCount = 0;
    for (const yearsBefore of [2, 1, 0] as const) {
      const seasonYear = season - yearsBefore;
      const until = Math.min(toDayNumber(today), toDayNumber(dayInYear("01-01" as MonthDay, seasonYear + 1)));
      const { cuts, budLooks, reviews } = livedSeason(read.parsed, { ...LIVED[yearsBefore], seasonYear }, until);
      for (const row of cuts) addRow(database, cut, row);
      for (const row of budLooks) addRow(database, budLook, row);
      for (const row of reviews) addRow(database, review, row);
      rowCount += cuts.length + budLooks.length + reviews.length;
    }
    return { title: "recorded the invented seasons", result: rowCount };
  });
}
