"use server";

import { revalidatePath } from "next/cache";
import { redirect } from "next/navigation";
import { z } from "zod";
import { undoChange } from "#db/journal/journal";
import { sentForm } from "../door/sent-form";
import { farmDatabase } from "../load";

/** Takes one change back. When rows were changed since, nothing is touched and the history page says why. */
export async function undo(form: FormData): Promise<void> {
  const changeId = z.coerce.number().int().safeParse(sentForm(form).get("changeId"));
  if (!changeId.success) redirect("/farm/history");
  const undone = undoChange(farmDatabase(), changeId.data);
  if (!undone.ok) redirect(`/farm/history?refused=${changeId.data}`);
  revalidatePath("/", "layout");
}
