import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { closeFarm, openFarm } from "#db/client";
import { loadSnapshot } from "#db/read/read";
import { startDemoFarm } from "#demo/start-demo-farm";
import { seededRandom } from "#lib/maths/random";
import { type Served, serveBuilt } from "../browser/served";
import { oddReads } from "./fuzz-readers";
import { type OddKnock, oddKnocks } from "./fuzz-server";
import type { Figures } from "./part";

/** What a run of odd inputs found: how many there were, and those that were not answered as they should be, with what came instead. */
type FuzzFound = { readonly inputCount: number; readonly faults: readonly string[] };

/** Odd inputs of a whole run: to the readers in this process, and as requests to a server. */
const READER_INPUTS = 92_000;
const SERVER_INPUTS = 8_000;
const SEED = 1;

/** A hundred thousand odd inputs at `scale` 1: to every reader of what comes from outside, and to every address, form and JSON door of a server. */
export async function fuzz(scale: number): Promise<Figures> {
  const read = fuzzReaders(Math.ceil(READER_INPUTS * scale), SEED);
  const served = await fuzzServer(Math.ceil(SERVER_INPUTS * scale), SEED);
  return {
    title: "Odd inputs",
    lines: [
      `${read.inputCount.toLocaleString("en")} to the readers of sheets, zips, pasted rows, forms, calls, queries and requests: ${read.faults.length} threw`,
      `${served.inputCount.toLocaleString("en")} to a server, as raw requests, addresses, JSON and forms: ${served.faults.length} failed it or led astray`,
    ],
    faults: [...read.faults, ...served.faults],
  };
}

const SEASON = 2027;

/** Requests under way at once. */
const AT_ONCE = 4;

/** Feeds odd inputs to every reader in turn, in this process; none may throw. Input `n` has the seed `seed + n`. */
export function fuzzReaders(inputCount: number, seed: number): FuzzFound {
  const farm = inDemoFarm(":memory:");
  const reads = Object.entries(oddReads(farm));
  const faults: string[] = [];
  for (let input = 0; input < inputCount; input++) {
    const [name, read] = reads[input % reads.length];
    try {
      read(seededRandom(seed + input));
    } catch (error) {
      faults.push(`${name}, seed ${seed + input}: ${error}`);
    }
  }
  return { inputCount, faults };
}

/**
 * Sends odd requests to a server of its own with the demo farm: each is answered, none with a failure of the server, none sends anybody to
 * another site, and at the end the farm can be read whole.
 */
export async function fuzzServer(inputCount: number, seed: number): Promise<FuzzFound> {
  const folder = mkdtempSync(join(tmpdir(), "farm-"));
  const file = join(folder, "farm.sqlite");
  inDemoFarm(file);
  const served = await serveBuilt({
    ...process.env,
    NODE_ENV: "production",
    FARM_FILE: file,
    FARM_TODAY: "2026-11-25",
  });
  try {
    const faults = await knockAll(served, inputCount, seed);
    if (served.server.exitCode !== null) faults.push(`the server ended with ${served.server.exitCode}`);
    await ended(served);
    return { inputCount, faults: [...faults, ...faultsOfFarm(file)] };
  } finally {
    served.server.kill("SIGKILL");
    rmSync(folder, { recursive: true, force: true });
  }
}

async function knockAll({ address }: Served, inputCount: number, seed: number): Promise<string[]> {
  const oddKnock = await oddKnocks(Number(new URL(address).port));
  const faults: string[] = [];
  let next = 0;
  const knockOn = async () => {
    while (next < inputCount) {
      const input = next++;
      const fault = faultOf(await oddKnock(seededRandom(seed + input)));
      if (fault) faults.push(`seed ${seed + input}: ${fault}`);
    }
  };
  await Promise.all(Array.from({ length: AT_ONCE }, knockOn));
  return faults;
}

/** What is wrong with an answer, or null. The words are those of a write that failed for no reason of the form's. */
function faultOf({ sent, said: { status, head, body, isClosed } }: OddKnock): string | null {
  const location = /^location: *(.*)$/im.exec(head)?.[1];
  const isAway = location !== undefined && !/^\/(?!\/)/.test(location);
  const isBroken = body.includes("something went wrong, and nothing was saved");
  if (status >= 200 && status < 500 && isClosed && !isAway && !isBroken) return null;
  return `${status} ${location ?? ""} ${isBroken ? "a write failed" : ""} to ${JSON.stringify(sent.slice(0, 600))}`;
}

function faultsOfFarm(file: string): string[] {
  const database = openFarm(file);
  try {
    const sound = database.$client.pragma("integrity_check", { simple: true });
    const read = loadSnapshot(database);
    return [
      ...(sound === "ok" ? [] : [`the farm's file is damaged: ${sound}`]),
      ...(read.ok ? [] : [`the farm cannot be read: ${read.problems[0]?.message}`]),
    ];
  } finally {
    closeFarm(database);
  }
}

/** The demo farm, written into a file, as it reads back. */
function inDemoFarm(file: string) {
  const database = openFarm(file);
  try {
    const written = startDemoFarm(database, SEASON);
    const read = loadSnapshot(database);
    if (!written.ok || !read.ok) throw new Error("the demo farm could not be loaded");
    return read.parsed;
  } finally {
    closeFarm(database);
  }
}

const ended = ({ server }: Served): Promise<void> =>
  new Promise((resolve) => {
    server.once("exit", () => resolve());
    server.kill("SIGTERM");
  });
