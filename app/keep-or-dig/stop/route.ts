import { z } from "zod";
import { jsonAsked } from "../../door/json-asked";
import { stopWork } from "../../threads/stoppable";

const stopSchema = z.object({ workId: z.int() });

/** Stops work by its number; the stream that it was started with still gives the best it has. */
export async function POST(request: Request): Promise<Response> {
  const { asked, refusal } = await jsonAsked(request, stopSchema, "no number of work to stop");
  if (refusal) return refusal;
  stopWork(asked.workId);
  return new Response(null, { status: 204 });
}
