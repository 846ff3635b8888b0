import { loadFarm } from "../../load";
import { askedBeds, NOT_ASKED, refusalOf } from "../asked-beds";
import { boardOf } from "../tried-plan";

/** The season with these beds kept, beside all dug and as it stands. Writes nothing. */
export async function POST(request: Request): Promise<Response> {
  const asked = askedBeds.safeParse(await request.json().catch(() => null));
  if (!asked.success) return Response.json({ problem: NOT_ASKED }, { status: 400 });
  const problem = refusalOf(loadFarm(), asked.data);
  if (problem) return Response.json({ problem }, { status: 409 });
  return Response.json({ answer: boardOf(asked.data.seasonYear, asked.data.keptBedIds) });
}
