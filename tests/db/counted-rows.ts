import type { FarmDatabase } from "#db/client";
import { correctRecord, recordTally } from "#db/write/tallies";
import type { Cut, CutDraft } from "#lib/domain/records/cut";
import type { Tally } from "#lib/domain/tally";
import { day } from "../small-farm";
import { kept } from "./kept-farm";

/** Counts of the small farm's beds, and how they are taken and corrected: all for nobody, since how stems are shared among bookings is another room's. */

export const ON = day("2027-06-10");
export const tally = (given: Partial<Tally> = {}): Tally => ({
  cutOn: ON,
  bedId: 1,
  varietyId: 1,
  asked: [[1, 9]],
  stemsCut: 9,
  seenStems: 0,
  seenRevision: 1000,
  countedAt: "2027-06-10T05:40:00Z",
  ...given,
});

export const draft = (
  { cutOn, bedId, varietyId }: Pick<Tally, "cutOn" | "bedId" | "varietyId">,
  stemsCut: number,
): CutDraft => ({
  ...{ cutOn: day(cutOn), bedId, varietyId, bookingId: null, stemsAsked: 9, goodStems: null, restStands: false },
  stemsCut,
});
export const sum = (recorded: readonly Pick<Cut, "stemsCut">[]) =>
  recorded.reduce((all, { stemsCut }) => all + stemsCut, 0);
export const taken = (database: FarmDatabase, sent: Tally, by: string | null = null) =>
  recordTally(database, sent, by, (recorded, { stemsCut }) => [draft(sent, sum(recorded) + stemsCut)]);
export const corrected = (database: FarmDatabase, stemsCut: number, place = tally()) =>
  correctRecord(database, place, stemsCut, () => [draft(place, stemsCut)]);
export const stems = (database: FarmDatabase, bedId = 1) =>
  sum(kept(database).cuts.filter((cut) => cut.bedId === bedId));
