import { addDays, type Day } from "#lib/domain/day";
import type { Booking } from "#lib/domain/records/booking";
import type { CoolerMoveDraft } from "#lib/domain/records/cooler-move";
import type { CutDraft } from "#lib/domain/records/cut";
import { cutLots } from "#lib/plan/road/cut-lots";
import type { Plan } from "#lib/plan/road/plan";
import { bookingsOf } from "#lib/plan/road/seasons";

/** So many events of a season had what left the cooler for them written down: the last ones that are over. */
const EVENTS_A_SEASON = 3;
/** Of each so many lots one had dead stems: a third of it, and at most so many. */
const DEAD_OF = 3;
const MOST_DEAD = 4;

/**
 * What left the cooler of a season's cuts by a day: for the last events that are over all that was cut for them, taken out on the day before, but for the dead stems of some lots.
 * @param cuts   what was cut of the season
 * @param until  the first day that is not over
 */
export function coolerEmptied(asked: Plan, cuts: readonly CutDraft[], until: Day): CoolerMoveDraft[] {
  const { match, seasonYear, snapshot } = asked;
  const wanted = new Set(cuts.map(({ bookingId }) => bookingId));
  const over = bookingsOf(match, seasonYear)
    .filter(({ id, eventOn }) => eventOn < until && wanted.has(id))
    .sort((a, b) => (a.eventOn < b.eventOn ? -1 : 1))
    .slice(-EVENTS_A_SEASON);
  const recorded = { ...snapshot, cuts: cuts.map((cut, index) => ({ ...cut, id: index + 1 })) };
  const lots = cutLots(recorded, asked.forecast.plantings, asked.meetingSeasons);
  return over.flatMap((booking) =>
    lots
      .filter(({ cut, goodStems }) => cut.bookingId === booking.id && goodStems > 0)
      .flatMap(({ cut, goodStems }, index) => {
        const deadStems = index % DEAD_OF === 1 ? Math.min(MOST_DEAD, Math.floor(goodStems / 3)) : 0;
        return movesOf(booking, cut, goodStems - deadStems, deadStems);
      }),
  );
}

function movesOf(
  { id, eventOn }: Booking,
  { varietyId, cutOn }: CutDraft,
  usedStems: number,
  deadStems: number,
): CoolerMoveDraft[] {
  const lot = { varietyId, cutOn, movedOn: addDays(eventOn, -1) };
  const used = { ...lot, kind: "taken out" as const, stemCount: usedStems, bookingId: id };
  return deadStems > 0 ? [{ ...lot, kind: "thrown away", stemCount: deadStems, bookingId: id }, used] : [used];
}
