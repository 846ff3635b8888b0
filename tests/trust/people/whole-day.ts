import { hashOf } from "#db/people/password";
import { PeopleFile } from "#db/people/people-file";
import { seededRandom } from "#lib/maths/random";
import { demoInFile } from "../../browser/demo-in-file";
import { faultsOfBooks } from "./books";
import { Crew } from "./crew";
import { Day } from "./day";
import { FarmLine } from "./farm-line";
import { faultsOfSecrets } from "./secrets";

/** How much of a day there is; `people` beside the owner, six at the most. */
export type DaySize = { readonly people: number; readonly steps: number; readonly kills: number };
/** What a day came to. */
export type DayFound = Day["tried"] & { readonly counts: number; readonly faults: readonly string[] };

const PASSWORD = "three hens and a heron";
const TODAY = "2027-06-10";

/** A day from a seed, on a demo farm and a server of its own, and what is wrong with the farm at the end of it. */
export async function wholeDay(seed: number, size: DaySize): Promise<DayFound> {
  const { folder, file, env, remove } = demoInFile(TODAY);
  const ownerPassword = await hashOf(PASSWORD);
  new PeopleFile(file).write((kept) => ({ ...kept, ownerPassword }));
  const line = new FarmLine(env);
  const crew = new Crew(line, PASSWORD, size.people);
  const { faults } = crew;
  const day = new Day(crew, seededRandom(seed));
  let step = 0;
  try {
    await line.start();
    await day.begins();
    const killEvery = Math.ceil(size.steps / (size.kills + 1));
    for (step = 1; step <= size.steps; step++) {
      const before = faults.length;
      if (step % killEvery === 0 && day.tried.kills < size.kills) await day.isKilled();
      else await day.passes();
      for (let at = before; at < faults.length; at++) faults[at] += ` (seed ${seed}, step ${step})`;
    }
    await day.ends();
    faults.push(...(await faultsOfSecrets(crew, folder)));
    await line.end();
    faults.push(...faultsOfBooks(file, day.paper, crew, day.ownWork));
  } catch (error) {
    faults.push(`seed ${seed}, step ${step}: ${error instanceof Error ? error.stack : error}`);
  } finally {
    await line.end();
    remove();
  }
  const counts = [...day.paper.rows.values()].reduce((sum, row) => sum + row.counts.length, 0);
  return { ...day.tried, counts, faults };
}
