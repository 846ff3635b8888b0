import type { FarmDatabase } from "#db/client";
import { correctRecord } from "#db/write/tallies";
import type { Written } from "#db/write/write";
import type { Cut, CutDraft } from "#lib/domain/records/cut";
import type { Snapshot } from "#lib/domain/snapshot";
import { splitCut } from "#lib/plan/road/split-cut";

type Correction = Pick<CutDraft, "cutOn" | "bedId" | "varietyId" | "stemsCut">;

/** Makes the record of a row so many stems, shared anew among the bookings that they were asked for, in their turn [T6]. */
export const correct = (
  database: FarmDatabase,
  correction: Correction,
  { bookings }: Snapshot,
  by?: string,
): Written => {
  const { stemsCut: stems, ...place } = correction;
  const eventOf = new Map(bookings.map(({ id, eventOn }) => [id, eventOn]));
  const when = (bookingId: number | null) => (bookingId === null ? "~" : `${eventOf.get(bookingId)} ${bookingId}`);
  const share = (recorded: readonly Cut[]) =>
    splitCut(
      [...recorded]
        .sort((a, b) => (when(a.bookingId) < when(b.bookingId) ? -1 : 1))
        .map(({ bookingId, stemsAsked, stemsCut }) => ({ bookingId, stemsToCut: stemsAsked ?? stemsCut })),
      stems,
    ).map((part) => ({ ...place, ...part, goodStems: null, restStands: recorded.some((cut) => cut.restStands) }));
  return correctRecord(database, place, stems, share, by);
};
