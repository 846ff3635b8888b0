import type { FarmDatabase } from "#db/client";
import { lastWriter } from "#db/journal/last-writer";
import { coolerMove } from "#db/schema/cooler-moves";
import type { CoolerMoveDraft } from "#lib/domain/records/cooler-move";
import { counted, known } from "./known";
import { addRow, removeRow } from "./put-row";
import { Refusals, refuse } from "./refusal";
import { type Written, write } from "./write";

/**
 * Records stems that left the cooler, all of them as one change, and gives the ids of the records. What two people record at once adds up. Refused when a
 * variety or booking is not on the farm.
 */
export const recordMoves = (database: FarmDatabase, drafts: readonly CoolerMoveDraft[]): Written<readonly number[]> =>
  write(database, () => {
    const refusals = new Refusals();
    const names = refusals.each("moves", drafts, (draft) => ({
      variety: known(database, "variety", draft.varietyId, "varietyId"),
      client: draft.bookingId === null ? null : known(database, "booking", draft.bookingId, "bookingId"),
    }));
    refusals.end();
    return { title: titleOf(drafts, names), result: drafts.map((draft) => addRow(database, coolerMove, draft)) };
  });

const NOT_THEIRS = "somebody else recorded this: they or the owner can take it back";

/**
 * Takes a record of stems that left the cooler back: they stand there again.
 * @param by  who takes it back, where it is not the owner: what somebody else recorded is refused, and so is what is too old to know
 */
export const removeMove = (database: FarmDatabase, id: number, by?: string): Written =>
  write(database, () => {
    const name = known(database, "cooler_move", id);
    if (by !== undefined && lastWriter(database, "cooler_move", id) !== by) refuse("id", NOT_THEIRS);
    removeRow(database, coolerMove, id);
    return { title: `took back the record of ${name}`, result: id };
  });

type Named = { readonly variety: string; readonly client: string | null };

/** "took 40 stems of Maple Row out of the cooler for Ash", "threw 45 stems of 4 lots away" */
function titleOf(drafts: readonly CoolerMoveDraft[], [name]: readonly Named[]): string {
  const [first] = drafts;
  if (!first) return "moved nothing out of the cooler";
  const stems = counted(
    drafts.reduce((sum, { stemCount }) => sum + stemCount, 0),
    "stem",
  );
  const what = `${stems} of ${drafts.length === 1 ? name.variety : counted(drafts.length, "lot")}`;
  if (first.kind === "thrown away") return `threw ${what} away`;
  return `took ${what} out of the cooler${drafts.length > 1 || name.client === null ? "" : ` for ${name.client}`}`;
}
