import type { Day } from "#lib/domain/day";
import type { Snapshot } from "#lib/domain/snapshot";
import { withExpectedBookings } from "#lib/plan/winter/expected-bookings";
import { today } from "../clock";
import { farmAsked } from "../farm-asked";
import { loadFarm } from "../load";
import { askedOnce } from "../threads/asked-once";
import type { JobKind } from "../threads/jobs";
import type { Running } from "../threads/pool";
import { readerOf } from "../threads/reader";
import { type AskedBeds, askedBeds, NOT_ASKED, refusalOf } from "./asked-beds";

/** Begins the work on the farm as Keep or dig reckons with it. */
type Start = (farm: Snapshot, asked: AskedBeds, day: Day, asker: { readonly reader?: string }) => Running<JobKind>;

/** Answers a question about ticked beds. It is worked out on a thread, so that the server answers others meanwhile. */
export async function answerOnBeds(request: Request, word: string, start: Start): Promise<Response> {
  const { asked, refusal } = await farmAsked(request, askedBeds, NOT_ASKED);
  if (refusal) return refusal;
  const farm = loadFarm();
  const problem = refusalOf(farm, asked);
  if (problem) return Response.json({ problem }, { status: 409 });
  try {
    const { seasonYear, keptBedIds } = asked;
    const day = today();
    const reckoned = withExpectedBookings(farm, seasonYear, day);
    const begin = () => start(reckoned, asked, day, { reader: readerOf(request) });
    const working = askedOnce(reckoned, `${word} ${seasonYear} ${keptBedIds}`, begin, () => {});
    request.signal.addEventListener("abort", working.stop);
    return Response.json({ answer: await working.answer });
  } catch (error) {
    return Response.json({ problem: error instanceof Error ? error.message : String(error) }, { status: 500 });
  }
}
