import { describe, expect, test } from "vitest";
import { demoSnapshot } from "#demo/demo-snapshot";
import { seededFarm } from "#demo/seeded-farm";
import type { Booking, BookingDraft } from "#lib/domain/records/booking";
import { coverageByBooking } from "#lib/plan/road/coverage";
import { withDraft } from "#lib/plan/road/draft";
import { checkMatch, type Match } from "#lib/plan/road/match";
import { provenPlan } from "../../proven-plan";
import { booking, focal, snapshot } from "../../small-farm";

const draft = (given: Partial<BookingDraft> = {}): BookingDraft => {
  const { id: _, ...rest } = booking({ id: 1, ...given });
  return rest;
};

/** What a match says of every need and every lot, the booking's own id aside. */
const figures = ({ needs, shortStems, servings, solution }: Match) => ({
  cents: solution.totalCost,
  needs: needs.map(({ booking: { eventOn, client }, kind, stems }, index) => [
    eventOn,
    client,
    kind,
    stems,
    shortStems[index],
  ]),
  servings: servings.map(({ needIndex, supplyIndex, cutDay, stems }) => [needIndex, supplyIndex, cutDay, stems]),
});

describe("a booking that is not saved yet", () => {
  test("[L2] of 30 stems in reach a draft of 40 would get 30 and be short 10", () => {
    const before = provenPlan(snapshot(), 2027);
    const { match, gaps, draftId } = withDraft(before, draft({ stemLines: focal(40) }), null);
    const coverage = coverageByBooking(match, gaps).get(draftId);
    expect([coverage?.needStems, coverage?.shortStems]).toEqual([40, 10]);
    expect(checkMatch(match)).toEqual([]);
    expect(before.match.needs).toEqual([]);
  });

  test("[L2] a cancelled draft asks for nothing", () => {
    const { match } = withDraft(
      provenPlan(snapshot(), 2027),
      draft({ status: "cancelled", stemLines: focal(40) }),
      null,
    );
    expect(match.needs).toEqual([]);
  });

  test("[L2] over 60 seeded farms a changed booking as a draft has the needs, cost and short stems of the saved one", () => {
    for (let seed = 1; seed <= 60; seed++) {
      const farm = seededFarm(seed, { bedCount: 12, bookingCount: 10 });
      const old = farm.bookings[seed % farm.bookings.length];
      const moved = farm.bookings[(seed * 3) % farm.bookings.length].eventOn;
      const changed = { ...old, eventOn: moved, stemLines: [...old.stemLines, ...focal(1 + (seed % 40))] };
      const saved = provenPlan(
        { ...farm, bookings: farm.bookings.map((row) => (row.id === old.id ? changed : row)) },
        2027,
      );
      const drafted = withDraft(provenPlan(farm, 2027), changed, old.id);
      expect(checkMatch(drafted.match)).toEqual([]);
      expect(drafted.match.solution.totalCost).toBe(saved.match.solution.totalCost);
      expect(figures(drafted.match)).toEqual(figures(saved.match));
    }
  });

  test("[L2] [M7] every booking of the demo moved to another's day shows the stems short that it has when saved", () => {
    const farm = demoSnapshot();
    const before = provenPlan(farm, 2027);
    farm.bookings.forEach((old, index) => {
      const { eventOn } = farm.bookings[(index * 7 + 3) % farm.bookings.length];
      const moved = { ...old, eventOn };
      const saved = provenPlan(
        { ...farm, bookings: farm.bookings.map((row) => (row.id === old.id ? moved : row)) },
        2027,
      );
      expect(figures(withDraft(before, moved, old.id).match)).toEqual(figures(saved.match));
    });
  });

  test("[L2] [M7] a cancelled booking reopened, and a new one, show what they will have when saved", () => {
    for (let seed = 1; seed <= 40; seed++) {
      const farm = seededFarm(seed, { bedCount: 12, bookingCount: 14 });
      const old = farm.bookings[seed % farm.bookings.length];
      const withRow = (row: Booking) => ({
        ...farm,
        bookings: farm.bookings.map((one) => (one.id === row.id ? row : one)),
      });
      const cancelled = withRow({ ...old, status: "cancelled" });
      const reopened = { ...old, status: "confirmed" as const };
      expect(figures(withDraft(provenPlan(cancelled, 2027), reopened, old.id).match)).toEqual(
        figures(provenPlan(withRow(reopened), 2027).match),
      );
      const added = { ...old, id: 10_000, client: "Another" };
      const saved = provenPlan({ ...farm, bookings: [...farm.bookings, added] }, 2027);
      expect(figures(withDraft(provenPlan(farm, 2027), added, null).match)).toEqual(figures(saved.match));
    }
  });

  test("[L2] a saved booking that is opened and not changed takes nothing from anybody", () => {
    for (let seed = 1; seed <= 20; seed++) {
      const before = provenPlan(seededFarm(seed, { bedCount: 12, bookingCount: 10 }), 2027);
      const [{ id, ...same }] = before.snapshot.bookings;
      expect(withDraft(before, same, id).match.shortStems).toEqual(before.match.shortStems);
    }
  });
});
