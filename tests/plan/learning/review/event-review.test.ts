import { describe, expect, test } from "vitest";
import { seededFarm } from "#demo/seeded-farm";
import { toDayNumber } from "#lib/domain/day";
import type { Purchase } from "#lib/domain/records/purchase";
import type { Snapshot } from "#lib/domain/snapshot";
import { eventReviews, stemsCostCents } from "#lib/plan/learning/review/event-review";
import { provenPlan } from "../../../proven-plan";
import { booking, crop, day, focal, planting, snapshot, variety } from "../../../small-farm";

/** 140 focal stems in the week of 7 June; a wedding on Saturday 12 June asks for 40, with a tenth of spare. */
const WEDDING = booking({ id: 1, stemLines: focal(40), spareShare: 0.1, priceCents: 50_000 });
const FARM = snapshot({ bookings: [WEDDING], plantings: [planting({ id: 1, plantCount: 140 })] });
/** Two bunches of 10 of the variety in the beds, ordered for the wedding, which came on the Wednesday before it. */
const WHITE: Purchase = {
  ...{ id: 1, varietyId: 1, supplier: "Supplier", orderedOn: day("2027-06-01"), arrivesOn: day("2027-06-09") },
  ...{ bunchCount: 2, bunchStems: 10, bunchCents: 900, daysToOpen: 0, bookingId: 1, stemsForBooking: 20 },
  ...{ arrivedOn: day("2027-06-09"), arrivedStems: 20 },
};
const MONDAY = toDayNumber(day("2027-06-14"));

const reviewsOf = (farm: Snapshot, today: number | null = MONDAY) =>
  eventReviews(provenPlan(farm, 2027, undefined, null, today));

describe("the review of an event", () => {
  test("[V1] what nobody recorded counts as planned: 44 stems cut, none bought, and nobody has said what was thrown away", () => {
    const [event] = reviewsOf(FARM);
    expect(event.roles).toEqual([
      { role: "focal", plannedStems: 44, cutStems: 44, boughtStems: 0, thrownAwayStems: null, stemCents: 300 },
    ]);
    expect([event.isReviewed, event.isCutRecorded]).toEqual([false, false]);
    // 44 stems at $3.00.
    expect(stemsCostCents(event.roles)).toBe(13_200);
  });

  test("[V1] a cut of 30 recorded for it leaves 14 to be bought; 50 recorded are 50 cut, six more than planned", () => {
    const cut = (stemsCut: number) => ({
      ...FARM,
      cuts: [8, 9, 10].map((on, index) => ({
        id: index + 1,
        cutOn: day(`2027-06-${String(on).padStart(2, "0")}`),
        bedId: 1,
        varietyId: 1,
        bookingId: on === 10 ? 1 : null,
        stemsCut: on === 10 ? stemsCut : 0,
        stemsAsked: 44,
        goodStems: on === 10 ? stemsCut : 0,
        restStands: false,
      })),
    });
    expect(reviewsOf(cut(30))[0].roles).toMatchObject([{ plannedStems: 44, cutStems: 30, boughtStems: 14 }]);
    expect(reviewsOf(cut(50))[0].roles).toMatchObject([{ plannedStems: 44, cutStems: 50, boughtStems: 0 }]);
    expect(reviewsOf(cut(50))[0].isCutRecorded).toBe(true);
  });

  test("[V1] stems in the cooler of a variety that the farm does not grow were bought in", () => {
    const roses = { id: 1, varietyId: 2, cutOn: day("2027-06-09"), stemCount: 20 };
    const farm = {
      ...FARM,
      crops: [crop({ id: 1 }), crop({ id: 2 })],
      varieties: [variety({ id: 1 }), variety({ id: 2, cropId: 2 })],
      plantings: [planting({ id: 1, plantCount: 0 })],
      coolerStock: [roses],
    };
    expect(reviewsOf(farm)[0].roles).toMatchObject([{ cutStems: 0, boughtStems: 44 }]);
  });

  test("[V1] [ST3] a purchase of a variety that the farm grows too was bought: 20 stems for the wedding, and 24 of its own beds", () => {
    const [event] = reviewsOf({ ...FARM, purchases: [WHITE] });
    expect(event.roles).toMatchObject([{ plannedStems: 44, cutStems: 24, boughtStems: 20 }]);
  });

  test("[V1] once written down the numbers stay, whatever becomes of the recipe or the bed", () => {
    const review = { bookingId: 1, role: "focal" as const, plannedStems: 44, cutStems: 40, boughtStems: 4 };
    const farm = { ...FARM, reviews: [{ id: 1, ...review, thrownAwayStems: 6 }], plantings: [] };
    const [event] = reviewsOf(farm);
    expect(event.roles).toMatchObject([{ plannedStems: 44, cutStems: 40, boughtStems: 4, thrownAwayStems: 6 }]);
    expect(event.isReviewed).toBe(true);
  });

  test("[V1] an event of today, an enquiry and a cancelled booking have no review, nor has a plan that knows no day", () => {
    expect(reviewsOf(FARM, toDayNumber(WEDDING.eventOn))).toEqual([]);
    expect(reviewsOf(FARM, null)).toEqual([]);
    for (const status of ["enquiry", "cancelled"] as const)
      expect(reviewsOf({ ...FARM, bookings: [{ ...WEDDING, status }] })).toEqual([]);
  });

  test("[V1] over seeded farms cut and bought sum to what was planned where nothing is recorded", () => {
    for (const seed of [1, 2, 3]) {
      const farm = seededFarm(seed, { bedCount: 30, bookingCount: 20 });
      const events = eventReviews(provenPlan(farm, 2027, undefined, null, toDayNumber(day("2027-12-31"))));
      expect(events.length).toBeGreaterThan(5);
      for (const { roles } of events)
        for (const { plannedStems, cutStems, boughtStems } of roles) expect(cutStems + boughtStems).toBe(plannedStems);
    }
  });
});
