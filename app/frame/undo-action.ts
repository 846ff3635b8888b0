"use server";

import { revalidatePath } from "next/cache";
import { redirect } from "next/navigation";
import { z } from "zod";
import type { FarmDatabase } from "#db/client";
import { FarmFileRefused } from "#db/file/farm-file-refused";
import { standingChange, undoChange } from "#db/journal/journal";
import { SaveRefused, type Saving, saving } from "#db/journal/saving";
import { saveOf } from "../action";
import { sentForm } from "../door/sent-form";
import { farmDatabase } from "../load";
import { HOMES } from "../people/homes";
import { roleNow } from "../people/who";
import { rememberOwnSave } from "./own-save";

/** Takes one change back, once however often it is pressed. When it cannot be, nothing is touched and the history page says why. */
export async function undo(sent: FormData): Promise<void> {
  const form = sentForm(sent);
  const changeId = z.coerce.number().int().safeParse(form.get("changeId"));
  if (!changeId.success) redirect("/farm/history");
  // The history, which says why, is the owner's alone; to others the bar that stays says that nothing was undone.
  if (!isUndone(changeId.data, saveOf(form)))
    redirect(roleNow() === "owner" ? `/farm/history?refused=${changeId.data}` : HOMES[roleNow()]);
  await rememberOwnSave();
  revalidatePath("/", "layout");
}

/** Whoever is not the owner takes back only what is their own. */
const isTheirs = (database: FarmDatabase, changeId: number, by: string | null | undefined): boolean =>
  roleNow() === "owner" || standingChange(database, changeId)?.madeBy === by;

function isUndone(changeId: number, save: Saving): boolean {
  try {
    const database = farmDatabase();
    if (!isTheirs(database, changeId, save.by)) return false;
    return saving(database, save, () => undoChange(database, changeId)).ok;
  } catch (error) {
    if (error instanceof FarmFileRefused || error instanceof SaveRefused) return false;
    throw error;
  }
}
