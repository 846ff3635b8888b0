import { withExpectedBookings } from "#lib/plan/winter/expected-bookings";
import { today } from "../../clock";
import { farmAsked } from "../../farm-asked";
import { loadFarm } from "../../load";
import { askedOnce } from "../../threads/asked-once";
import { readerOf } from "../../threads/reader";
import { startSureness } from "../../threads/start-sureness";
import { streamed } from "../../threads/streamed";
import { askedBeds, NOT_ASKED, refusalOf } from "../asked-beds";

const SEASON_COUNT = 1000;

/** How sure these beds are, over sampled seasons, as JSON lines with the seasons done. Writes nothing. */
export async function POST(request: Request): Promise<Response> {
  const { asked, refusal } = await farmAsked(request, askedBeds, NOT_ASKED);
  if (refusal) return refusal;
  const farm = loadFarm();
  const problem = refusalOf(farm, asked);
  if (problem) return Response.json({ problem }, { status: 409 });
  const { seasonYear, keptBedIds } = asked;
  const ask = { seasonYear, keptBedIds, seasonCount: SEASON_COUNT };
  const expected = withExpectedBookings(farm, seasonYear, today());
  const reader = readerOf(request);
  return streamed((told) =>
    askedOnce(
      expected,
      `sure ${seasonYear} ${keptBedIds}`,
      (tellAll) => startSureness(expected, ask, { reader, told: tellAll }),
      told,
    ),
  );
}
