import fc from "fast-check";
import type { BookingDraft } from "#lib/domain/records/booking";
import { COLOURS, ROLES, STATUSES } from "#lib/domain/words";
import { anyOwnDays } from "../any-event-days";
import { anyFinalCount } from "../any-final-count";
import { anyAsks } from "../any-traits";
import { anyDay } from "./any-cuts";

export const share = fc.double({ min: 0, max: 1, noNaN: true }).map((number) => number + 0);
export const between = (min: number, max: number) => fc.double({ min, max, noNaN: true }).map((number) => number + 0);
const colours = fc.array(fc.constantFrom(...COLOURS), { maxLength: 4 });

/** What a booking names, and its texts. */
type Given = {
  readonly cropId: fc.Arbitrary<number>;
  readonly recipeId: fc.Arbitrary<number>;
  readonly client: fc.Arbitrary<string>;
  readonly note: fc.Arbitrary<string>;
};

/** A booking of every kind that the types allow, which names these. */
export function anyBooking({ cropId, recipeId, client, note }: Given): fc.Arbitrary<BookingDraft> {
  const stemLine = fc
    .record({ role: fc.constantFrom(...ROLES), cropId: fc.option(cropId), only: fc.boolean(), asks: anyAsks, colours })
    .chain(({ only, ...line }) =>
      between(0.01, 10_000).map((stemCount) => ({ ...line, cropOnly: only && line.cropId !== null, stemCount })),
    );
  const promise = fc.record({
    role: fc.constantFrom(...ROLES),
    cropId: fc.option(cropId),
    cropOnly: fc.boolean(),
    asks: anyAsks,
    colours,
    stemCount: fc.integer({ min: 1, max: 10_000 }),
  });
  const facts = fc.record({
    client,
    status: fc.constantFrom(...STATUSES),
    lapsesAfter: fc.option(anyDay),
    eventOn: anyDay,
    palette: colours,
    alternativeColours: colours,
    unacceptableColours: colours,
    spareShare: share,
    takenOn: fc.option(anyDay),
    priceCents: fc.option(fc.nat(100_000_000)),
    ...anyFinalCount(anyDay),
    unacceptableCropIds: fc.array(cropId, { maxLength: 2 }),
    pieces: fc.array(fc.record({ recipeId: recipeId, pieceCount: between(0.01, 1000), colours }), {
      maxLength: 3,
    }),
    stemLines: fc.array(stemLine, { maxLength: 3 }),
    promises: fc.array(promise, { maxLength: 3 }),
    note,
  });
  return fc.tuple(facts, anyOwnDays(14)).map(([booking, ownDays]) => ({ ...booking, ...ownDays }));
}
