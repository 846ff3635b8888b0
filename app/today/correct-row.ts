import type { FarmDatabase } from "#db/client";
import { correctRecord } from "#db/write/tallies";
import type { Written } from "#db/write/write";
import type { Booking } from "#lib/domain/records/booking";
import type { Cut, CutDraft } from "#lib/domain/records/cut";
import { splitCut } from "#lib/plan/road/split-cut";

type Correction = Pick<CutDraft, "cutOn" | "bedId" | "varietyId" | "stemsCut">;
type Booked = { readonly bookings: readonly Pick<Booking, "id" | "eventOn">[] };

/** Makes the record of a row so many stems, shared anew among the bookings that they were asked for, in their turn [T6]. */
export const correct = (database: FarmDatabase, correction: Correction, farm: Booked, by?: string): Written =>
  correctRecord(database, correction, correction.stemsCut, sharedAnew(farm, correction), by);

/** Shares stems anew among the bookings of a row's record: those of earlier events first, what is nobody's last. */
export function sharedAnew({ bookings }: Booked, { cutOn, bedId, varietyId }: Omit<Correction, "stemsCut">) {
  const eventOf = new Map(bookings.map(({ id, eventOn }) => [id, eventOn]));
  const when = (bookingId: number | null) => (bookingId === null ? "~" : `${eventOf.get(bookingId)} ${bookingId}`);
  return (recorded: readonly Cut[], stems: number): CutDraft[] =>
    splitCut(
      [...recorded]
        .sort((a, b) => (when(a.bookingId) < when(b.bookingId) ? -1 : 1))
        .map(({ bookingId, stemsAsked, stemsCut }) => ({ bookingId, stemsToCut: stemsAsked ?? stemsCut })),
      stems,
    ).map((part) => ({
      ...{ cutOn, bedId, varietyId, ...part },
      ...{ goodStems: null, restStands: recorded.some((cut) => cut.restStands) },
    }));
}
