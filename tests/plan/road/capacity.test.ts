import { describe, expect, test } from "vitest";
import { seededFarm } from "#demo/seeded-farm";
import { mondayOf, toDay, toDayNumber } from "#lib/domain/day";
import type { Farm } from "#lib/domain/records/farm-settings";
import { planLoad, strainsBetween, strainsOf } from "#lib/plan/road/capacity";
import { provenPlan } from "../../proven-plan";
import { booking, day, farm, focal, snapshot } from "../../small-farm";

/** 25 stems for Saturday 12 June 2027: 15 are cut on Wednesday the 9th and 10 on Thursday the 10th, a bucket each day. */
const planned = (limits: Partial<Farm>, eventOn = "2027-06-12") =>
  provenPlan(
    snapshot({ farm: farm(limits), bookings: [booking({ id: 1, eventOn: day(eventOn), stemLines: focal(25) })] }),
    2027,
  );
const inWeek = (limits: Partial<Farm>, eventOn?: string) =>
  strainsBetween(planned(limits, eventOn), toDayNumber(day("2027-06-07")), toDayNumber(day("2027-06-13"))).map(
    ({ kind, day: on, takes, has }) => [kind, toDay(on), takes, has],
  );

describe("25 stems for a Saturday", () => {
  test("[C1] [C4] at 5 stems an hour are 3 hours of cutting on Wednesday, where there are 2, and 2 on Thursday, which fit", () => {
    expect(inWeek({ cutStemsPerHour: 5, cutHoursPerDay: 2 })).toEqual([["cutting", "2027-06-09", 3, 2]]);
    expect(inWeek({ cutStemsPerHour: 5, cutHoursPerDay: 3 })).toEqual([]);
  });

  test("[C2] at 10 stems an hour are 2.5 hours at the bench of their week, which fit into 2.5 and not into 2", () => {
    expect(inWeek({ benchStemsPerHour: 10, benchHoursPerWeek: 2 })).toEqual([["bench", "2027-06-07", 2.5, 2]]);
    expect(inWeek({ benchStemsPerHour: 10, benchHoursPerWeek: 2.5 })).toEqual([]);
  });

  test("[C2] for a Monday are made up in the week before it", () => {
    expect(inWeek({ benchStemsPerHour: 10, benchHoursPerWeek: 2 }, "2027-06-14")).toEqual([
      ["bench", "2027-06-07", 2.5, 2],
    ]);
  });

  test("[C3] stand in one bucket over Wednesday night, and in two over those of Thursday and Friday: with one place these two are told", () => {
    expect(inWeek({ bucketPlaces: 1 })).toEqual([
      ["cooler", "2027-06-10", 2, 1],
      ["cooler", "2027-06-11", 2, 1],
    ]);
    expect(inWeek({ bucketPlaces: 2 })).toEqual([]);
  });

  test("[C4] [N5] what the farm has not said has no limit, and an enquiry takes nothing", () => {
    expect(inWeek({})).toEqual([]);
    const enquiry = booking({ id: 1, status: "enquiry", stemLines: focal(25) });
    const load = planLoad(provenPlan(snapshot({ bookings: [enquiry] }), 2027));
    expect([load.stemsToCut.size, load.benchStems.size, load.bucketsStanding.size]).toEqual([0, 0, 0]);
  });
});

test("[C1] [C2] [C3] on 20 seeded farms each day and week takes what one counts for it alone, line by line and night by night", () => {
  let countedCount = 0;
  for (let seed = 1; seed <= 20; seed++) {
    const made = provenPlan(seededFarm(seed, { bedCount: 12, bookingCount: 12 }), 2027);
    const load = planLoad(made);
    const lines = made.pickList;
    const sum = (counts: readonly number[]) => counts.reduce((all, one) => all + one, 0);
    for (let on = toDayNumber(day("2027-01-01")); on < toDayNumber(day("2028-01-01")); on++) {
      const cut = lines.filter(({ cutDay, stand }) => cutDay === on && stand.kind === "planting");
      expect(load.stemsToCut.get(on) ?? 0).toBe(sum(cut.map(({ stemsToCut }) => stemsToCut)));
      const standing = lines.filter(({ cutDay, booking: { eventOn } }) => cutDay <= on && on < toDayNumber(eventOn));
      expect(load.bucketsStanding.get(on) ?? 0).toBe(sum(standing.map(({ bucketCount }) => bucketCount)));
      if (mondayOf(toDay(on)) !== toDay(on)) continue;
      const ofWeek = made.work.match.needs.filter(({ eventDay }) => eventDay > on && eventDay <= on + 7);
      expect(load.benchStems.get(on) ?? 0).toBeCloseTo(sum(ofWeek.map(({ stemsWithoutSpare }) => stemsWithoutSpare)));
      countedCount += ofWeek.length;
    }
    const limits = { ...farm(), cutHoursPerDay: 1, benchHoursPerWeek: 20, bucketPlaces: 9 };
    expect(strainsOf(load, limits).map(({ kind }) => kind)).toHaveLength(
      [...load.stemsToCut.values()].filter((stems) => stems > 150).length +
        [...load.benchStems.values()].filter((stems) => stems / 36 > 20 + 1e-9).length +
        [...load.bucketsStanding.values()].filter((buckets) => buckets > 9).length,
    );
  }
  expect(countedCount).toBeGreaterThan(100);
});
