import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { addDays, toDay, toDayNumber } from "#lib/domain/day";
import type { Snapshot } from "#lib/domain/snapshot";
import { storedLots } from "#lib/plan/road/cooler";
import {
  isOnTheWay,
  purchaseLines,
  purchaseSlips,
  purchaseTotals,
  stemsNotDelivered,
} from "#lib/plan/road/purchase-slips";
import { arrivalInWords, orderedInWords, purchaseText } from "#lib/plan/words/purchase-words";
import { provenPlan } from "../../proven-plan";
import { day } from "../../small-farm";
import { on, shortOf, sum } from "./lived-season";
import { bought, ordered, shortOn } from "./ordered-stems";

describe("stems on order", () => {
  test("[L3] [ST3] an order placed, and one that came short, are in the plan made from the one before", () => {
    const today = toDayNumber(day("2027-06-10"));
    let before = on(ordered(), today);
    for (const snap of [ordered({}), ordered({ arrivedOn: day("2027-06-10"), arrivedStems: 20 }), ordered()]) {
      // The same farm but for its orders, as it is read after a write.
      const farm = { ...before.snapshot, purchases: snap.purchases };
      const now = provenPlan(farm, 2027, undefined, before, today);
      expect(shortOf(now)).toEqual(shortOf(on(farm, today)));
      before = now;
    }
  });

  test("[ST3] 30 stems ordered for a wedding's 24 leave nothing to buy for it, and the six over are for anybody", () => {
    expect(shortOn(ordered(), "2027-06-01")).toEqual([24, 10]);
    const made = on(ordered({}), "2027-06-01");
    expect([shortOf(made), made.buying.map(({ gap }) => gap.shortStems)]).toEqual([[0, 4], [4]]);
  });

  test("[ST3] of a short delivery the booking's own stems come first, and what nobody wrote down counts as come", () => {
    const came = { arrivedOn: day("2027-06-10"), arrivedStems: 20 };
    expect(shortOn(ordered(came), "2027-06-11")).toEqual([4, 10]);
    expect(shortOn(ordered({ arrivedOn: day("2027-06-10"), arrivedStems: 0 }), "2027-06-11")).toEqual([24, 10]);
    expect(shortOn(ordered({}), "2027-06-11")).toEqual([0, 4]);
  });

  test("[ST3] of a cancelled wedding's order all are for anybody", () => {
    const [first, second] = ordered({}).bookings;
    const snap = { ...ordered({}), bookings: [{ ...first, status: "cancelled" as const }, second] };
    expect(shortOn(snap, "2027-06-01")).toEqual([0]);
  });

  test("[ST3] without a day the whole season has them in time for their event, whoever takes them", () => {
    expect(shortOf(provenPlan(ordered({ daysToOpen: 1 }), 2027))).toEqual([0, 4]);
    expect(shortOf(provenPlan(ordered({ daysToOpen: 2 }), 2027))).toEqual([24, 10]);
  });

  test("[ST3] an order is worth what as many stems in the cooler are: a farm with both has the same stems short", () => {
    const some = fc.array(
      fc.record({
        bunchCount: fc.integer({ min: 1, max: 5 }),
        bunchStems: fc.integer({ min: 1, max: 8 }),
        arrivesOn: fc.integer({ min: 0, max: 14 }).map((days) => addDays(day("2027-05-30"), days)),
        daysToOpen: fc.nat(3),
        arrived: fc.option(fc.nat(20)),
      }),
      { maxLength: 4 },
    );
    fc.assert(
      fc.property(some, (rows) => {
        const purchases = rows.map(({ arrived, ...row }, index) =>
          bought({
            ...{ ...row, id: index + 1, bookingId: null, stemsForBooking: 0 },
            ...(arrived === null ? {} : { arrivedOn: row.arrivesOn, arrivedStems: arrived }),
          }),
        );
        const coolerStock = purchases.map((row) => ({
          ...{ id: row.id, varietyId: 1, cutOn: addDays(row.arrivesOn, row.daysToOpen) },
          stemCount: row.arrivedStems ?? row.bunchCount * row.bunchStems,
        }));
        const asOrders = on({ ...ordered(), purchases }, "2027-06-09");
        const asStock = on({ ...ordered(), coolerStock }, "2027-06-09");
        expect(shortOf(asOrders)).toEqual(shortOf(asStock));
      }),
      { seed: 11, numRuns: 150 },
    );
  });

  test("what came stands in the cooler as a lot, for its wedding; what is on the way does not", () => {
    const lots = (snap: Snapshot) => storedLots({ ...on(snap, "2027-06-10"), today: toDayNumber(day("2027-06-10")) });
    expect(lots(ordered({}))).toEqual([]);
    const [lot] = lots(ordered({ arrivedOn: day("2027-06-10"), arrivedStems: 28, daysToOpen: 1 }));
    expect([lot.leftStems, toDay(lot.cutDay), lot.claims.map(({ booking: { id }, stems }) => [id, stems])]).toEqual([
      28,
      "2027-06-11",
      [[1, 24]],
    ]);
  });
});

test("orders stand by supplier and day, each with its words, and read out a flower a line", () => {
  const lines = purchaseLines(
    ordered(
      { arrivesOn: day("2027-06-17") },
      {},
      { supplier: "Hollin Bank", bookingId: null, arrivedOn: day("2027-06-09"), arrivedStems: 20, bunchCents: null },
    ),
  );
  expect(purchaseSlips(lines).map((slip) => [slip.supplier, toDay(slip.day), slip.lines.length])).toEqual([
    ["Hollin Bank", "2027-06-09", 1],
    ["Marl Street", "2027-06-10", 1],
    ["Marl Street", "2027-06-17", 1],
  ]);
  expect(purchaseTotals(lines)).toEqual({ bunchCount: 9, costCents: 9000, unpricedCount: 1 });
  expect(sum(lines.map(stemsNotDelivered))).toBe(10);
  const now = toDayNumber(day("2027-06-11"));
  expect(lines.map((line) => arrivalInWords(line, now))).toEqual([
    "comes Thu 17 Jun",
    "was to come Thu 10 Jun: has it?",
    "20 of 30 came Wed 9 Jun, 10 short",
  ]);
  expect(orderedInWords(lines[0], now)).toBe(
    "24 stems Crop 1 Variety 1, cream, ordered from Marl Street, comes Thu 17 Jun",
  );
  const [slip] = purchaseSlips(lines.filter(isOnTheWay));
  expect(purchaseText(slip)).toBe("Marl Street, to arrive by Thu 10 Jun:\n3 bunches of 10 Crop 1 Variety 1, cream");
});
