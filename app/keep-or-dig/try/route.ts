import { farmAsked } from "../../farm-asked";
import { loadFarm } from "../../load";
import { askedBeds, NOT_ASKED, refusalOf } from "../asked-beds";
import { boardOf } from "../tried-plan";

/** The season with these beds kept, beside all dug and as it stands. Writes nothing. */
export async function POST(request: Request): Promise<Response> {
  const { asked, refusal } = await farmAsked(request, askedBeds, NOT_ASKED);
  if (refusal) return refusal;
  const problem = refusalOf(loadFarm(), asked);
  if (problem) return Response.json({ problem }, { status: 409 });
  return Response.json({ answer: boardOf(asked.seasonYear, asked.keptBedIds) });
}
