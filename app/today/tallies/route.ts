import { z } from "zod";
import { SaveRefused, saving, tallyKey } from "#db/journal/saving";
import { problemsOf } from "#lib/domain/problem";
import type { Snapshot } from "#lib/domain/snapshot";
import { sentTallySchema } from "#lib/domain/tally";
import type { TallyAnswer } from "#lib/domain/unsent";
import { fingerprintOf } from "../../action";
import { farmAsked } from "../../farm-asked";
import { farmDatabase, farmRevision, loadFarm } from "../../load";
import { asking } from "../../people/who";
import { takeTally } from "../take-tally";

/** More than a phone sends at once. */
const MOST_AT_ONCE = 100;

const sentSchema = z.object({ tallies: z.array(z.unknown()).min(1).max(MOST_AT_ONCE) });

/** Takes what was counted on a phone, each tally once however often it is sent, and says of each whether the farm has it. */
export async function POST(request: Request): Promise<Response> {
  const { asked, refusal } = await farmAsked(request, sentSchema, "no tallies");
  if (refusal) return refusal;
  const answers: TallyAnswer[] = [];
  const farm = loadFarm();
  for (const sent of asked.tallies) {
    const answer = taken(sent, farm);
    if (answer) answers.push(answer);
    // Others are answered in between.
    await new Promise(setImmediate);
  }
  return Response.json({ answers, revision: farmRevision() });
}

/** Null where the farm could not say: then it is sent again. */
function taken(sent: unknown, farm: Snapshot): TallyAnswer | null {
  const read = sentTallySchema.safeParse(sent);
  if (!read.success) {
    const key = z.object({ key: z.string() }).safeParse(sent);
    const problems = problemsOf(read.error).map(({ place, message }) => `${place}: ${message}`);
    return key.success ? { key: key.data.key, problems } : null;
  }
  const { key, ...tally } = read.data;
  const save = {
    key: tallyKey(key),
    fingerprint: fingerprintOf(tally),
    seenRevision: null,
    by: asking()?.person?.name ?? null,
  };
  try {
    const database = farmDatabase();
    const written = saving(database, save, () => takeTally(database, tally, farm));
    return { key, problems: written.ok ? [] : written.problems.map(({ message }) => message) };
  } catch (error) {
    if (error instanceof SaveRefused) return { key, problems: error.problems.map(({ message }) => message) };
    console.error(error);
    return null;
  }
}
