import fc from "fast-check";
import { toDay, toDayNumber } from "#lib/domain/day";
import { BUD_SIGNS, type BudLook } from "#lib/domain/records/bud-look";
import type { Cut } from "#lib/domain/records/cut";
import type { Farm } from "#lib/domain/records/farm-settings";
import { LOSS_CAUSES, type Loss } from "#lib/domain/records/loss";
import { day } from "../small-farm";

export const anyDay = fc
  .integer({ min: toDayNumber(day("2020-01-01")), max: toDayNumber(day("2040-12-31")) })
  .map(toDay);

/** Cuts of these beds and varieties, the booking by its place among the farm's. */
export const anyCuts = (bedId: fc.Arbitrary<number>, varietyId: fc.Arbitrary<number>) =>
  fc.array(
    fc
      .record({
        bedId,
        varietyId,
        bookingId: fc.option(fc.nat(2)),
        cutOn: anyDay,
        stemsCut: fc.nat(1_000_000),
        stemsAsked: fc.option(fc.nat(1_000_000)),
        restStands: fc.boolean(),
        isGraded: fc.boolean(),
      })
      .map(({ isGraded, ...row }) => ({ ...row, goodStems: isGraded ? Math.floor(row.stemsCut * 0.9) : null })),
    { maxLength: 4 },
  );

/** Looks at the buds of these beds and varieties, at most one a day. */
export const anyBudLooks = (bedId: fc.Arbitrary<number>, varietyId: fc.Arbitrary<number>) =>
  fc
    .uniqueArray(
      fc.record({
        bedId,
        varietyId,
        lookedOn: anyDay,
        sign: fc.constantFrom(...BUD_SIGNS),
        daysToCut: fc.option(fc.nat(365)),
      }),
      { selector: ({ lookedOn }) => lookedOn, maxLength: 4 },
    )
    .map((rows): BudLook[] => rows.map((row, index) => ({ id: index + 1, ...row })));

/** What was left of plants in these beds, at most one count a day. */
export const anyLosses = (bedId: fc.Arbitrary<number>, varietyId: fc.Arbitrary<number>) =>
  fc
    .uniqueArray(
      fc.record({
        bedId,
        varietyId,
        seenOn: anyDay,
        cause: fc.constantFrom(...LOSS_CAUSES),
        plantsBefore: fc.integer({ min: 1, max: 1_000_000 }),
        lostShare: fc.constantFrom(0, 0.3, 1),
      }),
      { selector: ({ seenOn }) => seenOn, maxLength: 4 },
    )
    .map((rows): Loss[] =>
      rows.map(({ lostShare, ...row }, index) => ({
        id: index + 1,
        ...row,
        plantsLeft: Math.floor(row.plantsBefore * (1 - lostShare)),
      })),
    );

/** The booking of so many that a place stands for. */
const bookingAt = (place: number | null, bookingCount: number): number | null =>
  place === null || bookingCount === 0 ? null : 1 + (place % bookingCount);

/** These rows for so many bookings. */
export const forBookings = <Row extends { readonly bookingId: number | null }>(
  rows: readonly Row[],
  bookingCount: number,
) => rows.map((row, index) => ({ ...row, id: index + 1, bookingId: bookingAt(row.bookingId, bookingCount) }));

/** These cuts for so many bookings, at most one for each day, bed, variety and booking. */
export function cutsFor(cuts: readonly Omit<Cut, "id">[], bookingCount: number): Cut[] {
  const byKey = new Map<string, Omit<Cut, "id">>();
  for (const row of cuts) {
    const bookingId = bookingAt(row.bookingId, bookingCount);
    byKey.set([row.cutOn, row.bedId, row.varietyId, bookingId].join(), { ...row, bookingId });
  }
  return [...byKey.values()].map((row, index) => ({ id: index + 1, ...row }));
}

/** What a farm has written down of frosts and learned of winters. */
export const anyYears = {
  killingFrosts: fc
    .uniqueArray(fc.integer({ min: 2020, max: 2040 }), { maxLength: 3 })
    .map((years) => years.map((year) => day(`${year}-10-14`))),
  learnedWinters: fc.constantFrom<Farm["learnedWinters"]>(
    [],
    [{ part: "ground", was: 1 / 3, is: 0.82 }],
    [
      { part: "store", was: 0.075, is: 0.1 },
      { part: "ground", was: 0.75, is: 1 },
    ],
  ),
};
