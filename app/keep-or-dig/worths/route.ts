import { withExpectedBookings } from "#lib/plan/winter/expected-bookings";
import { today } from "../../clock";
import { farmAsked } from "../../farm-asked";
import { loadFarm } from "../../load";
import { askedOnce } from "../../threads/asked-once";
import { pool } from "../../threads/pool";
import { readerOf } from "../../threads/reader";
import { askedBeds, NOT_ASKED, refusalOf } from "../asked-beds";

/** What each candidate bed is worth while these are kept: worked out on a thread, so that the server answers others meanwhile. */
export async function POST(request: Request): Promise<Response> {
  const { asked, refusal } = await farmAsked(request, askedBeds, NOT_ASKED);
  if (refusal) return refusal;
  const farm = loadFarm();
  const problem = refusalOf(farm, asked);
  if (problem) return Response.json({ problem }, { status: 409 });
  try {
    const { seasonYear, keptBedIds } = asked;
    const reader = readerOf(request);
    const expected = withExpectedBookings(farm, seasonYear, today());
    const start = () => pool().start(expected, "verdicts", asked, { reader });
    const working = askedOnce(expected, `worths ${seasonYear} ${keptBedIds}`, start, () => {});
    request.signal.addEventListener("abort", working.stop);
    return Response.json({ answer: await working.answer });
  } catch (error) {
    return Response.json({ problem: error instanceof Error ? error.message : String(error) }, { status: 500 });
  }
}
