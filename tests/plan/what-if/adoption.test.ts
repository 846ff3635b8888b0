import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { seededFarm } from "#demo/seeded-farm";
import type { RowChanges } from "#lib/domain/row-changes";
import type { Snapshot } from "#lib/domain/snapshot";
import type { Change } from "#lib/domain/what-if";
import { type Adoption, adoption } from "#lib/plan/what-if/adoption";
import { applyChanges } from "#lib/plan/what-if/what-if";
import { day, monthDay } from "../../small-farm";

const farm = seededFarm(3, { bedCount: 12, bookingCount: 6 });
const { id: _, ...draft } = farm.bookings[0];
const { id: __, ...plantingDraft } = farm.plantings[0];

const anyChange: fc.Arbitrary<Change> = fc.oneof(
  fc.record({ kind: fc.constantFrom("bed-kept" as const, "bed-dug" as const), bedId: fc.integer({ min: 1, max: 14 }) }),
  fc.record({
    kind: fc.constant("frost-moved" as const),
    firstFrost: fc.constantFrom(monthDay("10-01"), monthDay("10-18")),
  }),
  fc.record({
    kind: fc.constant("season-shifted" as const),
    days: fc.integer({ min: -9, max: 9 }),
    cropId: fc.constantFrom(null, 1, 99),
  }),
  fc.record({
    kind: fc.constant("yield-scaled" as const),
    factor: fc.constantFrom(0.5, 1, 2),
    cropId: fc.constantFrom(null, 2),
  }),
  fc.constant({ kind: "booking-added" as const, booking: draft }),
  fc.record({
    kind: fc.constant("booking-moved" as const),
    bookingId: fc.integer({ min: 1, max: 8 }),
    eventOn: fc.constant(day("2027-09-18")),
  }),
  fc.record({ kind: fc.constant("booking-dropped" as const), bookingId: fc.integer({ min: 1, max: 8 }) }),
  fc.record({
    kind: fc.constant("status-set" as const),
    bookingId: fc.integer({ min: 1, max: 8 }),
    status: fc.constant("cancelled" as const),
  }),
  fc.constant({ kind: "planting-added" as const, planting: plantingDraft }),
  fc.record({ kind: fc.constant("planting-removed" as const), plantingId: fc.integer({ min: 1, max: 14 }) }),
  fc.record({
    kind: fc.constant("at-hand-set" as const),
    resource: fc.constantFrom("leaves" as const, "tarp" as const),
    atHand: fc.constantFrom(null, 4),
  }),
);

/** Does to rows what an adoption says, as a database would: new ids above all it has had. */
function written<Row extends { id: number }>(
  rows: readonly Row[],
  changes: RowChanges<Row, Omit<Row, "id">>,
  withId: (id: number, draft: Omit<Row, "id">) => Row,
): Row[] {
  const changed = new Map(changes.changed.map((row) => [row.id, row]));
  const highest = rows.reduce((most, { id }) => Math.max(most, id), 0);
  const kept = rows.filter(({ id }) => !changes.removedIds.includes(id)).map((row) => changed.get(row.id) ?? row);
  return [...kept, ...changes.added.map((one, index) => withId(highest + 1 + index, one))];
}

const adopted = (before: Snapshot, what: Adoption): Snapshot => ({
  ...before,
  farm: what.farm ?? before.farm,
  plantings: written(before.plantings, what.plantings, (id, one) => ({ id, ...one })),
  bookings: written(before.bookings, what.bookings, (id, one) => ({ id, ...one })),
});

describe("adopting a what-if", () => {
  test("[W7] seed 43: writing what it says makes the farm the one that would be", () => {
    fc.assert(
      fc.property(fc.array(anyChange, { maxLength: 10 }), (changes) => {
        const wouldBe = applyChanges(farm, 2027, changes);
        const what = adoption(farm, 2027, changes);
        const now = adopted(farm, what);
        const withoutIds = (rows: readonly { id: number }[]) => rows.map(({ id: _id, ...row }) => row);
        expect(withoutIds(now.plantings)).toEqual(withoutIds(wouldBe.snapshot.plantings));
        expect(withoutIds(now.bookings)).toEqual(withoutIds(wouldBe.snapshot.bookings));
        expect([now.farm, now.curves]).toEqual([wouldBe.snapshot.farm, wouldBe.snapshot.curves]);
        expect(what.misfits).toEqual(wouldBe.misfits);
      }),
      { seed: 43, numRuns: 200 },
    );
  });

  test("[W7] changes that undo each other write nothing", () => {
    const moved = farm.bookings[0];
    const what = adoption(farm, 2027, [
      { kind: "season-shifted", days: 10, cropId: null },
      { kind: "season-shifted", days: -10, cropId: null },
      { kind: "frost-moved", firstFrost: monthDay("09-30") },
      { kind: "frost-moved", firstFrost: farm.farm.frost.firstAutumnP50 },
      { kind: "booking-moved", bookingId: moved.id, eventOn: day("2027-07-03") },
      { kind: "booking-moved", bookingId: moved.id, eventOn: moved.eventOn },
    ]);
    const none = { changed: [], removedIds: [], added: [] };
    expect(what).toEqual({ farm: null, plantings: none, bookings: none, misfits: [] });
  });

  test("[W7] a kept bed writes its planting, and nothing else", () => {
    const dug = farm.plantings.find(({ treatment }) => treatment === "spring-planted");
    if (!dug) throw new Error("the invented farm has no dug bed");
    const what = adoption(farm, 2027, [{ kind: "bed-kept", bedId: dug.bedId }]);
    expect(what.plantings).toEqual({ changed: [{ ...dug, treatment: "kept-in-ground" }], removedIds: [], added: [] });
    expect([what.farm, what.bookings.changed]).toEqual([null, []]);
  });
});
