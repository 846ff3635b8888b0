import { z } from "zod";
import { problemsOf } from "#lib/domain/problem";
import { sentTallySchema } from "#lib/domain/tally";
import type { TallyAnswer } from "#lib/domain/unsent";
import { jsonAsked } from "../../door/json-asked";
import { farmDatabase, farmRevision, fileRefused } from "../../load";
import { takeSent } from "../take-sent";

/** More than a phone sends at once. */
const MOST_AT_ONCE = 100;

const sentSchema = z.object({ tallies: z.array(z.unknown()).min(1).max(MOST_AT_ONCE) });

/**
 * Takes what was counted on a phone, each tally once however often it is sent, and says of each whether the farm has it. The farm is not read for it: where
 * many count, its pages would wait.
 */
export async function POST(request: Request): Promise<Response> {
  const { asked, refusal } = await jsonAsked(request, sentSchema, "no tallies");
  if (refusal) return refusal;
  const problem = fileRefused()?.message;
  if (problem) return Response.json({ problem }, { status: 503 });
  const answers: TallyAnswer[] = [];
  for (const sent of asked.tallies) {
    const answer = taken(sent);
    if (answer) answers.push(answer);
    // Others are answered in between.
    await new Promise(setImmediate);
  }
  return Response.json({ answers, revision: farmRevision() });
}

/** Null where the farm could not say: then it is sent again. */
function taken(sent: unknown): TallyAnswer | null {
  const read = sentTallySchema.safeParse(sent);
  if (!read.success) {
    const key = z.object({ key: z.string() }).safeParse(sent);
    const problems = problemsOf(read.error).map(({ place, message }) => `${place}: ${message}`);
    return key.success ? { key: key.data.key, problems } : null;
  }
  const { key } = read.data;
  try {
    return { key, problems: takeSent(farmDatabase(), read.data).map(({ message }) => message) };
  } catch (error) {
    console.error(error);
    return null;
  }
}
