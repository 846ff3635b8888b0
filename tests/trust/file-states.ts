import { spawnSync } from "node:child_process";
import { chmodSync, copyFileSync, mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { dirname, join } from "node:path";
import Database from "better-sqlite3";
import { closeFarm, openFarm } from "#db/client";
import { addBed } from "#db/write/beds";
import { seededRandom, wholeBetween } from "#lib/maths/random";
import { bedsIn, makeFile, stateOf } from "../db/farm-in-file";
import { kept } from "../db/kept-farm";
import { bed } from "../small-farm";
import type { Figures } from "./part";

const FLIP_COUNT = 1000;
const CUT_COUNT = 200;
const PUT_BACK_COUNT = 100;
const FULL_COUNT = 100;

/**
 * Files as disks, people and other programs leave them: bytes flipped, files cut short, copies put back at any moment, a full disk, a lock that stays.
 * Kept against https://www.sqlite.org/howtocorrupt.html and https://www.sqlite.org/testing.html (3.2 I/O errors, 3.4 damaged files).
 */
export async function fileStates(scale: number): Promise<Figures> {
  const folder = mkdtempSync(join(tmpdir(), "trust-"));
  const faults: string[] = [];
  try {
    const file = join(folder, "farm.sqlite");
    makeFile(file);
    const lines = [
      flips(file, Math.ceil(FLIP_COUNT * scale), faults),
      cuts(file, Math.ceil(CUT_COUNT * scale), faults),
      putBack(file, Math.ceil(PUT_BACK_COUNT * scale), faults),
      fullDisk(file, Math.ceil(FULL_COUNT * scale), faults),
      locked(file, faults),
      readOnly(file, faults),
    ];
    return { title: "Files as disks, people and other programs leave them", lines, faults };
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

/** One byte anywhere is another: the farm reads as it was, is refused in words, or, in a page's own text, reads with that one letter changed. */
function flips(file: string, count: number, faults: string[]): string {
  const random = seededRandom(11);
  const whole = readFileSync(file);
  const damaged = `${file}.flipped`;
  const tally = new Map<string, number>();
  for (let turn = 0; turn < count; turn++) {
    const bytes = Buffer.from(whole);
    const at = wholeBetween(random, 0, bytes.length - 1);
    bytes[at] ^= wholeBetween(random, 1, 255);
    writeFileSync(damaged, bytes);
    const state = asOpened(damaged, faults, `byte ${at} flipped`);
    tally.set(state, (tally.get(state) ?? 0) + 1);
  }
  const told = [...tally].map(([state, times]) => `${state} ${times}`).join(", ");
  return `${count} flipped bytes: ${told} (SQLite keeps no checksum of a text or a number)`;
}

function cuts(file: string, count: number, faults: string[]): string {
  const random = seededRandom(12);
  const whole = readFileSync(file);
  const damaged = `${file}.cut`;
  let openedCount = 0;
  for (let turn = 0; turn < count; turn++) {
    const byteCount = wholeBetween(random, 0, whole.length - 1);
    writeFileSync(damaged, whole.subarray(0, byteCount));
    if (asOpened(damaged, faults, `cut at ${byteCount}`) === "opened") openedCount++;
  }
  if (openedCount) faults.push(`${openedCount} of ${count} files that were cut short opened as if whole`);
  return `${count} files cut short: ${count - openedCount} refused in words`;
}

/** The state of a file, which must be a word of ours; rows that cannot be read are told by name. */
function asOpened(file: string, faults: string[], what: string): string {
  try {
    return stateOf(() => {
      const database = openFarm(file);
      try {
        kept(database);
      } finally {
        closeFarm(database);
      }
    });
  } catch (error) {
    const message = String(error);
    if (/Error: \[\{/.test(message)) return "rows told by name";
    faults.push(`${what}: ${message}`);
    return "failed";
  }
}

/** A copy over the file of a farm that was killed in a write, journal and all. */
function putBack(file: string, count: number, faults: string[]): string {
  const random = seededRandom(13);
  let restoredCount = 0;
  for (let turn = 0; turn < count; turn++) {
    const target = `${file}.put-back-${turn}`;
    copyFileSync(file, target);
    const writes = wholeBetween(random, 1, 4);
    cutShort(target, writes);
    copyFileSync(file, target);
    const state = stateOf(() => closeFarm(openFarm(target)));
    if (state === "opened" && String(bedsIn(target)) === String(bedsIn(file))) restoredCount++;
    else faults.push(`put back ${turn} after ${writes} writes: ${state}`);
  }
  return `${count} copies put back beside the journal of a killed write: ${restoredCount} restored`;
}

const CUT_SHORT = `
  const Database = require("better-sqlite3");
  const [file, writes] = process.argv.slice(1);
  const sqlite = new Database(file);
  sqlite.pragma("journal_mode = TRUNCATE");
  for (let i = 0; i < Number(writes); i++) sqlite.exec("UPDATE bed SET note = note || 'x'");
  sqlite.pragma("cache_size = 1");
  sqlite.exec("BEGIN IMMEDIATE; CREATE TABLE half (text)");
  const add = sqlite.prepare("INSERT INTO half VALUES (?)");
  for (let i = 0; i < 100; i++) add.run("x".repeat(900));
  process.kill(process.pid, "SIGKILL");`;

const cutShort = (file: string, writes: number) =>
  spawnSync(process.execPath, ["-e", CUT_SHORT, file, String(writes)], { stdio: "ignore" });

/** SQLite's own limit of pages gives the very answer that a full disk gives. */
function fullDisk(file: string, count: number, faults: string[]): string {
  const target = `${file}.full`;
  copyFileSync(file, target);
  const database = openFarm(target);
  const pages = Number(database.$client.pragma("page_count", { simple: true }));
  database.$client.pragma(`max_page_count = ${pages}`);
  let refusedCount = 0;
  const written: string[] = [];
  for (let turn = 0; turn < count; turn++) {
    const name = `F${turn}`;
    const state = stateOf(() => addBed(database, bed({ id: 0, name, note: "x".repeat(400) })));
    if (state === "opened") written.push(name);
    else if (state === "disk-full") refusedCount++;
    else faults.push(`full disk: ${state}`);
  }
  closeFarm(database);
  const beds = bedsIn(target).filter((name) => name.startsWith("F"));
  if (String(beds) !== String(written)) faults.push("full disk: what was refused is there, or what was taken is not");
  return `${count} writes on a full disk: ${refusedCount} refused in words, ${written.length} that found room are there`;
}

function locked(file: string, faults: string[]): string {
  const target = `${file}.locked`;
  copyFileSync(file, target);
  const database = openFarm(target);
  database.$client.pragma("busy_timeout = 200");
  const other = new Database(target);
  other.exec("BEGIN EXCLUSIVE");
  const state = stateOf(() => addBed(database, bed({ id: 0, name: "L1" })));
  other.exec("ROLLBACK");
  other.close();
  closeFarm(database);
  if (state !== "locked" || bedsIn(target).includes("L1")) faults.push(`locked: ${state}`);
  return `a lock that stays: the save is ${state}, and written nowhere`;
}

/** Opened by a user who may only read; the administrator may write everywhere, so he becomes another first. */
function readOnly(file: string, faults: string[]): string {
  const folder = `${file}.read-only`;
  mkdirSync(folder);
  const target = join(folder, "farm.sqlite");
  copyFileSync(file, target);
  const before = readFileSync(target);
  chmodSync(dirname(file), 0o755);
  const script = `
    import { chmodSync } from "node:fs";
    import { openFarm } from "#db/client";
    chmodSync(${JSON.stringify(target)}, 0o444);
    chmodSync(${JSON.stringify(folder)}, 0o555);
    if (process.getuid?.() === 0) process.setuid(65534);
    try { openFarm(${JSON.stringify(target)}); console.log("opened"); } catch (error) { console.log(error.state ?? error); }`;
  const { stdout } = spawnSync(process.execPath, ["--import", "tsx", "--input-type=module", "-e", script], {
    encoding: "utf8",
  });
  const state = stdout.trim();
  if (state !== "read-only" || !readFileSync(target).equals(before)) faults.push(`read-only: ${state}`);
  return `a file that may only be read: ${state}, and left to the byte`;
}
