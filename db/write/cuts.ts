import { and, eq, inArray, isNull } from "drizzle-orm";
import type { FarmDatabase } from "#db/client";
import { lastWriter } from "#db/journal/last-writer";
import { type TallyPlace, talliesAt } from "#db/read/tallies";
import { cut } from "#db/schema/cuts";
import { tally } from "#db/schema/tallies";
import { parseDay } from "#lib/domain/day";
import type { Cut, CutDraft } from "#lib/domain/records/cut";
import { counted, known } from "./known";
import { addRow, changeRow, removeRow } from "./put-row";
import { Refusals, refuse, refuseTwice } from "./refusal";
import { type Written, write } from "./write";

const NOT_THEIRS = "somebody else recorded this cut: they or the owner can take it back";

/**
 * Takes back the record of cuts, all of them as one change: the day stands as if nobody had recorded or counted them.
 * @param by  who takes them back, where it is not the owner: what somebody else recorded or counted is refused, and so is what is too old to know
 */
export const removeCuts = (database: FarmDatabase, ids: readonly number[], by?: string): Written<readonly number[]> =>
  write(database, () => {
    const refusals = new Refusals();
    const names = refusals.each("cuts", ids, (id) => {
      const name = known(database, "cut", id);
      if (by !== undefined && !isTheirs(database, id, by)) refuse("id", NOT_THEIRS);
      return name;
    });
    refusals.end();
    const places = database
      .select()
      .from(cut)
      .where(inArray(cut.id, [...ids]))
      .all();
    for (const id of ids) removeRow(database, cut, id);
    for (const place of places) removeTallies(database, place);
    const what = names.length === 1 ? names[0] : counted(names.length, "cut");
    return { title: `took back the record of ${what}`, result: ids };
  });

/** Whether somebody wrote a cut last, and nobody else counted any of its row. */
export function isTheirs(database: FarmDatabase, id: number, by: string): boolean {
  const row = database.select().from(cut).where(eq(cut.id, id)).get();
  return (
    lastWriter(database, "cut", id) === by &&
    row !== undefined &&
    talliesAt(database, row).every(({ countedBy }) => countedBy === by)
  );
}

/** With the last record of a row goes who counted it; a count that is kept apart still waits for somebody to say what it is [T10]. */
function removeTallies(database: FarmDatabase, place: TallyPlace): void {
  if (cutsAt(database, place).length > 0) return;
  for (const { id, isApart } of talliesAt(database, place)) if (!isApart) removeRow(database, tally, id);
}

/** What is recorded of a row of a day's list. */
export const cutsAt = (database: FarmDatabase, { cutOn, bedId, varietyId }: TallyPlace): Cut[] =>
  database
    .select()
    .from(cut)
    .where(and(eq(cut.cutOn, cutOn), eq(cut.bedId, bedId), eq(cut.varietyId, varietyId)))
    .all()
    .map((row) => ({ ...row, cutOn: parseDay(row.cutOn) }));

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
