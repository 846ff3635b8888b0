"use server";

import { revalidatePath } from "next/cache";
import { redirect } from "next/navigation";
import { z } from "zod";
import { undoChange } from "#db/journal/journal";
import { farmDatabase } from "../load";

/** Takes one change back. When rows were changed since, nothing is touched and the history page says why. */
export async function undo(form: FormData): Promise<void> {
  const changeId = z.coerce.number().int().safeParse(form.get("changeId"));
  const undone = changeId.success ? undoChange(farmDatabase(), changeId.data) : null;
  if (!undone?.ok) redirect(`/farm/history?refused=${encodeURIComponent(undone?.message ?? "No such change.")}`);
  revalidatePath("/", "layout");
}
