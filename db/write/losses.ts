import { and, eq } from "drizzle-orm";
import type { FarmDatabase } from "#db/client";
import { lastWriter } from "#db/journal/last-writer";
import { loss } from "#db/schema/losses";
import type { LossDraft } from "#lib/domain/records/loss";
import { known } from "./known";
import { addRow, changeRow, removeRow } from "./put-row";
import { refuse, refuseTwice } from "./refusal";
import { type Written, write } from "./write";

const NOT_THEIRS = "somebody else wrote this down: they or the owner can take it back";

/** Writes down what is left of plants, in the place of what was written for the same day, bed, variety and cause, and gives its id. Refused when the bed or variety is not on the farm. */
export const recordLoss = (database: FarmDatabase, draft: LossDraft): Written =>
  write(database, () => {
    const result = putLoss(database, draft);
    const { plantsLeft, plantsBefore } = draft;
    return { title: `${known(database, "loss", result)}: ${plantsLeft} of ${plantsBefore} left`, result };
  });

/**
 * Takes back what was written down of plants.
 * @param by  who takes it back, where it is not the owner: what somebody else wrote is refused
 */
export const removeLoss = (database: FarmDatabase, id: number, by?: string): Written =>
  write(database, () => {
    const name = known(database, "loss", id);
    if (by !== undefined && lastWriter(database, "loss", id) !== by) refuse("id", NOT_THEIRS);
    removeRow(database, loss, id);
    return { title: `took back ${name}`, result: id };
  });

/** Makes the loss with this id what `draft` says, inside a change that is open. Refuses one that another record says already. */
export const replaceLoss = (database: FarmDatabase, id: number, draft: LossDraft): void =>
  refuseTwice("seenOn", "this day, bed, variety and cause have a count already: change that one", () =>
    changeRow(database, loss, id, draft),
  );

/** Writes a loss inside a change that is open, in the place of the one of the same day, bed, variety and cause; gives its id. */
export function putLoss(database: FarmDatabase, draft: LossDraft): number {
  known(database, "bed", draft.bedId, "bedId");
  known(database, "variety", draft.varietyId, "varietyId");
  const before = database
    .select({ id: loss.id })
    .from(loss)
    .where(
      and(
        eq(loss.seenOn, draft.seenOn),
        eq(loss.bedId, draft.bedId),
        eq(loss.varietyId, draft.varietyId),
        eq(loss.cause, draft.cause),
      ),
    )
    .get();
  if (!before) return addRow(database, loss, draft);
  changeRow(database, loss, before.id, draft);
  return before.id;
}
