import type { FarmDatabase } from "#db/client";
import { recordTally, settleTally, type TakenTally } from "#db/write/tallies";
import type { Written } from "#db/write/write";
import type { Booking } from "#lib/domain/records/booking";
import type { Cut, CutDraft } from "#lib/domain/records/cut";
import type { Tally } from "#lib/domain/tally";
import { isDelivery } from "#lib/plan/road/orders";
import { type AskedPart, splitCut } from "#lib/plan/road/split-cut";
import { asking } from "../people/who";

/** The bookings of the farm: all of it that taking a count asks for. */
type Booked = { readonly bookings: readonly Pick<Booking, "id" | "eventOn">[] };

/** Takes what somebody counted, in the name of whoever sends it. */
export const takeTally = (database: FarmDatabase, tally: Tally, farm: Booked): Written<TakenTally> =>
  recordTally(database, tally, asking()?.person?.name ?? null, (recorded, sent) => added(farm, recorded, sent));

type Settled = { readonly id: number; readonly isAdded: boolean };

/** Adds a count that is kept apart after all, or leaves it out. */
export const settle = (database: FarmDatabase, { id, isAdded }: Settled, farm: Booked, by?: string): Written =>
  settleTally(database, id, isAdded, (recorded, sent) => added(farm, recorded, sent), by);

type Counted = Pick<Tally, "cutOn" | "bedId" | "varietyId" | "asked" | "stemsCut" | "restStands">;

function added(
  farm: Booked,
  recorded: readonly Cut[],
  { cutOn, bedId, varietyId, asked, stemsCut, restStands = false }: Counted,
): CutDraft[] {
  const isLeft = restStands || recorded.some((cut) => cut.restStands);
  const parts = splitCut(askedParts(farm, asked), stemsCut, recorded);
  return parts.map((part) => ({ cutOn, bedId, varietyId, ...part, goodStems: null, restStands: isLeft }));
}

/** What a list asked for, as the farm stands: what a booking had that is no longer there is nobody's. */
function askedParts({ bookings }: Booked, asked: Tally["asked"]): AskedPart[] {
  const known = new Set(bookings.map(({ id }) => id));
  return asked.flatMap(([id, stemsToCut]): AskedPart[] => {
    if (isDelivery({ id })) return [{ bookingId: null, stemsToCut }];
    return known.has(id) ? [{ bookingId: id, stemsToCut }] : [];
  });
}
