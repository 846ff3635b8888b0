import { describe, expect, test } from "vitest";
import { CATALOGUE } from "#lib/domain/catalogue/crops";
import { addDays, monthDayOf, toDay, toDayNumber } from "#lib/domain/day";
import type { BloomCurve } from "#lib/domain/records/curve";
import type { Cut } from "#lib/domain/records/cut";
import type { Planting } from "#lib/domain/records/planting";
import { seededRandom, wholeBetween } from "#lib/maths/random";
import { forecast } from "#lib/plan/road/forecast";
import { gradedInWords } from "#lib/plan/words/why-words";
import { provenPlan } from "../../proven-plan";
import { booking, crop, curve, day, farm as everyDay, focal, monthDay, planting, snapshot } from "../../small-farm";
import { goodShareOf } from "./bloom-by-spec";
import { on } from "./lived-season";

const SHARES = [0.9, 0.5, 0.8, 1];
const shared = (given: Partial<BloomCurve> = {}): BloomCurve =>
  curve({
    anchor: { kind: "day-of-year", firstCut: monthDay("05-24") },
    stemsPerPlantByWeek: [1, 1],
    saleableBySeason: SHARES,
    ...given,
  });

/** What 100 plants open in each week. */
function weeksOf(bloom: BloomCurve, given: Partial<Planting> = {}): number[] {
  const farm = snapshot({
    crops: [crop({ id: 1 })],
    curves: [bloom],
    plantings: [planting({ id: 1, plantCount: 100, gradeOutShare: null, ...given })],
  });
  const { openingStems } = forecast(farm, 2027).plantings[0];
  return Array.from({ length: openingStems.length / 7 }, (_, week) =>
    openingStems.subarray(week * 7, week * 7 + 7).reduce((sum, stems) => sum + stems, 0),
  );
}

describe("what is fit to sell", () => {
  test("[F17] 100 plants of a stem in each of two weeks, from 24 and 31 May, give 90 and 90 in spring; a day later the second week begins in summer and gives 50", () => {
    expect(weeksOf(shared())).toEqual([90, 90]);
    expect(weeksOf(shared({ anchor: { kind: "day-of-year", firstCut: monthDay("05-25") } }))).toEqual([90, 50]);
  });

  test("[F17] her own share graded out, none of them too, takes the place of the curve's: never do both count", () => {
    expect(weeksOf(shared(), { gradeOutShare: 0.3 })).toEqual([70, 70]);
    expect(weeksOf(shared(), { gradeOutShare: 0 })).toEqual([100, 100]);
    expect(weeksOf(shared({ saleableBySeason: [] }))).toEqual([100, 100]);
  });

  test("[F17] seasons begin with March, June, September and December, and a bloom that waits for the frost is graded to its end", () => {
    const inWeekFrom = (firstCut: string) =>
      weeksOf(shared({ stemsPerPlantByWeek: [1], anchor: { kind: "day-of-year", firstCut: monthDay(firstCut) } }))[0];
    expect(["02-28", "03-01", "05-31", "06-01", "08-31", "09-01", "11-30", "12-01"].map(inWeekFrom)).toEqual([
      100, 90, 90, 50, 50, 80, 80, 100,
    ]);
    const toFrost = shared({ ends: "frost", anchor: { kind: "day-of-year", firstCut: monthDay("08-18") } });
    const farm = snapshot({
      crops: [crop({ id: 1, tender: true })],
      curves: [toFrost],
      plantings: [planting({ id: 1, plantCount: 100, gradeOutShare: null })],
    });
    const { openingStems } = forecast(farm, 2027).plantings[0];
    expect(openingStems.length).toBeGreaterThan(14);
    expect(openingStems.subarray(0, 14).reduce((sum, stems) => sum + stems, 0)).toBe(100);
    expect(openingStems.subarray(14, 21).reduce((sum, stems) => sum + stems, 0)).toBe(80);
  });

  test("[F17] [P1] [T2] on a summer's day twice the stems are cut where half are fit to sell, and half of what was cut is good", () => {
    const farm = snapshot({
      farm: everyDay({ pickingWeekdays: [1, 2, 3, 4, 5, 6, 7], leadDays: 1 }),
      crops: [crop({ id: 1, holdDays: { count: 4, mark: "own", source: null } })],
      curves: [shared({ anchor: { kind: "day-of-year", firstCut: monthDay("06-07") } })],
      plantings: [planting({ id: 1, plantCount: 140, gradeOutShare: null })],
      bookings: [booking({ id: 1, eventOn: day("2027-06-11"), stemLines: focal(20), spareShare: 0 })],
    });
    const { pickList } = provenPlan(farm, 2027);
    expect(pickList.map(({ stems }) => stems).reduce((sum, stems) => sum + stems, 0)).toBe(20);
    for (const { stems, stemsToCut } of pickList) expect(stemsToCut).toBe(2 * stems);
    const written = (stemsCut: number): Cut => ({
      ...{ id: 1, cutOn: day("2027-06-10"), bedId: 1, varietyId: 1, bookingId: 1 },
      ...{ stemsCut, stemsAsked: null, goodStems: null, restStands: false },
    });
    const { supplies } = on({ ...farm, cuts: [written(21)] }, "2027-06-10").match;
    const good = supplies.flatMap(({ bookingId, days, stems }) =>
      bookingId === 1 ? days.flatMap((one, at) => (toDay(one) === "2027-06-10" ? [stems[at]] : [])) : [],
    );
    expect(good).toEqual([10]);
  });

  test("[F17] day by day: 300 plantings open what counting each week by its own season gives", () => {
    const random = seededRandom(17);
    const share = () => wholeBetween(random, 0, 20) / 20;
    for (let run = 0; run < 300; run++) {
      const first = addDays(day("2027-01-05"), wholeBetween(random, 0, 320));
      const weeks = Array.from({ length: wholeBetween(random, 1, 6) }, () => wholeBetween(random, 0, 30) / 10);
      const bloom = shared({
        anchor: { kind: "day-of-year", firstCut: monthDayOf(first) },
        stemsPerPlantByWeek: weeks,
        saleableBySeason: [share(), share(), share(), share()],
      });
      const of = planting({ id: 1, gradeOutShare: null });
      const expected = weeks.map(
        (stems, week) => 100 * stems * goodShareOf(bloom, of, toDayNumber(addDays(first, week * 7))),
      );
      const opened = weeksOf(bloom);
      opened.forEach((stems, week) => {
        expect(Math.abs(stems - expected[week])).toBeLessThan(1.5);
      });
      const all = expected.reduce((sum, stems) => sum + stems, 0);
      expect(Math.abs(opened.reduce((sum, stems) => sum + stems, 0) - all)).toBeLessThanOrEqual(0.5 + 1e-6);
    }
  });

  test("the page of a planting says by whose word what is graded out", () => {
    const row = (gradeOutShare: number | null, bloom = shared()) =>
      gradedInWords({ planting: planting({ id: 1, gradeOutShare }), curve: bloom });
    expect(row(null)).toBe(
      "Fit to sell of what is cut: spring 90 %, summer 50 %, autumn 80 % and winter 100 %, as the curve says; your own share graded out would take its place.",
    );
    expect(row(0.12)).toBe(
      "Graded out: 12 % of what is cut, by your own word, in place of what the curve says is fit to sell.",
    );
    expect(row(null, shared({ saleableBySeason: [0.9, 0.9, 0.9, 0.9] }))).toMatch(/cut: 90 % in every season, as/);
    expect(row(null, shared({ saleableBySeason: [] }))).toBeNull();
  });

  test("every built-in yield counts all stems, so that each curve has its shares, and says beside them where they come from", () => {
    for (const { name, curves } of CATALOGUE)
      for (const { treatment, saleableBySeason, note } of curves) {
        expect(saleableBySeason.length, `${name}, ${treatment}`).toBe(4);
        expect(note, `${name}, ${treatment}`).toMatch(/Fit to sell of the stems cut: .*(from memory|our reading)/);
      }
  });
});
