"use server";

import { revalidatePath } from "next/cache";
import { takeCopy } from "#db/copies/take-copy";
import { FarmFileRefused } from "#db/file/farm-file-refused";
import { landedBefore } from "#db/journal/journal";
import { SaveRefused, type Saving, saving } from "#db/journal/saving";
import { importRecords } from "#db/write/records";
import type { FarmRecords } from "#lib/domain/farm-records";
import type { Problem } from "#lib/domain/problem";
import { promisesMade } from "#lib/plan/road/promises-made";
import { knownFarm } from "#lib/sheets/known-farm";
import { readFarmSheets } from "#lib/sheets/read-farm-sheets";
import { fingerprintOf, saveOf } from "../../action";
import { today } from "../../clock";
import { sentForm } from "../../door/sent-form";
import { rememberOwnSave } from "../../frame/own-save";
import { farmDatabase, farmFile, loadFarm } from "../../load";
import type { ImportState } from "./import-state";
import { readSending, type Sending } from "./sending";

/**
 * Reads the sheets that were sent. Step "check" writes nothing and says what it found; "all" writes every row if each is clean; "clean"
 * writes the clean rows and leaves the others. What is written is one change; a copy of the farm is taken before. What is sent again because no
 * answer came is written once.
 */
export async function bringIn(_: ImportState, sent: FormData): Promise<ImportState> {
  const form = sentForm(sent);
  const read = await readSending(form);
  if (!read.ok) return { kind: "refused", sending: 0, problems: read.problems };
  const { step, sending, files } = read.parsed;
  const save: Saving = { ...saveOf(form), fingerprint: fingerprintOf([step, files]), seenRevision: null };
  try {
    return await carriedOut(read.parsed, save);
  } catch (error) {
    const problems = problemsIn(error);
    if (problems === null) throw error;
    return { kind: "refused", sending, problems };
  }
}

async function carriedOut({ step, sending, files, problems }: Sending, save: Saving): Promise<ImportState> {
  // Rows that landed are in the way of themselves: they would be refused as there already.
  const title = step === "check" ? null : landedBefore(farmDatabase(), save);
  if (title !== null) return { kind: "taken", sending, title };
  const { records, ...read } = readFarmSheets(files, knownFarm(loadFarm()));
  const reading = { ...read, problems: [...problems, ...read.problems] };
  if (step === "check" || (step === "all" && reading.problems.length > 0))
    return { kind: "checked", sending, ...reading };
  const written = await copiedAndImported(records, save);
  if (!written.ok) return { kind: "refused", sending, problems: written.problems };
  revalidatePath("/", "layout");
  await rememberOwnSave();
  return { kind: "taken", sending, title: written.title };
}

/** Where no copy can be taken, on a full disk, nothing is imported. */
async function copiedAndImported(records: FarmRecords, save: Saving) {
  await takeCopy(farmDatabase().$client, farmFile().file, "before-import");
  const database = farmDatabase();
  const before = loadFarm();
  return saving(database, save, () =>
    importRecords(database, records, (after) => promisesMade(before, after, today())),
  );
}

function problemsIn(error: unknown): readonly Problem[] | null {
  if (error instanceof SaveRefused) return error.problems;
  return error instanceof FarmFileRefused ? [{ place: "files", message: error.message }] : null;
}
