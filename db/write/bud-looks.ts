import { and, eq } from "drizzle-orm";
import type { FarmDatabase } from "#db/client";
import { budLook } from "#db/schema/bud-looks";
import type { BudLookDraft } from "#lib/domain/records/bud-look";
import { known } from "./known";
import { addRow, changeRow } from "./put-row";
import { refuseTwice } from "./refusal";
import { type Written, write } from "./write";

/** Records a look at the buds, in the place of the one of the same day, bed and variety, and gives its id. Refused when the bed or variety is not on the farm. */
export const recordBudLook = (database: FarmDatabase, draft: BudLookDraft): Written =>
  write(database, () => {
    const result = putBudLook(database, draft);
    const { bedId, varietyId, sign, daysToCut } = draft;
    const seen = daysToCut === null ? sign : `${daysToCut} ${daysToCut === 1 ? "day" : "days"} to the first cut`;
    return {
      title: `noted ${known(database, "variety", varietyId)} in bed ${known(database, "bed", bedId)}: ${seen}`,
      result,
    };
  });

/** Makes the look with this id what `draft` says, inside a change that is open. Refuses one that another record says already. */
export const replaceBudLook = (database: FarmDatabase, id: number, draft: BudLookDraft): void =>
  refuseTwice("lookedOn", "this day, bed and variety have a look already: change that one", () =>
    changeRow(database, budLook, id, draft),
  );

/** Writes a look inside a change that is open, in the place of the one of the same day, bed and variety; gives its id. */
export function putBudLook(database: FarmDatabase, draft: BudLookDraft): number {
  known(database, "bed", draft.bedId, "bedId");
  known(database, "variety", draft.varietyId, "varietyId");
  const before = database
    .select({ id: budLook.id })
    .from(budLook)
    .where(
      and(eq(budLook.lookedOn, draft.lookedOn), eq(budLook.bedId, draft.bedId), eq(budLook.varietyId, draft.varietyId)),
    )
    .get();
  if (!before) return addRow(database, budLook, draft);
  changeRow(database, budLook, before.id, draft);
  return before.id;
}
