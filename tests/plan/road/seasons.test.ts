import { describe, expect, test } from "vitest";
import { toDay, yearOf } from "#lib/domain/day";
import { OWN } from "#lib/domain/sourced";
import { withDraft } from "#lib/plan/road/draft";
import { meetingSeasons } from "#lib/plan/road/seasons";
import { provenPlan } from "../../proven-plan";
import { booking, crop, day, farm, focal, planting, snapshot } from "../../small-farm";
import { aroundNewYear } from "./new-year-farm";

/** 30 stems that keep 10 days, cut on 30 December 2027. */
const stored = {
  crops: [crop({ id: 1, holdDays: { count: 10, ...OWN } })],
  plantings: [],
  coolerStock: [{ id: 1, varietyId: 1, cutOn: day("2027-12-30"), stemCount: 30 }],
};
const asks = (id: number, eventOn: string, stems = 30) =>
  booking({ id, eventOn: day(eventOn), stemLines: focal(stems) });

describe("New Year", () => {
  test("[M8] is no wall: stems cut on 30 December serve 2 January, and the pick lists of both seasons say so", () => {
    const around = snapshot({ ...stored, bookings: [asks(1, "2028-01-02", 20)] });
    const [old, next] = [2027, 2028].map((year) => provenPlan(around, year));
    expect([old.meetingSeasons, next.meetingSeasons]).toEqual([
      [2027, 2028],
      [2027, 2028],
    ]);
    expect(next.gaps).toEqual([]);
    expect(next.weeks.flatMap(({ roles }) => roles).reduce((sum, { coveredStems }) => sum + coveredStems, 0)).toBe(20);
    for (const { pickList } of [old, next])
      expect(pickList.map(({ cutDay, stems, booking }) => [toDay(cutDay), stems, booking.id])).toEqual([
        ["2027-12-30", 20, 1],
      ]);
    expect([old.surplus.map(({ stems }) => stems), next.surplus]).toEqual([[10], []]);
    expect(old.weeks.every(({ bookingIds }) => bookingIds.length === 0)).toBe(true);
  });

  test("[M8] no stem is promised twice: bookings on both sides share the 30 stems, the earlier served, each season showing its own gap", () => {
    const both = snapshot({ ...stored, bookings: [asks(1, "2028-01-03", 25), asks(2, "2027-12-31", 15)] });
    const [old, next] = [2027, 2028].map((year) => provenPlan({ ...both, farm: farm({ leadDays: 1 }) }, year));
    const short = (plan: typeof old) => plan.gaps.map(({ need, shortStems }) => [need.booking.id, shortStems]);
    expect([short(old), short(next)]).toEqual([[], [[1, 10]]]);
    expect(next.gaps[0].reasons).toEqual([{ reason: "promised", stems: 10 }]);
    expect([old.surplus, next.surplus]).toEqual([[], []]);
  });

  test("a season that no stem of another reaches is planned alone, whatever else is on the farm", () => {
    const apart = snapshot({
      bookings: [asks(1, "2027-06-12"), asks(2, "2028-06-10"), asks(3, "2028-01-02")],
      plantings: [planting({ id: 1 }), planting({ id: 2, seasonYear: 2028, plantedOn: day("2028-05-20") })],
    });
    expect([2027, 2028, 2029].map((year) => meetingSeasons(apart, year))).toEqual([[2027], [2028], [2029]]);
    const { forecast, match, gaps, weeks } = provenPlan(apart, 2027);
    expect(match.needs.map(({ booking }) => booking.id)).toEqual([1]);
    expect([forecast.plantings.length, gaps.length, weeks.length]).toEqual([1, 0, 2]);
  });

  test("[L2] a draft that makes two seasons meet is matched as it will be when saved", () => {
    const before = snapshot({ ...stored, bookings: [asks(2, "2027-12-31", 15)], farm: farm({ leadDays: 1 }) });
    const draft = asks(9, "2028-01-03", 25);
    const { match, gaps } = withDraft(provenPlan(before, 2028), draft, null);
    const saved = provenPlan({ ...before, bookings: [...before.bookings, draft] }, 2028);
    expect(match.shortStems).toEqual(saved.match.shortStems);
    expect(gaps.map(({ shortStems }) => shortStems)).toEqual([10]);
  });

  test("[M8] [S1] over 30 farms moved to the turn of the year, each lot is given once, and the two seasons' gaps and stems over make up the match", () => {
    let metCount = 0;
    for (let seed = 1; seed <= 30; seed++) {
      const given = aroundNewYear(seed);
      const plans = [2027, 2028].map((year) => provenPlan(given, year));
      if (plans[0].meetingSeasons.length === 2) metCount++;
      const [old, next] = plans;
      if (old.meetingSeasons.length === 1) continue;
      expect(old.match.servings).toEqual(next.match.servings);
      const sum = (stems: Iterable<number>) => [...stems].reduce((total, count) => total + count, 0);
      const over = sum(plans.flatMap(({ work }) => work.over.map(({ stems }) => stems)));
      const served = sum(old.work.match.servings.map(({ stems }) => stems));
      expect(over + served).toBe(sum(old.match.supplies.flatMap(({ stems }) => stems)));
      expect(sum(plans.flatMap(({ gaps }) => gaps.map(({ shortStems }) => shortStems)))).toBe(
        sum(old.match.shortStems),
      );
      for (const { weeks, seasonYear } of plans) {
        const own = old.match.needs.filter(({ booking }) => yearOf(booking.eventOn) === seasonYear);
        expect(sum(weeks.flatMap(({ roles }) => roles.map(({ needStems }) => needStems)))).toBe(
          sum(own.map(({ stems }) => stems)),
        );
      }
    }
    expect(metCount).toBeGreaterThan(20);
  });
});
