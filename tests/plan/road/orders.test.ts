import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { seededFarm } from "#demo/seeded-farm";
import type { StandingOrder } from "#lib/domain/records/standing-order";
import type { Snapshot } from "#lib/domain/snapshot";
import { OWN } from "#lib/domain/sourced";
import { checkMatch } from "#lib/plan/road/match";
import { deliveryRows, deliveryTotals } from "#lib/plan/road/order-rows";
import { deliveriesOf, isDelivery } from "#lib/plan/road/orders";
import type { Plan } from "#lib/plan/road/plan";
import { highs } from "../../least-cost";
import { provenPlan } from "../../proven-plan";
import { booking, crop, day, focal, planting, snapshot } from "../../small-farm";
import { anyFarm, anySeed } from "../any-farm";
import { on } from "./lived-season";
import { leastCostOfOrders, stemsLeftIn } from "./orders-by-arcs";

const order = (given: Partial<StandingOrder> & { id: number }): StandingOrder => ({
  buyer: `Buyer ${given.id}`,
  kind: "florist",
  weekday: 6,
  firstOn: day("2027-06-07"),
  lastOn: day("2027-06-13"),
  role: "focal",
  cropId: null,
  recipeId: null,
  colours: [],
  askedCount: 10,
  stemCents: 120,
  ...given,
});

/** Thirty cream stems cut on 9 June 2027, of a crop that keeps 40 days. */
const stored = (given: Partial<Snapshot>) =>
  snapshot({
    crops: [crop({ id: 1, holdDays: { count: 40, ...OWN } })],
    coolerStock: [{ id: 1, varietyId: 1, cutOn: day("2027-06-09"), stemCount: 30 }],
    plantings: [],
    ...given,
  });

const soldIn = (farm: Snapshot) => {
  const made = provenPlan(farm, 2027);
  return made.orders
    ? deliveryRows(made.orders, 2027).map((row) => [row.delivery.order.buyer, row.gotStems, row.earnedCents])
    : [];
};

const soldOn = (farm: Snapshot, today: string) => {
  const made = on(farm, today);
  return {
    sold: made.orders ? deliveryRows(made.orders, 2027).map(({ gotStems }) => gotStems) : [],
    over: made.surplus.reduce((sum, { stems }) => sum + stems, 0),
  };
};

describe("a standing order", () => {
  test("[SO2] [S1] of 30 stems stored, 18 of them a wedding's of 11 June, an order of 10 on the 19th has its 10 and 2 are over, before and after that wedding", () => {
    const farm = stored({
      bookings: [booking({ id: 1, eventOn: day("2027-06-11"), spareShare: 0, stemLines: focal(18) })],
      standingOrders: [order({ id: 1, firstOn: day("2027-06-19"), lastOn: day("2027-06-19") })],
    });
    for (const today of ["2027-06-09", "2027-06-11", "2027-06-12", "2027-06-15", "2027-06-18"])
      expect(soldOn(farm, today)).toEqual({ sold: [10], over: 2 });
  });

  test("[T1] [SO2] has what was planned for it while days pass that nobody records", () => {
    const farm = snapshot({
      crops: [crop({ id: 1, holdDays: { count: 6, ...OWN } })],
      plantings: [planting({ id: 1, plantCount: 70 })],
      standingOrders: [order({ id: 1, askedCount: 30, firstOn: day("2027-06-12"), lastOn: day("2027-06-12") })],
    });
    const before = soldOn(farm, "2027-06-06").sold;
    expect(before[0]).toBeGreaterThan(0);
    for (const today of ["2027-06-08", "2027-06-09", "2027-06-10", "2027-06-11", "2027-06-12", "2027-06-13"])
      expect(soldOn(farm, today).sold).toEqual(before);
  });

  test("[SO1] goes out on its weekday from its first day to its last: Fridays of 4 to 18 June 2027 are three, of 5 to 17 June one, and of 5 to 10 June none", () => {
    const days = (from: string, to: string) =>
      deliveriesOf([order({ id: 1, weekday: 5, firstOn: day(from), lastOn: day(to) })], [2027]).map(
        ({ eventOn }) => eventOn,
      );
    expect(days("2027-06-04", "2027-06-18")).toEqual(["2027-06-04", "2027-06-11", "2027-06-18"]);
    expect(days("2027-06-05", "2027-06-17")).toEqual(["2027-06-11"]);
    expect(days("2027-06-05", "2027-06-10")).toEqual([]);
  });

  test("[SO1] over New Year each year has its own deliveries, and together they are all weekdays of the span", () => {
    const long = [order({ id: 1, weekday: 3, firstOn: day("2026-11-20"), lastOn: day("2027-02-10") })];
    const [before, after] = [deliveriesOf(long, [2026]), deliveriesOf(long, [2027])];
    expect([before.length, after.length, deliveriesOf(long, [2026, 2027]).length]).toEqual([6, 6, 12]);
    expect(new Set([...before, ...after].map(({ booking }) => booking.id)).size).toBe(12);
  });

  test("[SO1] three pieces of five focal stems ask for fifteen, and a named crop is the only one that will do", () => {
    const pieces = stored({ standingOrders: [order({ id: 1, role: null, recipeId: 1, askedCount: 3 })] });
    expect(soldIn(pieces)).toEqual([["Buyer 1", 15, 1800]]);
    const crops = [crop({ id: 1, holdDays: { count: 40, ...OWN } }), crop({ id: 2 })];
    expect(soldIn(stored({ crops, standingOrders: [order({ id: 1, cropId: 2 })] }))).toEqual([["Buyer 1", 0, 0]]);
  });

  test("[SO2] gets what bookings leave, the dearer one first, whatever it would bring and whenever it goes out", () => {
    const standingOrders = [
      order({ id: 1, buyer: "Cheap", askedCount: 10, stemCents: 90 }),
      order({ id: 2, buyer: "Dear", askedCount: 10, stemCents: 5_000 }),
    ];
    const held = (stemCount: number) => [
      booking({ id: 1, status: "held", eventOn: day("2027-06-13"), stemLines: focal(stemCount) }),
    ];
    const sold = (stemCount: number) => soldIn(stored({ standingOrders, bookings: held(stemCount) }));
    expect(sold(12)).toEqual([
      ["Cheap", 8, 720],
      ["Dear", 10, 50_000],
    ]);
    expect(sold(25)).toEqual([
      ["Cheap", 0, 0],
      ["Dear", 5, 25_000],
    ]);
    expect(sold(30).map(([, stems]) => stems)).toEqual([0, 0]);
  });

  test("[SO3] a florist list sells surplus: of 30 stems of which a booking takes 12 it takes 10, 8 are over, its line is on the pick list, and nothing is bought in for it", () => {
    const made = provenPlan(
      stored({
        bookings: [booking({ id: 1, eventOn: day("2027-06-13"), stemLines: focal(12) })],
        standingOrders: [order({ id: 1 }), order({ id: 2, colours: ["plum"] })],
      }),
      2027,
    );
    expect(made.surplus.map(({ stems }) => stems)).toEqual([8]);
    expect(made.pickList.map(({ booking, stems }) => [booking.client, isDelivery(booking), stems])).toEqual([
      ["Client 1", false, 12],
      ["Buyer 1", true, 10],
    ]);
    expect([made.gaps, made.buying]).toEqual([[], []]);
    expect(made.orders && deliveryTotals(deliveryRows(made.orders, 2027))).toEqual({
      ...{ needStems: 20, gotStems: 10, earnedCents: 1200 },
    });
  });
});

/** Orders for every role, some of one crop or colour, at odd prices, on every weekday of a farm's June. */
const anyOrders = fc.array(
  fc
    .record({
      weekday: fc.integer({ min: 1, max: 7 }),
      role: fc.constantFrom("focal" as const, "secondary" as const, "filler" as const),
      cropId: fc.constantFrom(null, null, 1, 2),
      colours: fc.constantFrom<StandingOrder["colours"]>([], ["cream"], ["plum", "blush"]),
      askedCount: fc.integer({ min: 1, max: 25 }),
      stemCents: fc.integer({ min: 0, max: 400 }),
    })
    .map((given) => ({ ...given, firstOn: day("2027-06-05"), lastOn: day("2027-06-30") })),
  { minLength: 1, maxLength: 4, size: "max" },
);

const sumOf = (rows: readonly { readonly stems: number }[]) => rows.reduce((sum, { stems }) => sum + stems, 0);

/** All stems that a plan knows of. */
const supplyIn = ({ match }: Plan) =>
  match.supplies.reduce((sum, { stems }) => sum + stems.reduce((a, b) => a + b, 0), 0);

describe("standing orders of a whole farm", () => {
  test("[SO2] [SO3] in 200 farms they change nothing of the bookings, and what is given to both and left over is all there is", () => {
    let soldCount = 0;
    fc.assert(
      fc.property(anyFarm, anyOrders, (given, rows) => {
        const without = provenPlan(given, 2027);
        const made = provenPlan(
          { ...given, standingOrders: rows.map((row, index) => order({ id: index + 1, ...row })) },
          2027,
        );
        expect(made.match.servings).toEqual(without.match.servings);
        expect([made.gaps, made.weeks, made.buying].map((list) => list.length)).toEqual(
          [without.gaps, without.weeks, without.buying].map((list) => list.length),
        );
        if (!made.orders) throw new RangeError("no order goes out in June");
        expect(checkMatch(made.orders.match)).toEqual([]);
        const sold = sumOf(made.orders.match.servings);
        expect(sumOf(made.work.match.servings) + sold + stemsLeftIn(made)).toBe(supplyIn(made));
        expect(sumOf(made.pickList)).toBe(sumOf(made.work.match.servings) + sold);
        soldCount += sold;
      }),
      anySeed,
    );
    expect(soldCount).toBeGreaterThan(500);
  });

  test("[SO2] on 60 seeded farms the match of the orders costs what HiGHS finds with an arc from every stem left to every delivery", async () => {
    const solver = await highs;
    for (let seed = 1; seed <= 60; seed++) {
      const seeded = seededFarm(seed, { bedCount: 10, bookingCount: 8 });
      const given = { ...seeded, crops: seeded.crops.map((row) => ({ ...row, stretchDays: row.holdDays })) };
      const standingOrders = [3, 5].map((weekday, index) =>
        order({
          ...{ id: index + 1, weekday, firstOn: day("2027-07-01"), lastOn: day("2027-09-15"), askedCount: 15 + seed },
          ...{ stemCents: 40 + 30 * index + seed, colours: index === 0 ? [] : ["white", "cream", "blush"] },
        }),
      );
      const made = provenPlan({ ...given, standingOrders }, 2027);
      if (!made.orders) throw new RangeError("no order goes out");
      expect(leastCostOfOrders(solver, given, made)).toBeCloseTo(made.orders.match.solution.totalCost, 2);
    }
  });

  test("an old farm, which has none, plans no second match", () => {
    expect(provenPlan(seededFarm(1, { bedCount: 10, bookingCount: 8 }), 2027).orders).toBeNull();
    expect(
      soldIn(stored({ standingOrders: [order({ id: 1, firstOn: day("2030-01-01"), lastOn: day("2030-02-01") })] })),
    ).toEqual([]);
  });
});
