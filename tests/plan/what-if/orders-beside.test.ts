import { expect, test } from "vitest";
import { toDayNumber } from "#lib/domain/day";
import type { StandingOrder } from "#lib/domain/records/standing-order";
import { ordersBeside } from "#lib/plan/what-if/orders-beside";
import { withKeptBeds } from "#lib/plan/winter/beds";
import { finished } from "#lib/plan/winter/choose-beds";
import { keptIds, winterSeason } from "#lib/plan/winter/season";
import { ordersBesideInWords } from "#lib/plan/words/order-words";
import { provenPlan } from "../../proven-plan";
import { bed, booking, crop, curve, day, focal, planting, snapshot } from "../../small-farm";
import { SEASON, winterFarm } from "../winter/farm";

const order = (given: Partial<StandingOrder> = {}): StandingOrder => ({
  ...{ id: 1, buyer: "Invented market", kind: "market", weekday: 5 },
  ...{ firstOn: day("2027-06-11"), lastOn: day("2027-06-11"), role: "focal", cropId: null, recipeId: null },
  ...{ colours: [], askedCount: 20, stemCents: 90 },
  ...given,
});

/** A dahlia bed of 30 focal stems: kept it blooms in the week of 7 June, dug after September. */
const june = (standingOrders: readonly StandingOrder[]) =>
  snapshot({
    crops: [crop({ id: 1, overwinters: true })],
    curves: [
      curve({ id: 1, treatment: "kept-in-ground" }),
      curve({ id: 2, treatment: "spring-planted", anchor: { kind: "days-after-planting", days: 109 } }),
    ],
    beds: [bed({ id: 1, name: "D1" })],
    plantings: [planting({ id: 1, bedId: 1, treatment: "spring-planted", winterSurvivalShare: 1, plantCount: 30 })],
    bookings: [],
    standingOrders,
  });

const TODAY = toDayNumber(day("2026-11-26"));

test("[SO2] of the 30 stems of a kept bed 12 are cut by Wednesday for Friday the 11th: an order of 20 at 90 cents gets them, and none with the bed dug", () => {
  const beside = finished(ordersBeside(june([order()]), 2027, [1], TODAY));
  expect(beside).toEqual({
    dug: { needStems: 20, gotStems: 0, earnedCents: 0 },
    kept: { needStems: 20, gotStems: 12, earnedCents: 12 * 90 },
  });
  expect(beside && ordersBesideInWords(beside)).toBe(
    "Standing orders, no part of this sum, get 12 of 20 stems with these beds, 12 more and worth $11 more than with every bed dug.",
  );
});

test("[SO2] what a wedding takes of a kept bed its orders do not get", () => {
  const wedding = booking({ id: 1, eventOn: day("2027-06-11"), stemLines: focal(10) });
  const given = { ...june([order()]), bookings: [wedding] };
  expect(finished(ordersBeside(given, 2027, [1], TODAY))?.kept.gotStems).toBe(2);
});

test("nothing is said where no order goes out in the season, nor to whoever stopped", () => {
  expect(finished(ordersBeside(june([]), 2027, [1], TODAY))).toBe(null);
  const nextYear = order({ firstOn: day("2028-06-09"), lastOn: day("2028-06-09") });
  expect(finished(ordersBeside(june([nextYear]), 2027, [1], TODAY))).toBe(null);
  const steps = ordersBeside(june([order()]), 2027, [1], TODAY);
  steps.next();
  expect(steps.next(true)).toEqual({ done: true, value: null });
});

test("beds that change nothing for orders are said to", () => {
  const same = { needStems: 20, gotStems: 12, earnedCents: 1080 };
  expect(ordersBesideInWords({ dug: same, kept: same })).toMatch(/12 of 20 stems with these beds, as many as with/);
  const dearer = { ...same, gotStems: 10, earnedCents: 2000 };
  expect(ordersBesideInWords({ dug: same, kept: dearer })).toContain("2 fewer and worth $9 more than");
});

test.each([31, 32, 33])(
  "it is what the plan of the adopted beds gives, counted serving by serving (farm %i)",
  (seed) => {
    const firstOn = day(`${SEASON}-05-05`);
    const season = { firstOn, lastOn: day(`${SEASON}-10-20`) };
    const standingOrders = [
      order({ id: 1, weekday: 3, ...season, askedCount: 60, stemCents: 110 }),
      order({ id: 2, weekday: 6, ...season, role: "secondary", askedCount: 80, stemCents: 60 }),
    ];
    const farm = { ...winterFarm(seed, 14, 8, false), standingOrders };
    const { openBeds, ...others } = winterSeason(farm, SEASON);
    const ids = keptIds(
      { openBeds, ...others },
      openBeds.map((_, index) => index % 2 === 0),
    );
    const beside = finished(ordersBeside(farm, SEASON, ids, TODAY));
    const counted = [[], ids].map((kept) => {
      const { orders } = provenPlan(withKeptBeds(farm, SEASON, kept), SEASON, undefined, null, TODAY);
      const centsOf = new Map(orders?.deliveries.map((delivery) => [delivery.booking.id, delivery.order.stemCents]));
      let [gotStems, earnedCents] = [0, 0];
      for (const { needIndex, stems } of orders?.match.servings ?? []) {
        gotStems += stems;
        earnedCents += stems * (centsOf.get(orders?.match.needs[needIndex].booking.id ?? 0) ?? 0);
      }
      return { gotStems, earnedCents };
    });
    expect([beside?.dug, beside?.kept].map((one) => [one?.gotStems, one?.earnedCents])).toEqual(
      counted.map(({ gotStems, earnedCents }) => [gotStems, earnedCents]),
    );
    expect(beside?.kept.gotStems).not.toBe(beside?.dug.gotStems);
  },
);
