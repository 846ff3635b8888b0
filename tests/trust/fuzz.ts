import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { closeFarm, openFarm } from "#db/client";
import { loadSnapshot } from "#db/read/read";
import { startDemoFarm } from "#demo/start-demo-farm";
import { seededRandom } from "#lib/maths/random";
import { type Served, serveBuilt } from "../browser/served";
import { oddReads, someLinesOf } from "./fuzz-readers";
import { type OddKnock, oddKnocks } from "./fuzz-server";
import type { Sheet } from "./odd-uploads";
import type { Figures } from "./part";
import { faultsOfRecords } from "./sound-records";

/** What a run of odd inputs found: how many there were, and those that were not answered as they should be, with what came instead. */
type FuzzFound = { readonly inputCount: number; readonly faults: readonly string[] };
type FuzzServed = FuzzFound & {
  readonly formCount: number;
  readonly formPageCount: number;
  /** Inputs that the door and the router let through, and those among them that brought sheets into the farm. */
  readonly welcomeCount: number;
  readonly importCount: number;
};

/** Odd inputs of a whole run: to the readers in this process, and as requests to a server. */
const READER_INPUTS = 92_000;
const SERVER_INPUTS = 8_000;
const SEED = 1;

/** Requests to one server and one farm: some empty it, and the next must find one that is full. */
const INPUTS_OF_A_SERVER = 1_000;

/** A hundred thousand odd inputs at `scale` 1: to every reader of what comes from outside, and to every address, form, sheet and JSON door of a server. */
export async function fuzz(scale: number): Promise<Figures> {
  const read = fuzzReaders(Math.ceil(READER_INPUTS * scale), SEED);
  const served = await fuzzServers(Math.ceil(SERVER_INPUTS * scale));
  return {
    title: "Odd inputs",
    lines: [
      `${read.inputCount.toLocaleString("en")} to the readers of sheets, zips, workbooks, pasted rows, forms, calls, queries and requests: ${read.faults.length} threw`,
      `${served.inputCount.toLocaleString("en")} to a server, as raw requests, addresses, JSON, sheets and the ${served.formCount} forms of ${served.formPageCount} pages: ${served.faults.length} failed it or led astray`,
      `of these ${served.welcomeCount.toLocaleString("en")} were let through to a page or an action, and ${served.importCount} brought sheets in`,
    ],
    faults: [...read.faults, ...served.faults],
  };
}

async function fuzzServers(inputCount: number): Promise<FuzzServed> {
  const all: FuzzServed[] = [];
  for (let from = 0; from < inputCount; from += INPUTS_OF_A_SERVER)
    all.push(await fuzzServer(Math.min(INPUTS_OF_A_SERVER, inputCount - from), SEED + from));
  const sum = (pick: (served: FuzzServed) => number) => all.reduce((total, served) => total + pick(served), 0);
  return {
    ...all[0],
    inputCount,
    welcomeCount: sum(({ welcomeCount }) => welcomeCount),
    importCount: sum(({ importCount }) => importCount),
    faults: all.flatMap(({ faults }) => faults),
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
export async function fuzzServer(inputCount: number, seed: number): Promise<FuzzServed> {
  const folder = mkdtempSync(join(tmpdir(), "farm-"));
  const file = join(folder, "farm.sqlite");
  const sheets = someLinesOf(inDemoFarm(file));
  const served = await serveBuilt({
    ...process.env,
    NODE_ENV: "production",
    FARM_FILE: file,
    FARM_TODAY: "2026-11-25",
  });
  try {
    const { faults, ...found } = await knockAll(served, sheets, inputCount, seed);
    if (served.server.exitCode !== null) faults.push(`the server ended with ${served.server.exitCode}`);
    await ended(served);
    return { ...found, inputCount, faults: [...faults, ...faultsOfFarm(file)] };
  } finally {
    served.server.kill("SIGKILL");
    rmSync(folder, { recursive: true, force: true });
  }
}

async function knockAll({ address }: Served, sheets: readonly Sheet[], inputCount: number, seed: number) {
  const { knock, formCount, formPageCount } = await oddKnocks(Number(new URL(address).port), sheets);
  const faults: string[] = [];
  let next = 0;
  let welcomeCount = 0;
  let importCount = 0;
  const knockOn = async () => {
    while (next < inputCount) {
      const input = next++;
      const answer = await knock(seededRandom(seed + input));
      if (answer.said.status < 400) welcomeCount++;
      if (answer.said.body.includes('"kind":"taken"')) importCount++;
      const fault = faultOf(answer);
      if (fault) faults.push(`seed ${seed + input}: ${fault}`);
    }
  };
  await Promise.all(Array.from({ length: AT_ONCE }, knockOn));
  return { faults, formCount, formPageCount, welcomeCount, importCount };
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
    return faultsOfRecords(database);
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
