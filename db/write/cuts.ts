import { and, eq, isNull } from "drizzle-orm";
import type { FarmDatabase } from "#db/client";
import { lastWriter } from "#db/journal/last-writer";
import { cut } from "#db/schema/cuts";
import { inFull } from "#lib/domain/day";
import type { CutDraft } from "#lib/domain/records/cut";
import { counted, known } from "./known";
import { addRow, changeRow, removeRow } from "./put-row";
import { Refusals, refuse, refuseTwice } from "./refusal";
import { type Written, write } from "./write";

/**
 * Records cuts, all of them as one change, and gives their ids. Each takes the place of the cut of the same day, bed, variety and booking, so that
 * what is recorded twice is recorded once. Refused when a bed, variety or booking is not on the farm.
 */
export const recordCuts = (database: FarmDatabase, drafts: readonly CutDraft[]): Written<readonly number[]> =>
  write(database, () => {
    const refusals = new Refusals();
    const ids = refusals.each("cuts", drafts, (draft) => putCut(database, draft));
    refusals.end();
    const [first] = drafts;
    const stems = drafts.reduce((sum, { stemsCut }) => sum + stemsCut, 0);
    const where =
      first && `${known(database, "variety", first.varietyId)} in bed ${known(database, "bed", first.bedId)}`;
    const isOnePlace = drafts.every(({ bedId, varietyId }) => bedId === first.bedId && varietyId === first.varietyId);
    const what = isOnePlace && where ? where : counted(drafts.length, "cut");
    return {
      title: `recorded ${counted(stems, "stem")} cut${first ? ` on ${inFull(first.cutOn)}` : ""}: ${what}`,
      result: ids,
    };
  });

const NOT_THEIRS = "somebody else recorded this cut: they or the owner can take it back";

/**
 * Takes back the record of cuts, all of them as one change: the day stands as if nobody had recorded them.
 * @param by  who takes them back, where it is not the owner: what somebody else recorded is refused, and so is what is too old to know
 */
export const removeCuts = (database: FarmDatabase, ids: readonly number[], by?: string): Written<readonly number[]> =>
  write(database, () => {
    const refusals = new Refusals();
    const names = refusals.each("cuts", ids, (id) => {
      const name = known(database, "cut", id);
      if (by !== undefined && lastWriter(database, "cut", id) !== by) refuse("id", NOT_THEIRS);
      return name;
    });
    refusals.end();
    for (const id of ids) removeRow(database, cut, id);
    const what = names.length === 1 ? names[0] : counted(names.length, "cut");
    return { title: `took back the record of ${what}`, result: ids };
  });

/** Makes the cut with this id what `draft` says, inside a change that is open. Refuses one that another record says already. */
export const replaceCut = (database: FarmDatabase, id: number, draft: CutDraft): void =>
  refuseTwice("cutOn", "this day, bed, variety and booking have a record already: change that one", () =>
    changeRow(database, cut, id, draft),
  );

/** Writes a cut inside a change that is open, in the place of the one of the same day, bed, variety and booking; gives its id. */
export function putCut(database: FarmDatabase, draft: CutDraft): number {
  known(database, "bed", draft.bedId, "bedId");
  known(database, "variety", draft.varietyId, "varietyId");
  if (draft.bookingId !== null) known(database, "booking", draft.bookingId, "bookingId");
  const before = database
    .select({ id: cut.id })
    .from(cut)
    .where(
      and(
        eq(cut.cutOn, draft.cutOn),
        eq(cut.bedId, draft.bedId),
        eq(cut.varietyId, draft.varietyId),
        draft.bookingId === null ? isNull(cut.bookingId) : eq(cut.bookingId, draft.bookingId),
      ),
    )
    .get();
  if (!before) return addRow(database, cut, draft);
  changeRow(database, cut, before.id, draft);
  return before.id;
}
