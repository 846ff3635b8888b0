"use server";

import { revalidatePath } from "next/cache";
import { redirect } from "next/navigation";
import { revision } from "#db/journal/journal";
import { adoptWhatIf } from "#db/write/what-ifs";
import { adoption } from "#lib/plan/what-if/adoption";
import { farmDatabase, loadFarm } from "../../load";
import type { FormState } from "../../ui/form-state";
import { FormValues } from "../../ui/form-values";
import { keptWhatIf } from "../kept-what-ifs";
import { ownCurve } from "./own-curve";

const STALE = "the farm was changed since this was shown: look through the list again";

/** Writes to the farm what a what-if changes, as one change; refused when the farm is no longer the one that was shown. */
export async function adopt(_: FormState, form: FormData): Promise<FormState> {
  const values = new FormValues(form);
  const database = farmDatabase();
  const whatIf = keptWhatIf(values.hiddenNumber("whatIfId"));
  if (!whatIf || values.hiddenNumber("revision") !== revision(database)) {
    revalidatePath("/", "layout");
    return values.refused([{ place: "revision", message: STALE }]);
  }
  const farm = loadFarm();
  const toWrite = adoption(farm, whatIf.seasonYear, whatIf.changes);
  const adopted = adoptWhatIf(database, `adopted the what-if ${whatIf.name}`, {
    ...toWrite,
    changedCurves: toWrite.changedCurves.map((curve) =>
      ownCurve(
        curve,
        farm.curves.find(({ id }) => id === curve.id),
      ),
    ),
  });
  if (!adopted.ok) return values.refused(adopted.problems);
  revalidatePath("/", "layout");
  redirect(`/what-if/${whatIf.id}?adopted=${adopted.changeId ?? ""}`);
}
