import { beforeAll, describe, expect, test } from "vitest";
import { demoSnapshot } from "#demo/demo-snapshot";
import { type Day, parseDay, toDay, toDayNumber, yearOf } from "#lib/domain/day";
import { withShortClients } from "#lib/domain/short-clients";
import type { Snapshot } from "#lib/domain/snapshot";
import { eventReviews } from "#lib/plan/learning/review/event-review";
import { seasonLesson } from "#lib/plan/learning/season/season-lesson";
import { firstFrostDay } from "#lib/plan/road/first-frost";
import { frostDayOf } from "#lib/plan/road/forecast";
import type { Plan } from "#lib/plan/road/plan";
import { winterBeds } from "#lib/plan/winter/beds";
import { provenPlan } from "../proven-plan";

const JUNE = parseDay("2027-06-10");
const alone = demoSnapshot(2027);
let june: Snapshot;
beforeAll(() => {
  june = demoSnapshot(2027, JUNE);
});

/** Days late of the season's plantings that something was recorded of, on the mean. */
function meanDaysLate(snapshot: Snapshot, seasonYear: number): number {
  const crops = seasonLesson(snapshot, seasonYear)?.crops ?? [];
  return crops.reduce((sum, { daysLate }) => sum + daysLate, 0) / crops.length;
}

const ofYear = <T>(rows: readonly T[], dayOf: (row: T) => Day, year: number): T[] =>
  rows.filter((row) => yearOf(dayOf(row)) === year);

describe("the demo farm as it stands on 10 June 2027", () => {
  test("its own season is the one it has without the seasons before: same rows, same needs, same stems short, the same beds to choose from", () => {
    const own = june.bookings.filter(({ eventOn }) => eventOn.startsWith("2027"));
    expect(own).toEqual(alone.bookings);
    expect(june.plantings.filter(({ seasonYear }) => seasonYear === 2027)).toEqual(alone.plantings);
    const before = { ...june, weather: alone.weather };
    const [a, b] = [provenPlan(before, 2027), provenPlan(alone, 2027)];
    const needsOf = ({ match }: Plan) =>
      match.needs.map(({ booking: { client }, role, stems }, index) => [client, role, stems, match.shortStems[index]]);
    expect(needsOf(a)).toEqual(needsOf(b));
    const names = (snapshot: Snapshot) => winterBeds(snapshot, 2027).map(({ bed }) => bed.name);
    expect(names(before)).toEqual(names(alone));
  });

  test("the two seasons before have plantings, bookings with names of their own, cuts, looks at buds and reviews; its own those up to yesterday", () => {
    for (const year of [2025, 2026, 2027]) {
      expect(june.plantings.filter(({ seasonYear }) => seasonYear === year).length).toBeGreaterThan(180);
      expect(ofYear(june.bookings, ({ eventOn }) => eventOn, year).length).toBeGreaterThan(20);
      expect(ofYear(june.cuts, ({ cutOn }) => cutOn, year).length).toBeGreaterThan(150);
      expect(ofYear(june.budLooks, ({ lookedOn }) => lookedOn, year).length).toBeGreaterThan(100);
      const reviews = eventReviews(provenPlan(june, year, frostDayOf(june.farm, year), null, toDayNumber(JUNE)));
      expect(reviews.filter(({ isReviewed }) => isReviewed).length).toBeGreaterThan(5);
    }
    for (const { cutOn } of june.cuts) expect(cutOn < JUNE).toBe(true);
    for (const { lookedOn } of june.budLooks) expect(lookedOn < JUNE).toBe(true);
    expect(june.weather && toDay(june.weather.firstDay + june.weather.lowC.length - 1)).toBe("2027-06-09");
    const short = withShortClients(june.bookings).map(({ client }) => client);
    expect(new Set(short).size).toBe(short.length);
    for (const { note } of june.bookings) expect(note).toMatch(/^Invented\./);
  });

  test("every cut was asked for, and made of a planting that stood in the bed that season; most came as asked and some short", () => {
    const places = new Set(
      june.plantings.map(({ seasonYear, bedId, varietyId }) => `${seasonYear} ${bedId} ${varietyId}`),
    );
    for (const { cutOn, bedId, varietyId, stemsCut, stemsAsked } of june.cuts) {
      expect(places).toContain(`${yearOf(cutOn)} ${bedId} ${varietyId}`);
      expect(stemsCut).toBeLessThanOrEqual(stemsAsked ?? 0);
    }
    const shortCount = june.cuts.filter(({ stemsCut, stemsAsked }) => stemsCut < (stemsAsked ?? 0)).length;
    expect(shortCount).toBeGreaterThan(june.cuts.length / 20);
    expect(shortCount).toBeLessThan(june.cuts.length / 2);
  });

  test("two years ago came late, last year did not, and this one runs a little late: that is what the records have shown", () => {
    expect(meanDaysLate(june, 2025)).toBeGreaterThan(3);
    expect(Math.abs(meanDaysLate(june, 2026))).toBeLessThan(2);
    expect(meanDaysLate(june, 2027)).toBeGreaterThan(1);
  });

  test("last year's frost came early, and no dahlia was cut after it", () => {
    const frost = june.weather && firstFrostDay(june.weather, 2026);
    expect(frost && toDay(frost) < `2026-${june.farm.frost.firstAutumnP50}`).toBe(true);
    const wintering = new Set(june.crops.filter(({ overwinters }) => overwinters).map(({ id }) => id));
    const dahlias = new Set(june.varieties.filter(({ cropId }) => wintering.has(cropId)).map(({ id }) => id));
    const late = june.cuts.filter(
      ({ cutOn, varietyId, stemsCut }) => dahlias.has(varietyId) && cutOn.startsWith("2026-1") && stemsCut > 0,
    );
    expect(late.length).toBeGreaterThan(0);
    for (const { cutOn } of late) expect(frost && toDayNumber(cutOn) < frost).toBe(true);
  });

  test("what stood for longer than a season is the same plants, and was not there before it was planted", () => {
    const peonies = june.plantings.filter(({ plantedOn }) => plantedOn.startsWith("2021"));
    expect(new Set(peonies.map(({ seasonYear }) => seasonYear))).toEqual(new Set([2025, 2026, 2027]));
    for (const { plantedOn, seasonYear } of june.plantings) expect(yearOf(plantedOn)).toBeLessThanOrEqual(seasonYear);
  });
});

test("the same day gives the same records, and before the season none of its own are there", () => {
  expect(demoSnapshot(2027, JUNE).cuts).toEqual(june.cuts);
  const november = demoSnapshot(2027, parseDay("2026-11-25"));
  expect(ofYear(november.cuts, ({ cutOn }) => cutOn, 2027)).toEqual([]);
  expect(ofYear(november.cuts, ({ cutOn }) => cutOn, 2026).length).toBeGreaterThan(150);
});
