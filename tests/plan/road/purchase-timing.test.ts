import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { addDays, toDayNumber } from "#lib/domain/day";
import type { Purchase } from "#lib/domain/records/purchase";
import { purchaseLines } from "#lib/plan/road/purchase-slips";
import { mistimed } from "#lib/plan/road/purchase-timing";
import { mistimedInWords } from "#lib/plan/words/purchase-words";
import { provenPlan } from "../../proven-plan";
import { day } from "../../small-farm";
import { on, shortOf, sum } from "./lived-season";
import { bought, ordered, shortOn } from "./ordered-stems";

describe("an order comes in time", () => {
  test("[ST3] stems that open after the day on which the wedding is made up serve nobody, though its own day is still to come; those that open on it serve the wedding they were ordered for alone", () => {
    expect(shortOn(ordered({ daysToOpen: 2 }), "2027-06-01")).toEqual([24, 10]);
    expect(shortOn(ordered({ daysToOpen: 1 }), "2027-06-01")).toEqual([0, 10]);
  });

  test("[ST3] [M12] a wedding delivered two days ahead and made up three has nothing of what comes on the day between", () => {
    const early = (designDays: number) => {
      const snap = ordered({});
      const [first, second] = snap.bookings;
      return { ...snap, bookings: [{ ...first, leadDays: 4, designDays, deliverDays: 2 }, second] };
    };
    // They come two days before the wedding, and keep for the other, which is made up later.
    expect(shortOn(early(3), "2027-06-01")).toEqual([24, 0]);
    expect(shortOn(early(2), "2027-06-01")).toEqual([0, 4]);
    expect(shortOf(provenPlan(early(3), 2027))).toEqual([24, 0]);
    expect(shortOf(provenPlan(early(2), 2027))).toEqual([0, 4]);
  });

  test("[ST3] [ST1] what came too late and was taken out for the wedding all the same is its own", () => {
    const late = { daysToOpen: 2, arrivedOn: day("2027-06-10"), arrivedStems: 30 };
    const out = {
      id: 1,
      movedOn: day("2027-06-12"),
      kind: "taken out" as const,
      varietyId: 1,
      cutOn: day("2027-06-12"),
    };
    const snap = { ...ordered(late), coolerMoves: [{ ...out, stemCount: 24, bookingId: 1 }] };
    expect(shortOn(ordered(late), "2027-06-12")).toEqual([24, 10]);
    expect(shortOn(snap, "2027-06-12")).toEqual([0, 10]);
  });

  test("[ST3] [M12] whatever days two weddings are made up on, each has of its own orders those that open by then and keep until its event, counted one by one", () => {
    const ownDays = fc.tuple(fc.nat(4), fc.nat(3), fc.nat(3)).map(([deliverDays, design, lead]) => ({
      ...{ deliverDays, designDays: deliverDays + design },
      leadDays: deliverDays + design + lead,
    }));
    const orders = fc.array(
      fc.record({
        bookingId: fc.constantFrom(1, 2),
        stems: fc.integer({ min: 1, max: 12 }),
        arrivesOn: fc.nat(16).map((days) => addDays(day("2027-05-30"), days)),
        daysToOpen: fc.nat(3),
      }),
      { maxLength: 5, size: "max" },
    );
    let lateCount = 0;
    fc.assert(
      fc.property(fc.tuple(ownDays, ownDays), orders, (days, rows) => {
        const bookings = ordered().bookings.map((row, index) => ({ ...row, ...days[index] }));
        const purchases = rows.map(({ stems, ...row }, index) =>
          bought({ ...row, id: index + 1, bunchCount: 1, bunchStems: stems, stemsForBooking: stems }),
        );
        const made = on({ ...ordered(), bookings, purchases }, "2027-05-28");
        const opens = ({ arrivesOn, daysToOpen }: (typeof rows)[number]) => toDayNumber(arrivesOn) + daysToOpen;
        bookings.forEach(({ id, eventOn, designDays }, index) => {
          const event = toDayNumber(eventOn);
          const own = rows.filter((row) => row.bookingId === id);
          lateCount += own.filter((row) => opens(row) > event - designDays && opens(row) <= event).length;
          const usable = own.filter((row) => opens(row) <= event - designDays && event - opens(row) <= 4);
          const others = rows.filter((row) => row.bookingId !== id);
          // What comes too late for the other wedding is anybody's, if it is there by the last cut.
          const other = bookings[1 - index];
          const freed = others.filter(
            (row) =>
              opens(row) > toDayNumber(other.eventOn) - other.designDays &&
              opens(row) <= event - days[index].leadDays &&
              event - opens(row) <= 4,
          );
          const count = (of: typeof rows) => sum(of.map(({ stems }) => stems));
          const asked = index === 0 ? 24 : 10;
          expect(shortOf(made)[index]).toBe(Math.max(0, asked - count(usable) - count(freed)));
        });
      }),
      { seed: 20270612, numRuns: 200 },
    );
    expect(lateCount).toBeGreaterThan(50);
  });
});

test("[ST3] an order says why it does not serve its wedding, too early or too late, and exactly where the plan still has it short", () => {
  const said = (given: Partial<Purchase>) => {
    const snap = ordered(given);
    const [line] = purchaseLines(snap);
    const missed = mistimed(line, snap.farm);
    return missed && mistimedInWords(missed);
  };
  expect(said({ arrivesOn: day("2027-06-07") })).toBe(
    "too early: it keeps until Fri 11 Jun, and the event is Sat 12 Jun",
  );
  expect(said({ daysToOpen: 3 })).toBe(
    "too late: it is open on Sun 13 Jun, 2 days after you make up the flowers for Sat 12 Jun",
  );
  expect(said({ arrivesOn: day("2027-06-12") })).toBe(
    "too late: it comes on Sat 12 Jun, a day after you make up the flowers for Sat 12 Jun",
  );
  for (let days = -12; days <= 6; days++) {
    const arrivesOn = addDays(day("2027-06-10"), days);
    const isShort = shortOn(ordered({ arrivesOn }), "2027-05-25")[0] > 0;
    expect([arrivesOn, said({ arrivesOn }) !== null]).toEqual([arrivesOn, isShort]);
  }
  expect(said({ arrivesOn: day("2027-06-01"), bookingId: null })).toBeNull();
  expect(said({ arrivesOn: day("2027-06-01"), arrivedOn: day("2027-06-01"), arrivedStems: 0 })).toBeNull();
});
