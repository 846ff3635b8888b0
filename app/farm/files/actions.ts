"use server";

import { revalidatePath } from "next/cache";
import { takeCopy } from "#db/copies/take-copy";
import { importRecords } from "#db/write/records";
import { knownNames } from "#lib/sheets/known-names";
import { readFarmSheets } from "#lib/sheets/read-farm-sheets";
import { farmDatabase, farmFile, loadFarm } from "../../load";
import type { ImportState } from "./import-state";
import { readSending } from "./sending";

/**
 * Reads the sheets that were sent. Step "check" writes nothing and says what it found; "all" writes every row if each is clean; "clean"
 * writes the clean rows and leaves the others. What is written is one change; a copy of the farm is taken before.
 */
export async function bringIn(_: ImportState, form: FormData): Promise<ImportState> {
  const sent = await readSending(form);
  if (!sent.ok) return { kind: "refused", sending: 0, problems: sent.problems };
  const { step, sending, files } = sent.parsed;
  const { records, ...read } = readFarmSheets(files, knownNames(loadFarm()));
  const reading = { ...read, problems: [...sent.parsed.problems, ...read.problems] };
  if (step === "check" || (step === "all" && reading.problems.length > 0))
    return { kind: "checked", sending, ...reading };
  await takeCopy(farmDatabase().$client, farmFile().file, "before-import");
  const written = importRecords(farmDatabase(), records);
  if (!written.ok) return { kind: "refused", sending, problems: written.problems };
  revalidatePath("/", "layout");
  return { kind: "taken", sending, title: written.title };
}
