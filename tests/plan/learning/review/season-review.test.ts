import { describe, expect, test } from "vitest";
import { seededFarm } from "#demo/seeded-farm";
import { toDayNumber } from "#lib/domain/day";
import type { StandingOrder } from "#lib/domain/records/standing-order";
import type { Snapshot } from "#lib/domain/snapshot";
import { seasonReview } from "#lib/plan/learning/review/season-review";
import { seasonOfStems } from "#lib/plan/road/seasons";
import { provenPlan } from "../../../proven-plan";
import { booking, day, focal, planting, snapshot } from "../../../small-farm";

/** 140 focal stems in the week of 7 June, 20 a day; a wedding on Saturday 12 June asks for 40, of which 6 were thrown away. */
const WEDDING = booking({ id: 1, stemLines: focal(40), priceCents: 50_000 });
const REVIEW = { id: 1, bookingId: 1, role: "focal" as const, plannedStems: 40, cutStems: 40, boughtStems: 0 };
const FARM = snapshot({
  bookings: [WEDDING],
  plantings: [planting({ id: 1, plantCount: 140 })],
  reviews: [{ ...REVIEW, thrownAwayStems: 6 }],
});

/** A florist takes 10 stems on Friday 11 June at $1.20. */
const ORDER: StandingOrder = {
  id: 1,
  buyer: "Florist",
  kind: "florist",
  weekday: 5,
  firstOn: day("2027-06-11"),
  lastOn: day("2027-06-11"),
  role: "focal",
  cropId: null,
  recipeId: null,
  askedCount: 10,
  stemCents: 120,
  colours: [],
};

const reviewOf = (farm: Snapshot, today: string | null) =>
  seasonReview(provenPlan(farm, 2027, undefined, null, today === null ? null : toDayNumber(day(today))));

describe("the review of a season", () => {
  test("[V4] 40 stems cut for the wedding: 34 used, 6 thrown away; nobody asked for more, so no more was cut", () => {
    const { crops, total, bookingCents } = reviewOf(FARM, "2027-06-14");
    expect(crops.map(({ crop, ...row }) => [crop.id, row])).toEqual([[1, total]]);
    expect(total).toEqual({
      cutStems: 40,
      usedStems: 34,
      thrownAwayStems: 6,
      orderStems: 0,
      leftStems: 0,
      orderCents: 0,
    });
    expect(bookingCents).toBe(50_000);
  });

  test("[V4] with an order of 10 and a recorded cut of 25 for nobody, 10 are sold for $12 and the 25 are left", () => {
    const cut = { id: 1, cutOn: day("2027-06-07"), bedId: 1, varietyId: 1, bookingId: null, stemsCut: 25 };
    const farm = {
      ...FARM,
      standingOrders: [ORDER],
      cuts: [{ ...cut, stemsAsked: null, goodStems: 25, restStands: false }],
    };
    const { total } = reviewOf(farm, "2027-06-30");
    expect(total).toMatchObject({ usedStems: 34, thrownAwayStems: 6, orderStems: 10, orderCents: 1200 });
    expect(total.cutStems).toBe(34 + 6 + 10 + total.leftStems);
    // Cut on Monday, those 25 serve nobody on Saturday, five days later; the florist on Friday has fresher ones.
    expect(total.leftStems).toBe(25);
  });

  test("[V4] [ST3] of 20 stems bought for the wedding none counts as cut: 20 of the farm's own went there, and 3 of the 6 thrown away were bought", () => {
    const arrived = { arrivedOn: day("2027-06-09"), arrivedStems: 20 };
    const ordered = { orderedOn: day("2027-06-01"), arrivesOn: day("2027-06-09"), daysToOpen: 0 };
    const bunches = { bunchCount: 2, bunchStems: 10, bunchCents: 900, bookingId: 1, stemsForBooking: 20 };
    const farm = {
      ...FARM,
      purchases: [{ id: 1, varietyId: 1, supplier: "Supplier", ...ordered, ...bunches, ...arrived }],
    };
    expect(reviewOf(farm, "2027-06-14").total).toMatchObject({ cutStems: 20, usedStems: 17, thrownAwayStems: 3 });
  });

  test("[V4] [N5] of 25 stems cut for nobody an enquiry uses none: a florist has 10, and 15 are left", () => {
    const enquiry = booking({ id: 1, status: "enquiry", stemLines: focal(40) });
    const cut = { id: 1, cutOn: day("2027-06-09"), bedId: 1, varietyId: 1, bookingId: null, stemsCut: 25 };
    const cuts = [{ ...cut, stemsAsked: null, goodStems: 25, restStands: false }];
    const farm = { ...FARM, bookings: [enquiry], reviews: [], cuts };
    const before = reviewOf({ ...farm, standingOrders: [ORDER] }, "2027-06-11").total;
    expect(before).toMatchObject({ cutStems: 25, usedStems: 0, orderStems: 10, leftStems: 15 });
    // Once its day has passed it had no event.
    const after = reviewOf(farm, "2027-06-30").total;
    expect(after).toMatchObject({ cutStems: 25, usedStems: 0, orderStems: 0, leftStems: 25 });
  });

  test("[V4] before anything was cut, and where no day is known, there is nothing to tell", () => {
    expect(reviewOf(FARM, "2027-06-01").crops).toEqual([]);
    expect(reviewOf(FARM, null).crops).toEqual([]);
  });

  test("[V4] over seeded farms the pick list, added up line by line, says the same of every crop, and the parts sum", () => {
    for (const seed of [4, 5]) {
      const farm = {
        ...seededFarm(seed, { bedCount: 30, bookingCount: 20 }),
        standingOrders: [{ ...ORDER, lastOn: day("2027-09-30") }],
      };
      const today = toDayNumber(day("2027-08-10"));
      const plan = provenPlan(farm, 2027, undefined, null, today);
      const { crops } = seasonReview(plan);
      const behind = plan.pickList.filter(({ cutDay, stand }) => cutDay < today && seasonOfStems(stand) === 2027);
      const added = (cropId: number, isOrder: boolean) =>
        behind
          .filter((line) => line.crop.id === cropId && line.booking.id < 0 === isOrder)
          .reduce((sum, { stems }) => sum + stems, 0);
      expect(crops.length).toBeGreaterThan(3);
      for (const { crop, ...row } of crops) {
        expect([row.usedStems, row.orderStems]).toEqual([added(crop.id, false), added(crop.id, true)]);
        expect(row.usedStems + row.thrownAwayStems + row.orderStems + row.leftStems).toBe(row.cutStems);
        expect(row.leftStems).toBeGreaterThanOrEqual(0);
      }
    }
  });
});
