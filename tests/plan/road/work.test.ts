import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { seededFarm } from "#demo/seeded-farm";
import { toDay } from "#lib/domain/day";
import type { Snapshot } from "#lib/domain/snapshot";
import type { Plan } from "#lib/plan/road/plan";
import { provenPlan } from "../../proven-plan";
import { booking, focal, snapshot } from "../../small-farm";
import { anyFarm, anySeed } from "../any-farm";
import { daysOf, on } from "./lived-season";

const sum = (rows: readonly { stems: number }[]) => rows.reduce((all, { stems }) => all + stems, 0);

/** Lines as one reads them: their booking, day, bed or cooler, and stems. */
const linesOf = ({ pickList }: Plan) =>
  pickList.map(({ booking, cutDay, variety, stems, stemsToCut }) => [
    booking.id,
    cutDay,
    variety.id,
    stems,
    stemsToCut,
  ]);
const workOf = (made: Plan) => ({
  lines: linesOf(made),
  short: made.work.gaps.map(({ need, shortStems }) => [need.booking.id, need.kind, shortStems]),
  bought: made.work.buying.map(({ crop, colour, bunchCount, costCents }) => [crop.id, colour, bunchCount, costCents]),
  sold: made.orders && [...made.orders.match.shortStems],
  over: made.surplus.map(({ variety, cutDay, stems }) => [variety.id, cutDay, stems]),
});

const withoutEnquiries = (snap: Snapshot): Snapshot => ({
  ...snap,
  bookings: snap.bookings.filter(({ status }) => status !== "enquiry"),
});

describe("an enquiry of 25 stems beside a confirmed booking of 10, where 30 are in reach", () => {
  const given = snapshot({
    bookings: [
      booking({ id: 1, stemLines: focal(10) }),
      booking({ id: 2, client: "Enquiry", status: "enquiry", stemLines: focal(25) }),
    ],
  });
  const made = provenPlan(given, 2027);

  test("[N5] shows that it could have 20 and lacks 5, and of its stems none is cut, labelled or bought", () => {
    expect([...made.match.shortStems]).toEqual([0, 5]);
    expect(made.pickList.map(({ booking, stems }) => [booking.client, stems])).toEqual([["Client 1", 10]]);
    expect([made.work.gaps, made.work.buying]).toEqual([[], []]);
    expect(made.gaps.map(({ shortStems }) => shortStems)).toEqual([5]);
  });

  test("[N5] [S1] what it could have is over as long as it is an enquiry: 60 of 70 stems, and 40 once it is held", () => {
    expect(sum(made.surplus)).toBe(60);
    expect(sum(made.work.unclaimed)).toBe(40);
    const held = provenPlan({ ...given, bookings: given.bookings.map((row) => ({ ...row, status: "held" })) }, 2027);
    expect(sum(held.surplus)).toBe(40);
    expect(held.work.match).toBe(held.match);
  });

  test("[N5] [T1] days that pass unrecorded have cut nothing for it: on Friday the 11th what was to be cut on Wednesday and Thursday is gone", () => {
    expect(on(given, "2027-06-08").match.shortStems[1]).toBe(5);
    const friday = on(given, "2027-06-11");
    expect([...friday.match.shortStems]).toEqual([0, 25]);
    expect(friday.match.servings.map(({ cutDay, stems }) => [toDay(cutDay), stems])).toEqual([["2027-06-10", 10]]);
  });
});

test("[N5] on 20 seeded farms the work is that of the farm without its enquiries, planned by itself", () => {
  let enquiryCount = 0;
  for (let seed = 1; seed <= 20; seed++) {
    const snap = seededFarm(seed, { bedCount: 12, bookingCount: 16 });
    enquiryCount += snap.bookings.filter(({ status }) => status === "enquiry").length;
    expect(workOf(provenPlan(snap, 2027)), `seed ${seed}`).toEqual(workOf(provenPlan(withoutEnquiries(snap), 2027)));
  }
  expect(enquiryCount).toBeGreaterThan(20);
});

test("[N5] [T4] and so it stays on any farm, day after day", () => {
  fc.assert(
    fc.property(fc.record({ snap: anyFarm, at: fc.nat() }), ({ snap, at }) => {
      const days = daysOf(provenPlan(snap, 2027));
      if (days.length === 0) return;
      const today = days[at % days.length];
      expect(workOf(on(snap, today))).toEqual(workOf(on(withoutEnquiries(snap), today)));
    }),
    { ...anySeed, numRuns: 60 },
  );
});
