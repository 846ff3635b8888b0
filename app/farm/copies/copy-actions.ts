"use server";

import { revalidatePath } from "next/cache";
import { redirect } from "next/navigation";
import { isKeptForGood, removeCopy } from "#db/copies/remove-copy";
import { restoreCopy } from "#db/copies/restore-copy";
import { nameSecondPlace } from "#db/copies/second-place";
import { takeCopy } from "#db/copies/take-copy";
import { FarmFileRefused } from "#db/file/farm-file-refused";
import { copyNamed } from "../../copies";
import { farmDatabase, farmFile } from "../../load";
import { type FormState, SAVED } from "../../ui/form-state";
import { FormValues } from "../../ui/form-values";

/** These stand outside `action`: they must answer also while the farm's file cannot be opened. */

/** Takes a copy of the farm as it stands. */
export async function takeOne(_: FormState, form: FormData): Promise<FormState> {
  return answering(form, "folder", async () => {
    const { secondPlaceProblem } = await takeCopy(farmDatabase().$client, farmFile().file, "by-hand");
    return secondPlaceProblem && `The copy was taken, but only in the first place. ${secondPlaceProblem}`;
  });
}

/** Makes the farm what a copy of the list holds, and opens the list, where what was before is now the first. */
export async function restore(_: FormState, form: FormData): Promise<FormState> {
  const answer = await answering(form, "copyName", async () => {
    const copy = copyNamed(new FormValues(form).text("copyName"));
    if (!copy) return "this copy is no longer there";
    await restoreCopy(copy.path, farmFile().file);
    return null;
  });
  if (answer.outcome === "saved") redirect("/farm/copies");
  return answer;
}

/** Deletes a copy that was taken by hand. */
export async function deleteCopy(_: FormState, form: FormData): Promise<FormState> {
  return answering(form, "copyName", async () => {
    const copy = copyNamed(new FormValues(form).text("copyName"));
    if (!copy) return "this copy is no longer there";
    if (!isKeptForGood(copy)) return "this copy goes by itself when it has had its time";
    removeCopy(copy, farmFile().file);
    return null;
  });
}

/** Names the folder that each copy goes to as well. */
export async function saveSecondPlace(_: FormState, form: FormData): Promise<FormState> {
  return answering(form, "folder", async () =>
    nameSecondPlace(farmFile().file, new FormValues(form).textOrNull("folder")),
  );
}

/** Does the work and makes every page again; what the work says is wrong, and what is wrong with a file, goes back to the form. */
async function answering(form: FormData, place: string, work: () => Promise<string | null>): Promise<FormState> {
  const values = new FormValues(form);
  try {
    const problem = await work();
    revalidatePath("/", "layout");
    return problem === null ? SAVED : values.refused([{ place, message: problem }]);
  } catch (error) {
    if (error instanceof FarmFileRefused) return values.refused([{ place: "", message: error.message }]);
    throw error;
  }
}
