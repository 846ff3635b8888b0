import { spawnSync } from "node:child_process";
import { mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { closeFarm, openFarm } from "#db/client";
import { copiesFolder } from "#db/copies/copy-name";
import { restoreCopy } from "#db/copies/restore-copy";
import { takeCopy } from "#db/copies/take-copy";
import { FarmFileRefused } from "#db/file/farm-file-refused";
import { faultsOf } from "#db/file/file-faults";
import { KeptOpen } from "#db/file/kept-open";
import { addBed } from "#db/write/beds";
import { bedsIn, makeFile, stateOf } from "../db/farm-in-file";
import { done } from "../db/kept-farm";
import { bed } from "../small-farm";

/**
 * Disks as they fill up and as they are pulled out. Runs in a mount namespace of its own (`unshare`), where it may mount what nobody else sees and
 * what goes when it ends. Tells what it found as JSON.
 */

const DISK_KIB = 1536;
const TURNS = Number(process.argv[2]);

const folder = mkdtempSync(join(tmpdir(), "trust-"));
const lines: string[] = [];
const faults: string[] = [];
try {
  await fullDisk(join(folder, "disk"));
  pulledOut(join(folder, "stick"), join(folder, "port"));
} finally {
  for (const place of ["disk", "port"]) spawnSync("umount", ["-l", join(folder, place)]);
  rmSync(folder, { recursive: true, force: true });
}
console.log(JSON.stringify({ lines, faults }));

function mount(...words: string[]): void {
  const { status, stderr } = spawnSync("mount", words, { encoding: "utf8" });
  if (status !== 0) throw new Error(`mount ${words.join(" ")}: ${stderr}`);
}

/** A disk of a megabyte and a half that others fill to the last byte, some of which is freed again, over and over. */
async function fullDisk(disk: string): Promise<void> {
  mkdirSync(disk);
  mount("-t", "tmpfs", "-o", `size=${DISK_KIB}k`, "trust", disk);
  const [file, ballast] = [join(disk, "farm.sqlite"), join(disk, "ballast")];
  makeFile(file);
  const database = openFarm(file);
  const written: string[] = [];
  const states = new Map<string, number>();
  const count = (state: string) => states.set(state, (states.get(state) ?? 0) + 1);
  for (let turn = 0; turn < TURNS; turn++) {
    fill(ballast, turn % 12);
    const name = `F${turn}`;
    const state = stateOf(() => done(addBed(database, bed({ id: 0, name, note: "x".repeat(400) }))));
    if (state === "opened") written.push(name);
    count(state === "opened" ? "written" : state);
  }
  fill(ballast, 0);
  const elsewhere = join(folder, "elsewhere.sqlite");
  makeFile(elsewhere);
  const copying = await stateAfter(takeCopy(database.$client, file, "by-hand"));
  const restoring = await stateAfter(restoreCopy(elsewhere, file));
  if (copying !== "disk-full") faults.push(`a copy on a full disk: ${copying}`);
  if (restoring !== "disk-full") faults.push(`restoring on a full disk: ${restoring}`);
  if (spawnSync("ls", [copiesFolder(file)], { encoding: "utf8" }).stdout.trim() !== "")
    faults.push("a copy that had no room left something behind");
  rmSync(ballast);
  done(addBed(database, bed({ id: 0, name: "room" })));
  faults.push(...faultsOf(database.$client).map((fault) => `full disk: ${fault}`));
  closeFarm(database);
  const beds = bedsIn(file).filter((name) => name.startsWith("F") || name === "room");
  if (String(beds) !== String([...written, "room"])) faults.push("full disk: what was refused is there, or lost");
  const odd = [...states].filter(([state]) => state !== "written" && state !== "disk-full");
  faults.push(...odd.map(([state, times]) => `full disk: ${times} times ${state}`));
  const told = [...states].map(([state, times]) => `${times} ${state}`).join(", ");
  lines.push(
    `${TURNS} writes on a real disk of ${DISK_KIB} KiB, full or with up to eleven pages to spare: ${told}; a copy: ${copying}; a restore: ${restoring}`,
  );
}

function stateAfter(work: Promise<unknown>): Promise<string> {
  return work.then(
    () => "done",
    (error: unknown) => (error instanceof FarmFileRefused ? error.state : String(error)),
  );
}

/** Fills the disk, but for so many pages. */
function fill(ballast: string, pagesLeft: number): void {
  rmSync(ballast, { force: true });
  const page = Buffer.alloc(4096);
  let pages = 0;
  try {
    for (; ; pages++) writeFileSync(ballast, page, { flag: "a" });
  } catch {
    writeFileSync(ballast, Buffer.alloc(4096 * Math.max(0, pages - pagesLeft)));
  }
}

/** A stick taken out while the server runs, and put in again: the file is where it was, or its place is empty. */
function pulledOut(stick: string, port: string): void {
  mkdirSync(stick);
  mkdirSync(port);
  makeFile(join(stick, "farm.sqlite"));
  const turns = Math.ceil(TURNS / 10);
  mount("--bind", stick, port);
  const server = new KeptOpen(join(port, "farm.sqlite"));
  const told: string[] = [];
  for (let turn = 0; turn < turns; turn++) {
    const database = server.database();
    done(addBed(database, bed({ id: 0, name: `S${turn}` })));
    const before = readFileSync(join(stick, "farm.sqlite"));
    spawnSync("umount", ["-l", port]);
    const saving = stateOf(() => addBed(database, bed({ id: 0, name: `lost ${turn}` })));
    const looking = stateOf(() => server.database());
    if (!readFileSync(join(stick, "farm.sqlite")).equals(before)) faults.push(`stick out ${turn}: it was written to`);
    if (saving === "opened" || looking === "opened") faults.push(`stick out ${turn}: ${saving}, ${looking}`);
    told.push(`${saving}, then ${looking}`);
    mount("--bind", stick, port);
  }
  done(addBed(server.database(), bed({ id: 0, name: "back" })));
  server.close();
  const beds = bedsIn(join(stick, "farm.sqlite"));
  const expected = [...Array.from({ length: turns }, (_, turn) => `S${turn}`), "back"];
  if (!expected.every((name) => beds.includes(name)) || beds.some((name) => name.startsWith("lost")))
    faults.push("stick out: what was refused is there, or lost");
  lines.push(
    `a stick pulled out ${turns} times while the server ran: the save is refused (${[...new Set(told)].join("; ")}), the file left to the byte`,
  );
}
