"use server";

import { revalidatePath } from "next/cache";
import { takeCopy } from "#db/copies/take-copy";
import { FarmFileRefused } from "#db/file/farm-file-refused";
import { importRecords } from "#db/write/records";
import type { Written } from "#db/write/write";
import type { FarmRecords } from "#lib/domain/farm-records";
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
  const written = await copiedAndImported(records);
  if (!written.ok) return { kind: "refused", sending, problems: written.problems };
  revalidatePath("/", "layout");
  return { kind: "taken", sending, title: written.title };
}

/** Where no copy can be taken, on a full disk, nothing is imported. */
async function copiedAndImported(records: FarmRecords): Promise<Written> {
  try {
    await takeCopy(farmDatabase().$client, farmFile().file, "before-import");
    return importRecords(farmDatabase(), records);
  } catch (error) {
    if (error instanceof FarmFileRefused) return { ok: false, problems: [{ place: "files", message: error.message }] };
    throw error;
  }
}
