import { toDay, yearOf } from "#lib/domain/day";
import type { BookingDraft } from "#lib/domain/records/booking";
import { ById } from "#lib/domain/snapshot";
import { buyInFinder } from "./buy-in";
import { forecast } from "./forecast";
import { type Gap, gaps } from "./gaps";
import { asksForStems } from "./lapsed";
import { type Match, match } from "./match";
import { type Need, needs, needsOf } from "./needs";
import type { Plan } from "./plan";
import { meetingSeasons, seasonOfBooking } from "./seasons";
import { supplyToDate } from "./supply-to-date";

/** A plan's match and gaps as they would be with a booking that is not saved yet; `draftId` is the id it goes by in them. */
export type DraftPlan = { readonly match: Match; readonly gaps: readonly Gap[]; readonly draftId: number };

/** No saved booking has this id. */
const NEW_BOOKING_ID = 0;

/** What a draft needs of a plan. */
export type MatchedSeason = Pick<Plan, "snapshot" | "seasonYear" | "today" | "meetingSeasons" | "forecast" | "match">;

/**
 * Matches a season anew with a draft in it, in place of the booking it would replace if that is given. What blooms is taken from
 * the plan, so only the match is walked again: fast enough for every keystroke [L2].
 * @throws RangeError if the draft names a recipe that the farm does not have
 */
export const withDraft = (plan: MatchedSeason, draft: BookingDraft, bookingId: number | null): DraftPlan =>
  matchedWith(asMetBy(plan, draft, bookingId), draft, bookingId);

/**
 * The same for a season that is already as the draft will be matched in it (`asMetBy`). What a booking that stands asks for otherwise it is taken to have
 * asked for since it was taken, as when it is saved: the days that have passed are lived through again.
 */
export function matchedWith(stands: MatchedSeason, draft: BookingDraft, bookingId: number | null): DraftPlan {
  const { match: before, meetingSeasons, seasonYear, snapshot, today } = stands;
  const { farm, recipes } = snapshot;
  const draftId = bookingId ?? NEW_BOOKING_ID;
  const booking = { ...draft, id: draftId };
  const on = today === null ? null : toDay(today);
  const isAsked = asksForStems(draft, on) && meetingSeasons.includes(seasonOfBooking(booking));
  const own = isAsked ? needsOf(booking, new ById("recipe", recipes), farm) : [];
  const asked = inOrder(before.needs, own, draftId);
  const supplies =
    bookingId === null || !isUnderWay(stands, asked)
      ? before.supplies
      : supplyToDate({
          snapshot,
          plantings: plantingsOf(stands, meetingSeasons),
          seasons: meetingSeasons,
          needs: asked,
          today,
        }).supplies;
  const matched = match(farm, supplies, asked, buyInFinder(snapshot));
  return { match: matched, gaps: gaps(farm, matched, seasonYear), draftId };
}

/** The season as it is matched with others, by plan and by the years of these: an enquiry asks for the days around New Year one after the other. */
const metBy = new WeakMap<MatchedSeason, Map<string, MatchedSeason>>();

/**
 * The season as the draft will be matched in it, without the draft: the plan itself, unless the draft makes other seasons meet it [M8], which are then
 * matched with it.
 */
export function asMetBy(plan: MatchedSeason, draft: BookingDraft, bookingId: number | null): MatchedSeason {
  const seasons = seasonsMetBy(plan, draft, bookingId);
  if (seasons.join() === plan.meetingSeasons.join()) return plan;
  const known = metBy.get(plan) ?? new Map<string, MatchedSeason>();
  metBy.set(plan, known);
  const met = known.get(seasons.join()) ?? matchedTogether(plan, seasons);
  known.set(seasons.join(), met);
  return met;
}

/** The seasons that one match sees together with the draft among the bookings [M8], ascending. */
export function seasonsMetBy(
  { snapshot, seasonYear }: MatchedSeason,
  draft: BookingDraft,
  bookingId: number | null,
): readonly number[] {
  const draftId = bookingId ?? NEW_BOOKING_ID;
  const others = snapshot.bookings.filter(({ id }) => id !== draftId);
  return meetingSeasons(snapshot, seasonYear, undefined, [...others, draft]);
}

function matchedTogether(plan: MatchedSeason, seasons: readonly number[]): MatchedSeason {
  const { snapshot, seasonYear, today } = plan;
  const plantings = plantingsOf(plan, seasons);
  const asked = needs(snapshot, seasons, [], today);
  const { supplies } = supplyToDate({ snapshot, plantings, seasons, needs: asked, today });
  const matched = match(snapshot.farm, supplies, asked, buyInFinder(snapshot));
  return { snapshot, seasonYear, today, forecast: plan.forecast, meetingSeasons: seasons, match: matched };
}

const plantingsOf = (plan: MatchedSeason, seasons: readonly number[]) =>
  seasons.flatMap((season) => (season === plan.seasonYear ? plan.forecast : forecast(plan.snapshot, season)).plantings);

/** Whether days have passed of which something may be a booking's own: a cut that was recorded or expected, or an event. */
function isUnderWay(
  { snapshot, today, meetingSeasons, forecast: { plantings }, match }: MatchedSeason,
  asked: readonly Need[],
): boolean {
  if (today === null) return false;
  return (
    asked.some(({ eventDay }) => eventDay < today) ||
    plantings.some(({ cutDays, asPassed }) => cutDays[0] < today || (asPassed?.cutDays[0] ?? today) < today) ||
    match.supplies.some(({ bookingId }) => bookingId !== undefined) ||
    snapshot.cuts.some(({ cutOn }) => meetingSeasons.includes(yearOf(cutOn)))
  );
}

/** The needs as a saved draft would stand among them: by event day, then by booking, a new one after all others [M7]. */
function inOrder(needs: readonly Need[], own: readonly Need[], draftId: number): Need[] {
  const others = needs.filter((need) => need.booking.id !== draftId);
  if (own.length === 0) return others;
  const [{ eventDay }] = own;
  const comesAfter = (need: Need) =>
    need.eventDay > eventDay || (need.eventDay === eventDay && draftId !== NEW_BOOKING_ID && need.booking.id > draftId);
  const later = others.findIndex(comesAfter);
  const place = later < 0 ? others.length : later;
  return [...others.slice(0, place), ...own, ...others.slice(place)];
}
