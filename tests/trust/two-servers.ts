import { type ChildProcess, fork } from "node:child_process";
import { once } from "node:events";
import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { isDeepStrictEqual } from "node:util";
import fc from "fast-check";
import { closeFarm, type FarmDatabase, openFarm } from "#db/client";
import { revision } from "#db/journal/journal";
import { checkMatch } from "#lib/plan/road/match";
import type { Plan } from "#lib/plan/road/plan";
import { KeptPlans } from "../../app/kept-plans";
import { farmDatabase, farmFile, farmStamp, loadFarm, loadPlan } from "../../app/load";
import { makeFile } from "../db/farm-in-file";
import { kept } from "../db/kept-farm";
import { anyStep } from "../db/steps";
import type { Figures } from "./part";

const WRITE_COUNT = 2000;
const SEED = 21;
const SEASON = 2027;

/**
 * Two servers write the same farm by turns, anything at all. After each write this one must have noticed it, show what a fresh reading shows, and
 * plan, from the plan it had, what a fresh plan says: the same cost, the same stems short, with its proof.
 */
export async function twoServers(scale: number): Promise<Figures> {
  const count = Math.ceil(WRITE_COUNT * scale);
  const folder = mkdtempSync(join(tmpdir(), "trust-"));
  const file = join(folder, "farm.sqlite");
  makeFile(file);
  process.env.FARM_FILE = file;
  const other = fork("tests/trust/other-server.ts", [file, String(SEED), String(count)], {
    execArgv: ["--import", "tsx"],
  });
  await once(other, "message");
  const witness = openFarm(file);
  const faults: string[] = [];
  const writtenCount = [0, 0];
  try {
    const steps = fc.sample(anyStep, { seed: SEED + 1, numRuns: count });
    for (const [turn, { word, run }] of steps.entries()) {
      const [reached, stood, who] = [revision(witness), farmStamp(), turn % 2];
      if (who === 1) await told(other, turn);
      else if (word !== "empty farm") run(farmDatabase(), loadFarm());
      const isWritten = revision(witness) > reached;
      if (isWritten) writtenCount[who]++;
      const wrong = isWritten === (farmStamp() === stood) ? "the stamp does not say so" : differs(witness);
      if (wrong) faults.push(`write ${turn} of ${who === 1 ? "the other server" : `this one, ${word}`}: ${wrong}`);
    }
  } finally {
    closeFarm(witness);
    farmFile().close();
    other.disconnect();
    await once(other, "exit");
    rmSync(folder, { recursive: true, force: true });
  }
  return {
    title: "Two servers writing one farm by turns",
    lines: [
      `${count} random writes tried: ${writtenCount[0]} of this server and ${writtenCount[1]} of the other went through`,
      `not noticed, read otherwise than afresh, or planned otherwise than afresh: ${faults.length}`,
    ],
    faults,
  };
}

/** Has the other server write, and waits until it has. */
const told = (other: ChildProcess, turn: number): Promise<void> =>
  new Promise((resolve, reject) => {
    const ended = (code: number | null) => reject(new Error(`the other server ended with ${code}`));
    other.once("exit", ended);
    other.once("message", () => {
      other.off("exit", ended);
      resolve();
    });
    other.send(turn);
  });

/** In what the farm and plan shown here are not those of a fresh reading; null when in nothing. */
function differs(witness: FarmDatabase): string | null {
  const [shown, fresh] = [loadFarm(), kept(witness)];
  if (!isDeepStrictEqual(shown, fresh)) return "the farm shown is not the farm";
  const replanned = loadPlan(SEASON);
  const planned = new KeptPlans().plan(fresh, SEASON, replanned.today ?? Number.NaN);
  if (!isDeepStrictEqual(answersOf(replanned), answersOf(planned))) return "the plan shown is not the plan";
  return checkMatch(replanned.match).length ? "the plan shown is not proven" : null;
}

const answersOf = ({ match: { needs, solution } }: Plan) => ({
  cost: solution.totalCost,
  short: [...solution.unmet],
  needs: needs.map(({ booking, kind, stems }) => [booking.id, kind, stems]),
});
