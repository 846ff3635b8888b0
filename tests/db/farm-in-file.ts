import { spawnSync } from "node:child_process";
import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { closeFarm, openFarm, openKeptFarm } from "#db/client";
import { FarmFileRefused } from "#db/file/farm-file-refused";
import { addBed } from "#db/write/beds";
import { bed } from "../small-farm";
import { done, fill, kept } from "./kept-farm";

/** Farms in real files. */

/** Runs a test with a folder of its own and the place of a farm in it. */
export async function withFolder(work: (file: string, folder: string) => void | Promise<void>): Promise<void> {
  const folder = mkdtempSync(join(tmpdir(), "farm-file-"));
  try {
    await work(join(folder, "farm.sqlite"), folder);
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

/** The small farm, with beds D1 and D2, in a file. */
export function makeFile(file: string): void {
  const database = openFarm(file);
  fill(database);
  closeFarm(database);
}

export function addBedTo(file: string, name: string): void {
  const database = openFarm(file);
  done(addBed(database, bed({ id: 0, name })));
  closeFarm(database);
}

export function bedsIn(file: string): string[] {
  const database = openKeptFarm(file);
  const names = kept(database).beds.map(({ name }) => name);
  closeFarm(database);
  return names;
}

/** Why a file is refused, or "opened". */
export function stateOf(open: () => unknown): string {
  try {
    open();
  } catch (error) {
    if (error instanceof FarmFileRefused) return error.state;
    throw error;
  }
  return "opened";
}

/** Runs a script in a process of its own that ends without closing anything. */
export const runAndKill = (script: string): void => {
  spawnSync(process.execPath, ["--input-type=module", "-e", `${script}; process.kill(process.pid, "SIGKILL")`]);
};
