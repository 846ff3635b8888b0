import fc from "fast-check";
import { describe, expect, test } from "vitest";
import type { Cut } from "#lib/domain/records/cut";
import { benchSplit } from "#lib/plan/road/bench-split";
import { lostStems, movedBookings } from "#lib/plan/road/moved-promises";
import { isToTell, movedInWords } from "#lib/plan/words/today-words";
import { booking, day, focal, planting, snapshot } from "../../small-farm";
import { anySeed } from "../any-farm";
import { anyGarden, lived, on } from "./lived-season";

/** Ten stems a day in the week of 7 June; 12 are promised to a wedding on the 12th. */
const farm = snapshot({
  plantings: [planting({ id: 1, plantCount: 70 })],
  bookings: [booking({ id: 1, client: "Ivy", stemLines: focal(20), promises: focal(12) })],
});
const cut = (given: Partial<Cut>): Cut => ({
  ...{ id: 1, cutOn: day("2027-06-09"), bedId: 1, varietyId: 1, bookingId: 1 },
  ...{ stemsCut: 0, stemsAsked: 20, goodStems: null, restStands: false },
  ...given,
});

describe("whose stems moved", () => {
  test("[T8] none left on Wednesday takes 10 of 20 stems from Ivy, 2 of them promised: she is to be told", () => {
    const before = on(farm, "2027-06-09");
    const now = on({ ...farm, cuts: [cut({})] }, "2027-06-09");
    const moved = movedBookings(before, now);
    expect(moved.map((one) => [one.booking.client, lostStems(one), isToTell(one)])).toEqual([["Ivy", 10, true]]);
    expect(movedInWords(moved[0], () => "")).toBe("10 focal, any colour fewer (2 of them promised)");
    const back = movedBookings(now, before);
    expect([movedInWords(back[0], () => ""), isToTell(back[0])]).toEqual(["10 focal, any colour more", false]);
  });

  test("[T8] a booking that asks for more, and one whose day has passed, did not move", () => {
    const before = on(farm, "2027-06-09");
    const asksMore = { ...farm, bookings: [booking({ id: 1, client: "Ivy", stemLines: focal(90) })] };
    expect(movedBookings(before, on(asksMore, "2027-06-09"))).toEqual([]);
    expect(movedBookings(on(farm, "2027-06-13"), on({ ...farm, cuts: [cut({})] }, "2027-06-13"))).toEqual([]);
  });

  test("[T8] on any lived season what each booking lost, summed, is what the match is short of more than before", () => {
    fc.assert(
      fc.property(anyGarden, fc.integer(), fc.integer({ min: 1, max: 12 }), (snap, seed, dayCount) => {
        const { cuts, today } = lived(snap, seed, dayCount);
        const before = on({ ...snap, cuts: cuts.slice(0, -1) }, today);
        const now = on({ ...snap, cuts }, today);
        const shortAhead = ({ match }: typeof now) =>
          match.needs.reduce((sum, { eventDay }, index) => sum + (eventDay >= today ? match.shortStems[index] : 0), 0);
        const moved = movedBookings(before, now);
        expect(moved.reduce((sum, one) => sum + lostStems(one), 0)).toBe(shortAhead(now) - shortAhead(before));
        expect(moved.map(lostStems)).toEqual(moved.map(lostStems).sort((a, b) => b - a));
      }),
      { ...anySeed, numRuns: 60 },
    );
  });
});

test("[P2] on any day of a lived season the bench's shares sum to the pick list, by variety and by booking", () => {
  fc.assert(
    fc.property(anyGarden, fc.integer(), fc.integer({ min: 1, max: 12 }), (snap, seed, dayCount) => {
      const { cuts, today } = lived(snap, seed, dayCount);
      const lines = on({ ...snap, cuts }, today).pickList.filter(({ cutDay }) => cutDay === today);
      const byHand = new Map<string, number>();
      for (const { stand, variety, booking: of, stems } of lines) {
        const key = `${variety.id} ${of.id}`;
        if (stand.kind === "planting") byHand.set(key, (byHand.get(key) ?? 0) + stems);
      }
      const shares = benchSplit(lines);
      const parts = shares.flatMap(({ variety, parts: of }) =>
        of.map(({ booking: { id }, stems }): [string, number] => [`${variety.id} ${id}`, stems]),
      );
      expect(new Map(parts)).toEqual(byHand);
      for (const share of shares) expect(share.parts.reduce((sum, { stems }) => sum + stems, 0)).toBe(share.stems);
    }),
    { ...anySeed, numRuns: 60 },
  );
});
