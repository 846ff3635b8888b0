import { z } from "zod";
import { stopWork } from "../../threads/stoppable";

const asked = z.object({ workId: z.int() });

/** Stops work by its number; the stream that it was started with still gives the best it has. */
export async function POST(request: Request): Promise<Response> {
  const parsed = asked.safeParse(await request.json().catch(() => null));
  if (!parsed.success) return Response.json({ problem: "no number of work to stop" }, { status: 400 });
  stopWork(parsed.data.workId);
  return new Response(null, { status: 204 });
}
