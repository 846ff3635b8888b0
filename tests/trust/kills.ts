import { copyFileSync, mkdirSync, mkdtempSync, readdirSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { closeFarm, openKeptFarm } from "#db/client";
import { copiesFolder, copiesIn } from "#db/copies/copy-name";
import { faultsOf } from "#db/file/file-faults";
import { type RandomSource, seededRandom } from "#lib/maths/random";
import { addBedTo, bedsIn, makeFile } from "../db/farm-in-file";
import { killed, makeVictim } from "./killed";
import type { Figures } from "./part";

const COUNTS = { write: 500, twoServers: 150, copy: 150, restore: 200 } as const;
const MOST_WAIT_MS = 300;

/** Kills on one farm before the next begins with a new one. */
const KILLS_OF_A_FARM = 25;
/** Farms under way at once: most of a kill is waiting, for the disk and for the moment. */
const LANES = 4;

type Tally = { readonly faults: string[]; killCount: number; saidCount: number };

/** One kill on a farm, and what must hold after it; `kill` is its number, of which no other has the same. */
type Kill = (file: string, waitMs: () => number, kill: number, tally: Tally) => Promise<void>;

/**
 * Kills processes in the middle of writes, copies and restores, and looks whether what was acknowledged is there and everything whole.
 * Kept against: https://www.sqlite.org/atomiccommit.html ("all of the changes or none") and https://www.sqlite.org/testing.html, 3.3 (crash
 * tests). A killed process is no power cut: that the disk keeps what it says it kept is not tried here.
 */
export async function kills(scale: number): Promise<Figures> {
  makeVictim();
  const random = seededRandom(7);
  const write = await many(Math.ceil(COUNTS.write * scale), 1, random, killInWrite);
  const two = await many(Math.ceil(COUNTS.twoServers * scale), 2, random, killTwoServers);
  const copy = await many(Math.ceil(COUNTS.copy * scale), 1, random, killInCopy);
  const restore = await many(Math.ceil(COUNTS.restore * scale), 1, random, killInRestore);
  const all = [write, two, copy, restore];
  const sum = (pick: (tally: Tally) => number) => all.reduce((total, tally) => total + pick(tally), 0);
  return {
    title: "Kills in writes, copies and restores",
    lines: [
      `one server writing: ${write.killCount} kills, ${write.saidCount} writes acknowledged`,
      `two servers writing the same file: ${two.killCount} kills, ${two.saidCount} writes acknowledged`,
      `copying while writing: ${copy.killCount} kills, ${copy.saidCount} copies acknowledged`,
      `restoring: ${restore.killCount} kills, ${restore.saidCount} restores acknowledged`,
      `${sum(({ killCount }) => killCount)} kills in all; lost, half or damaged: ${sum(({ faults }) => faults.length)}`,
    ],
    faults: all.flatMap(({ faults }) => faults),
  };
}

/** Kills on some farms at once, and on the same farm many times over: what one kill leaves is what the next begins with. */
async function many(count: number, killsATurn: number, random: RandomSource, kill: Kill): Promise<Tally> {
  const tally: Tally = { faults: [], killCount: 0, saidCount: 0 };
  const lane = async () => {
    while (tally.killCount < count)
      await withFarm(async (file) => {
        for (let turn = 0; turn < KILLS_OF_A_FARM && tally.killCount < count; turn++) {
          const number = tally.killCount;
          tally.killCount += killsATurn;
          try {
            await kill(file, () => Math.floor(random() * MOST_WAIT_MS), number, tally);
          } catch (error) {
            tally.faults.push(`kill ${number}: ${error instanceof Error ? error.message : error}`);
            // What cannot be opened any more is no ground for the next.
            return;
          }
        }
      });
  };
  await Promise.all(Array.from({ length: LANES }, lane));
  return tally;
}

async function withFarm(work: (file: string) => Promise<void>): Promise<void> {
  const folder = mkdtempSync(join(tmpdir(), "trust-"));
  try {
    const file = join(folder, "farm.sqlite");
    makeFile(file);
    await work(file);
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

async function killInWrite(file: string, waitMs: () => number, kill: number, tally: Tally): Promise<void> {
  const before = bedsIn(file);
  const said = await killed("write", file, [`K${kill}`], waitMs());
  check(tally, kill, file, before, [said]);
}

async function killTwoServers(file: string, waitMs: () => number, kill: number, tally: Tally): Promise<void> {
  const before = bedsIn(file);
  const said = await Promise.all(["A", "B"].map((name) => killed("write", file, [`${name}${kill}`], waitMs())));
  check(tally, kill, file, before, said);
}

/** What was there, what each said it had written, and of each at most the one write that was under way. */
function check(tally: Tally, kill: number, file: string, before: readonly string[], said: readonly string[][]): void {
  const now = bedsIn(file);
  const acknowledged = said.flat();
  const lost = [...before, ...acknowledged].filter((name) => !now.includes(name));
  if (lost.length) tally.faults.push(`kill ${kill}: lost ${lost.join(", ")}`);
  if (now.length > before.length + acknowledged.length + said.length)
    tally.faults.push(`kill ${kill}: more was written than was tried`);
  tally.saidCount += acknowledged.length;
}

async function killInCopy(file: string, waitMs: () => number, kill: number, tally: Tally): Promise<void> {
  const said = await killed("copy", file, [], waitMs());
  tally.saidCount += said.length;
  const copies = copiesIn(copiesFolder(file), file);
  const lost = said.filter((path) => !copies.some((copy) => copy.path === path));
  if (lost.length) tally.faults.push(`kill ${kill}: copies lost: ${lost.join(", ")}`);
  for (const path of [file, ...copies.map((copy) => copy.path)]) {
    const faults = faultsIn(path);
    if (faults.length) tally.faults.push(`kill ${kill}: ${path}: ${faults.join("; ")}`);
  }
  for (const { path } of copies) rmSync(path);
}

async function killInRestore(file: string, waitMs: () => number, kill: number, tally: Tally): Promise<void> {
  const versions = versionsOf(file);
  const beds = versions.map(bedsIn).map(String);
  const before = String(bedsIn(file));
  const said = await killed("restore", file, versions, waitMs());
  tally.saidCount += said.length;
  const now = String(bedsIn(file));
  const last = said.at(-1);
  const next = versions[said.length % versions.length];
  const allowed = [last === undefined ? before : beds[versions.indexOf(last)], beds[versions.indexOf(next)]];
  if (!allowed.includes(now)) tally.faults.push(`kill ${kill}: neither the farm before nor the one after`);
  const faults = faultsIn(file);
  if (faults.length) tally.faults.push(`kill ${kill}: ${faults.join("; ")}`);
  const unfinished = readdirSync(copiesFolder(file)).filter((name) => name.startsWith("unfinished"));
  for (const name of unfinished) rmSync(join(copiesFolder(file), name), { recursive: true });
}

/** Two farms to restore by turns, beside the farm. */
function versionsOf(file: string): string[] {
  const folder = `${file}.versions`;
  const versions = ["one", "two"].map((name) => join(folder, `${name}.sqlite`));
  if (mkdirSync(folder, { recursive: true }) === undefined) return versions;
  for (const version of versions) {
    copyFileSync(file, version);
    addBedTo(version, version.includes("one") ? "V1" : "V2");
  }
  return versions;
}

function faultsIn(path: string): string[] {
  const database = openKeptFarm(path);
  try {
    return faultsOf(database.$client);
  } finally {
    closeFarm(database);
  }
}
