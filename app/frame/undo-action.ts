"use server";

import { revalidatePath } from "next/cache";
import { redirect } from "next/navigation";
import { z } from "zod";
import { FarmFileRefused } from "#db/file/farm-file-refused";
import { undoChange } from "#db/journal/journal";
import { SaveRefused, type Saving, saving } from "#db/journal/saving";
import { saveOf } from "../action";
import { sentForm } from "../door/sent-form";
import { farmDatabase } from "../load";
import { rememberOwnSave } from "./own-save";

/** Takes one change back, once however often it is pressed. When it cannot be, nothing is touched and the history page says why. */
export async function undo(sent: FormData): Promise<void> {
  const form = sentForm(sent);
  const changeId = z.coerce.number().int().safeParse(form.get("changeId"));
  if (!changeId.success) redirect("/farm/history");
  if (!isUndone(changeId.data, saveOf(form))) redirect(`/farm/history?refused=${changeId.data}`);
  await rememberOwnSave();
  revalidatePath("/", "layout");
}

function isUndone(changeId: number, save: Saving): boolean {
  try {
    const database = farmDatabase();
    return saving(database, save, () => undoChange(database, changeId)).ok;
  } catch (error) {
    if (error instanceof FarmFileRefused || error instanceof SaveRefused) return false;
    throw error;
  }
}
