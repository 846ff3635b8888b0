"use server";

import { revalidatePath } from "next/cache";
import { z } from "zod";
import { putWhatIf } from "#db/write/what-ifs";
import { farmDatabase, loadFarm } from "../../load";
import type { FormState } from "../../ui/form-state";
import { taken } from "../../ui/form-taken";
import { FormValues } from "../../ui/form-values";
import { keptWhatIf } from "../kept-what-ifs";
import { toggledBed } from "./bed-toggle";
import { readChange } from "./change-values";
import { withChange } from "./with-change";

const GONE = [{ place: "whatIfId", message: "this what-if was removed meanwhile: undo that, or make a new one" }];
const MOVED = [{ place: "index", message: "the list was changed meanwhile: look again, then remove it" }];

/** Adds one change of any kind to a what-if. The farm is not touched. */
export async function addChange(_: FormState, form: FormData): Promise<FormState> {
  const values = new FormValues(form);
  const whatIf = keptWhatIf(values.hiddenNumber("whatIfId"));
  if (!whatIf) return values.refused(GONE);
  const read = readChange(values, loadFarm(), whatIf.seasonYear);
  if (!read.ok) return values.refused();
  return taken(values, putWhatIf(farmDatabase(), { ...whatIf, changes: [...withChange(whatIf.changes, read.parsed)] }));
}

/** Takes one change out of a what-if: the one shown at this place, and no other that has moved there since. */
export async function takeChangeOut(_: FormState, form: FormData): Promise<FormState> {
  const values = new FormValues(form);
  const whatIf = keptWhatIf(values.hiddenNumber("whatIfId"));
  if (!whatIf) return values.refused(GONE);
  const index = values.hiddenNumber("index");
  if (JSON.stringify(whatIf.changes[index]) !== values.text("shown")) return values.refused(MOVED);
  return taken(
    values,
    putWhatIf(farmDatabase(), { ...whatIf, changes: whatIf.changes.filter((_, at) => at !== index) }),
  );
}

const toggle = z.object({
  whatIfId: z.coerce.number().int(),
  bed: z
    .string()
    .regex(/^\d+ (kept|dug)$/)
    .transform((text) => text.split(" ")),
});

/** Keeps a bed in the ground in a what-if, or digs it there. */
export async function toggleBed(form: FormData): Promise<void> {
  const parsed = toggle.safeParse(Object.fromEntries(form));
  const whatIf = parsed.success ? keptWhatIf(parsed.data.whatIfId) : undefined;
  if (!parsed.success || !whatIf) return;
  const [bedId, future] = parsed.data.bed;
  const changes = toggledBed(loadFarm(), whatIf, Number(bedId), future === "kept");
  putWhatIf(farmDatabase(), { ...whatIf, changes: [...changes] });
  revalidatePath("/", "layout");
}
