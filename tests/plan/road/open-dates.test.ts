import { describe, expect, test } from "vitest";
import { seededFarm } from "#demo/seeded-farm";
import { toDayNumber } from "#lib/domain/day";
import { checkMatch } from "#lib/plan/road/match";
import { openDates } from "#lib/plan/road/open-dates";
import { poorMatches } from "#lib/plan/road/unusual-years";
import { provenPlan } from "../../proven-plan";
import { booking, crop, curve, day, farm, focal, planting, snapshot, variety } from "../../small-farm";
import { keptDays } from "./kept-days";

describe("open dates", () => {
  /** 70 cream stems, 10 a day from Monday 7 June, picked Mon, Wed, Thu, Sat; those of Tuesday wait for Wednesday. Held 4 days, lead 2. */
  test("[W8] a Saturday reached by 8 to 10 June has 30 stems, and 10 once a booking takes 20", () => {
    const bookings = [booking({ id: 1, stemLines: focal(20) })];
    const saturday = day("2027-06-12");
    expect(openDates(provenPlan(snapshot(), 2027), [], [saturday])).toEqual([
      {
        day: saturday,
        focalStems: 30,
        byColour: [{ colour: "cream", stems: 30 }],
        poorYearStems: 30,
        promisedFocalStems: 0,
        shortFocalStems: 0,
      },
    ]);
    const [taken] = openDates(provenPlan(snapshot({ bookings }), 2027), [], [saturday]);
    expect([taken.focalStems, taken.promisedFocalStems, taken.shortFocalStems]).toEqual([10, 20, 0]);
  });

  test("[W8] only focal crops count, and colours are told apart", () => {
    const twoCrops = snapshot({
      crops: [crop({ id: 1 }), crop({ id: 2, roles: ["filler"], usualRole: "filler" })],
      varieties: [
        variety({ id: 1 }),
        variety({ id: 2, colour: "plum" }),
        variety({ id: 3, cropId: 2, colour: "blue" }),
      ],
      plantings: [1, 2, 3].map((id) => planting({ id, varietyId: id, plantCount: 70 * id })),
    });
    const [{ focalStems, byColour }] = openDates(provenPlan(twoCrops, 2027), [], [day("2027-06-12")]);
    expect([focalStems, byColour.map(({ colour, stems }) => [colour, stems])]).toEqual([
      90,
      [
        ["cream", 30],
        ["plum", 60],
      ],
    ]);
  });

  test("[W8] without days it lists the Saturday of every week, and over invented farms each is the surplus of its window", () => {
    for (const seed of [4, 5]) {
      const invented = seededFarm(seed, { bedCount: 40, bookingCount: 20 });
      const planned = provenPlan(invented, 2027);
      const dates = openDates(planned, poorMatches(planned));
      expect(dates.map(({ day: saturday }) => toDayNumber(saturday) - 5)).toEqual(
        planned.weeks.map(({ monday }) => toDayNumber(monday)),
      );
      for (const { day: saturday, focalStems, byColour, poorYearStems } of dates) {
        const eventDay = toDayNumber(saturday);
        const free = planned.work.unclaimed.filter(
          ({ crop, cutDay }) =>
            crop.roles.includes("focal") && eventDay - cutDay >= 2 && eventDay - cutDay <= keptDays(crop, invented)[1],
        );
        expect(focalStems).toBe(free.reduce((sum, { stems }) => sum + stems, 0));
        expect(byColour.reduce((sum, { stems }) => sum + stems, 0)).toBe(focalStems);
        expect(poorYearStems).toBeLessThanOrEqual(focalStems);
        expect(poorYearStems).toBeGreaterThanOrEqual(0);
      }
    }
  });

  /** Yield spread 0.5: a poor year gives 1 − 0.5 × 1.2816 × √½ = 0.547 of 30 stems, 16.4, and cuts are whole stems of three days. */
  test("[G6] of 30 stems open, a poor year at half spread leaves 16, and once a booking takes 20 it leaves none", () => {
    const oneFrost = { ...farm().frost, firstAutumnP10: farm().frost.firstAutumnP50 };
    const openOn = (asked: number) => {
      const planned = provenPlan(
        snapshot({
          farm: farm({ frost: oneFrost }),
          curves: [curve({ firstCutSpreadDays: 0, yieldSpread: 0.5 })],
          bookings: asked > 0 ? [booking({ id: 1, stemLines: focal(asked) })] : [],
        }),
        2027,
      );
      const poor = poorMatches(planned);
      for (const year of poor) expect(checkMatch(year)).toEqual([]);
      return openDates(planned, poor, [day("2027-06-12")])[0];
    };
    expect(Math.abs(openOn(0).poorYearStems - 16)).toBeLessThanOrEqual(1);
    expect([openOn(20).focalStems, openOn(20).poorYearStems]).toEqual([10, 0]);
  });

  test("[G6] without spreads and with one frost date all that is likely can be promised", () => {
    const planned = provenPlan(snapshot({ curves: [curve({ firstCutSpreadDays: 0, yieldSpread: 0 })] }), 2027);
    for (const { focalStems, poorYearStems } of openDates(planned, poorMatches(planned)))
      expect(poorYearStems).toBe(focalStems);
  });
});
