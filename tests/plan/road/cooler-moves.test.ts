import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { toDay, toDayNumber } from "#lib/domain/day";
import { type CoolerMove, MOVE_KINDS } from "#lib/domain/records/cooler-move";
import type { Snapshot } from "#lib/domain/snapshot";
import { type StoredStems, takeFromLot } from "#lib/plan/road/cooler-moves";
import { booking, day, focal, snapshot } from "../../small-farm";
import { on, shortOf, sum } from "./lived-season";

/** A lot of 50 cut on Tue 8 June, and two weddings of 40 and 30 stems on Sat 12 June. Nothing grows. */
const LOT = { id: 1, varietyId: 1, cutOn: day("2027-06-08"), stemCount: 50 };
const stored = (given: Partial<Snapshot> = {}): Snapshot =>
  snapshot({
    plantings: [],
    bookings: [booking({ id: 1, stemLines: focal(40) }), booking({ id: 2, stemLines: focal(30) })],
    coolerStock: [LOT],
    ...given,
  });
const move = (given: Partial<CoolerMove> = {}): CoolerMove => ({
  id: 1,
  movedOn: day("2027-06-10"),
  varietyId: 1,
  cutOn: LOT.cutOn,
  kind: "taken out",
  stemCount: 10,
  bookingId: null,
  ...given,
});
const shortAfter = (...moves: Partial<CoolerMove>[]): number[] =>
  shortOf(on(stored({ coolerMoves: moves.map((given, index) => move({ ...given, id: index + 1 })) }), "2027-06-10"));

describe("stems that leave the cooler", () => {
  test("[ST1] 50 stems serve the first wedding's 40 and 10 of the other's 30; taken out for the second they are its own", () => {
    expect(shortAfter()).toEqual([0, 20]);
    expect(shortAfter({ bookingId: 2, stemCount: 30 })).toEqual([20, 0]);
  });

  test("[ST1] thrown away, or taken out for nobody named, they are gone", () => {
    expect(shortAfter({ kind: "thrown away", stemCount: 15 })).toEqual([5, 30]);
    expect(shortAfter({ stemCount: 15 })).toEqual([5, 30]);
  });

  test("[ST1] what was taken out for a wedding is not thrown away with the rest, and more than stands there is not taken", () => {
    expect(shortAfter({ bookingId: 2, stemCount: 30 }, { kind: "thrown away", stemCount: 500 })).toEqual([40, 0]);
  });

  test("what is moved tomorrow still stands there today", () => {
    expect(shortAfter({ movedOn: day("2027-06-11"), kind: "thrown away", stemCount: 50 })).toEqual([0, 20]);
  });

  test("what an event that has passed had of a lot is not thrown away after it", () => {
    const snap = stored({ coolerMoves: [move({ movedOn: day("2027-06-14"), kind: "thrown away", stemCount: 50 })] });
    expect(shortOf(on(snap, "2027-06-15"))).toEqual([0, 20]);
  });

  test("of a cancelled wedding's taken stems none stand there any more", () => {
    const [first, second] = stored().bookings;
    const snap = stored({
      bookings: [{ ...first, status: "cancelled" }, second],
      coolerMoves: [move({ bookingId: 1, stemCount: 45 })],
    });
    expect(shortOf(on(snap, "2027-06-10"))).toEqual([25]);
  });

  test("[ST1] taken stem by stem, the next always from the best of those left, it is the same", () => {
    const days = new Map([
      [1, 20],
      [2, 22],
      [3, 9],
    ]);
    const stems = fc.record({
      varietyId: fc.constantFrom(1, 2),
      day: fc.constantFrom(toDayNumber(LOT.cutOn), toDayNumber(LOT.cutOn) + 1),
      bookingId: fc.constantFrom(null, 1, 2, 3),
      isOut: fc.constantFrom(undefined, true as const),
      stems: fc.nat(6),
    });
    const asked = fc.record({
      kind: fc.constantFrom(...MOVE_KINDS),
      bookingId: fc.constantFrom(null, 1, 2),
      stemCount: fc.integer({ min: 1, max: 20 }),
    });
    fc.assert(
      fc.property(fc.array(stems, { maxLength: 8 }), asked, (rows, given) => {
        const slow = oneByOne(rows, move(given), days);
        const fast = rows.map((row) => ({ ...row })) as StoredStems[];
        const taken = takeFromLot(fast, move(given), (id) => days.get(id) ?? null, 10);
        const byOwner = (of: readonly { bookingId: number | null; stems: number }[]) =>
          [null, 1, 2, 3].map((id) => sum(of.filter((row) => row.bookingId === id).map((row) => row.stems)));
        expect(byOwner(fast)).toEqual(byOwner(slow));
        expect(sum(taken.map((part) => part.stems))).toBe(
          sum(rows.map((row) => row.stems)) - sum(slow.map((row) => row.stems)),
        );
      }),
      { seed: 7, numRuns: 300 },
    );
  });
});

/** The rows after a move, one stem after the other. Day 10 is the day of the move: the event of booking 3 has passed. */
function oneByOne(rows: readonly object[], { bookingId, stemCount }: CoolerMove, days: ReadonlyMap<number, number>) {
  const left = rows.map((row) => ({ ...row })) as StoredStems[];
  const rank = (row: StoredStems) => {
    if (row.bookingId === null) return 1000;
    return row.bookingId === bookingId ? 2000 : (days.get(row.bookingId) ?? 0);
  };
  for (let stem = 0; stem < stemCount; stem++) {
    const able = left.filter(
      (row) =>
        row.stems > 0 &&
        row.varietyId === 1 &&
        toDay(row.day) === LOT.cutOn &&
        !row.isOut &&
        (row.bookingId === null || (days.get(row.bookingId) ?? 0) >= 10),
    );
    const best = able.reduce<StoredStems | null>((top, row) => (top && rank(top) >= rank(row) ? top : row), null);
    if (best) best.stems -= 1;
  }
  return left;
}
