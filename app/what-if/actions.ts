"use server";

import { revalidatePath } from "next/cache";
import { redirect } from "next/navigation";
import { putWhatIf, removeWhatIf } from "#db/write/what-ifs";
import { farmDatabase } from "../load";
import type { FormState } from "../ui/form-state";
import { taken } from "../ui/form-taken";
import { FormValues } from "../ui/form-values";
import { keptWhatIf } from "./kept-what-ifs";
import { readName, readNewWhatIf } from "./what-if-values";

const GONE = [{ place: "whatIfId", message: "this what-if was removed meanwhile: undo that, or make a new one" }];

/** Makes a what-if and opens it, empty or with the changes of another. */
export async function makeWhatIf(_: FormState, form: FormData): Promise<FormState> {
  const values = new FormValues(form);
  const read = readNewWhatIf(values);
  if (!read.ok) return values.refused();
  const { name, seasonYear, fromId } = read.parsed;
  const from = fromId === null ? undefined : keptWhatIf(fromId);
  if (fromId !== null && !from)
    return values.refused([{ place: "fromId", message: "this one is gone: choose another" }]);
  const made = putWhatIf(farmDatabase(), { name, seasonYear, changes: from?.changes ?? [] });
  if (!made.ok) return values.refused(made.problems);
  revalidatePath("/", "layout");
  redirect(`/what-if/${made.result}`);
}

/** Gives a what-if another name. */
export async function renameWhatIf(_: FormState, form: FormData): Promise<FormState> {
  const values = new FormValues(form);
  const read = readName(values);
  if (!read.ok) return values.refused();
  const whatIf = keptWhatIf(values.hiddenNumber("whatIfId"));
  return whatIf
    ? taken(values, putWhatIf(farmDatabase(), { ...whatIf, name: read.parsed.name }))
    : values.refused(GONE);
}

/** Removes a what-if; the undo on the next page brings it back. The farm was never touched by it. */
export async function deleteWhatIf(_: FormState, form: FormData): Promise<FormState> {
  const values = new FormValues(form);
  const removed = removeWhatIf(farmDatabase(), values.hiddenNumber("whatIfId"));
  if (!removed.ok) return values.refused(GONE);
  revalidatePath("/", "layout");
  redirect("/what-if");
}
