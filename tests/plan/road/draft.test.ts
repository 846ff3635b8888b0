import { describe, expect, test } from "vitest";
import { seededFarm } from "#demo/seeded-farm";
import type { BookingDraft } from "#lib/domain/booking";
import { coverageByBooking } from "#lib/plan/road/coverage";
import { withDraft } from "#lib/plan/road/draft";
import { checkMatch } from "#lib/plan/road/match";
import { plan } from "#lib/plan/road/plan";
import { booking, focal, snapshot } from "../../small-farm";

const draft = (given: Partial<BookingDraft> = {}): BookingDraft => {
  const { id: _, ...rest } = booking({ id: 1, ...given });
  return rest;
};

describe("a booking that is not saved yet", () => {
  test("[L2] of 30 stems in reach a draft of 40 would get 30 and be short 10", () => {
    const before = plan(snapshot(), 2027);
    const { match, gaps, draftId } = withDraft(before, draft({ stemLines: focal(40) }), null);
    const coverage = coverageByBooking(match, gaps).get(draftId);
    expect([coverage?.needStems, coverage?.shortStems]).toEqual([40, 10]);
    expect(checkMatch(match)).toEqual([]);
    expect(before.match.needs).toEqual([]);
  });

  test("[L2] a cancelled draft asks for nothing", () => {
    const { match } = withDraft(plan(snapshot(), 2027), draft({ status: "cancelled", stemLines: focal(40) }), null);
    expect(match.needs).toEqual([]);
  });

  test("[L2] over 60 seeded farms a changed booking as a draft has the needs, cost and short stems of the saved one", () => {
    for (let seed = 1; seed <= 60; seed++) {
      const farm = seededFarm(seed, { bedCount: 12, bookingCount: 10 });
      const old = farm.bookings[seed % farm.bookings.length];
      const moved = farm.bookings[(seed * 3) % farm.bookings.length].eventOn;
      const changed = { ...old, eventOn: moved, stemLines: [...old.stemLines, ...focal(1 + (seed % 40))] };
      const saved = plan({ ...farm, bookings: farm.bookings.map((row) => (row.id === old.id ? changed : row)) }, 2027);
      const drafted = withDraft(plan(farm, 2027), changed, old.id);
      expect(checkMatch(drafted.match)).toEqual([]);
      expect(drafted.match.solution.totalCost).toBe(saved.match.solution.totalCost);
      expect(drafted.match.needs.map((need) => need.stems).sort()).toEqual(
        saved.match.needs.map((need) => need.stems).sort(),
      );
    }
  });

  test("[L2] a saved booking that is opened and not changed takes nothing from anybody", () => {
    for (let seed = 1; seed <= 20; seed++) {
      const before = plan(seededFarm(seed, { bedCount: 12, bookingCount: 10 }), 2027);
      const [{ id, ...same }] = before.snapshot.bookings;
      expect(withDraft(before, same, id).match.shortStems).toEqual(before.match.shortStems);
    }
  });
});
