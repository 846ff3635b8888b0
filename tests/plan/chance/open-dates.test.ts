import { describe, expect, test } from "vitest";
import { seededFarm } from "#demo/seeded-farm";
import { toDayNumber } from "#lib/domain/day";
import { openDates } from "#lib/plan/chance/open-dates";
import { provenPlan } from "../../proven-plan";
import { booking, crop, day, focal, planting, snapshot, variety } from "../../small-farm";

describe("open dates", () => {
  /** 70 cream stems, 10 a day from Monday 7 June, picked Mon, Wed, Thu, Sat; those of Tuesday wait for Wednesday. Held 4 days, lead 2. */
  test("[W8] a Saturday reached by 8 to 10 June has 30 stems, and 10 once a booking takes 20", () => {
    const bookings = [booking({ id: 1, stemLines: focal(20) })];
    const saturday = day("2027-06-12");
    expect(openDates(provenPlan(snapshot(), 2027), { days: [saturday] })).toEqual([
      {
        day: saturday,
        focalStems: 30,
        byColour: [{ colour: "cream", stems: 30, band: null }],
        band: null,
        promisedFocalStems: 0,
        shortFocalStems: 0,
      },
    ]);
    const [taken] = openDates(provenPlan(snapshot({ bookings }), 2027), { days: [saturday] });
    expect([taken.focalStems, taken.promisedFocalStems, taken.shortFocalStems]).toEqual([10, 20, 0]);
  });

  test("[W8] only focal crops count, and colours are told apart", () => {
    const farm = snapshot({
      crops: [crop({ id: 1 }), crop({ id: 2, roles: ["filler"], usualRole: "filler" })],
      varieties: [
        variety({ id: 1 }),
        variety({ id: 2, colour: "plum" }),
        variety({ id: 3, cropId: 2, colour: "blue" }),
      ],
      plantings: [1, 2, 3].map((id) => planting({ id, varietyId: id, plantCount: 70 * id })),
    });
    const [{ focalStems, byColour }] = openDates(provenPlan(farm, 2027), { days: [day("2027-06-12")] });
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
      const planned = provenPlan(seededFarm(seed, { bedCount: 40, bookingCount: 20 }), 2027);
      const dates = openDates(planned);
      expect(dates.map(({ day: saturday }) => toDayNumber(saturday) - 5)).toEqual(
        planned.weeks.map(({ monday }) => toDayNumber(monday)),
      );
      for (const { day: saturday, focalStems, byColour } of dates) {
        const eventDay = toDayNumber(saturday);
        const free = planned.surplus.filter(
          ({ crop: { roles, holdDays }, cutDay }) =>
            roles.includes("focal") && eventDay - cutDay >= 2 && eventDay - cutDay <= Math.max(2, holdDays.count),
        );
        expect(focalStems).toBe(free.reduce((sum, { stems }) => sum + stems, 0));
        expect(byColour.reduce((sum, { stems }) => sum + stems, 0)).toBe(focalStems);
      }
    }
  });

  test("a band of a simulation is laid beside its day and its colours", () => {
    const band = { low: 5, likely: 30, high: 55 };
    const saturday = day("2027-06-12");
    const bands = [{ day: saturday, stems: band, byColour: [{ colour: "cream" as const, stems: band }] }];
    const [open] = openDates(provenPlan(snapshot(), 2027), { days: [saturday], bands });
    expect([open.band, open.byColour[0].band]).toEqual([band, band]);
  });
});
