import { yearOf } from "#lib/domain/day";
import type { BookingDraft } from "#lib/domain/records/booking";
import { NEVER_LARGER } from "#lib/domain/records/earlier-ask";
import type { Enquiry } from "#lib/domain/records/enquiry";
import type { Farm } from "#lib/domain/records/farm-settings";
import { NO_FINAL_COUNT } from "#lib/domain/records/final-count";
import { apportion } from "#lib/maths/apportion";
import { coloursBy } from "./booking-colours";
import { buyInFinder } from "./buy-in";
import { asMetBy, type DraftPlan, type MatchedSeason, matchedWith } from "./draft";
import { type Loser, losers } from "./losers";
import { type Match, match } from "./match";
import { type Need, stemsWithoutSpare } from "./needs";
import { poorMatches } from "./unusual-years";
import type { ColourStems } from "./week-colours";

/** `yes`: all can be promised. `likely`: all is likely and not all can be promised. `partly`: some of it is likely. `no`: none is. */
export type Verdict = "yes" | "likely" | "partly" | "no";

/**
 * What can be said to a caller. `promisedStems` and `likelyStems` are the caller's own, `needStems`, `promisedNeedStems` and `likelyNeedStems` the
 * same with the farm's spare. `draft` is the ordinary year with the enquiry held in it, `needIndex` its need there.
 */
export type EnquiryAnswer = {
  readonly enquiry: Enquiry;
  readonly verdict: Verdict;
  readonly promisedStems: number;
  readonly likelyStems: number;
  readonly needStems: number;
  readonly promisedNeedStems: number;
  readonly likelyNeedStems: number;
  readonly draft: DraftPlan;
  readonly needIndex: number;
  /** Bookings that would go short of stems for it in an ordinary year, most first. These stems are not promised. */
  readonly losers: readonly Loser[];
};

/** An enquiry as the booking that holds it: one line of stems, with the farm's spare [E1]. */
export const heldBooking = ({ stemCount, colours, role, eventOn }: Enquiry, { spareShare }: Farm): BookingDraft => ({
  client: "",
  status: "held",
  lapsesAfter: null,
  eventOn,
  palette: [...colours],
  spareShare,
  priceCents: null,
  finalDueOn: null,
  ...NO_FINAL_COUNT,
  ...NEVER_LARGER,
  alternativeColours: [],
  unacceptableColours: [],
  unacceptableCropIds: [],
  pieces: [],
  stemLines: [{ role, cropId: null, cropOnly: false, asks: [], colours: [...colours], stemCount }],
  promises: [],
  ...{ leadDays: null, designDays: null, deliverDays: null },
  takenOn: null,
  note: "",
});

/**
 * Answers an enquiry: what it would get if it were held, less what others would then go short of [E1], in an ordinary year and in poor ones [E2].
 * @param plan  of the season that the day asked for lies in
 * @param poor  the plan's needs matched in poor years (`poorMatches`)
 * @throws RangeError if the day lies in another year
 */
export function enquiryAnswer(plan: MatchedSeason, poor: readonly Match[], enquiry: Enquiry): EnquiryAnswer {
  if (yearOf(enquiry.eventOn) !== plan.seasonYear)
    throw new RangeError(`eventOn must lie in the plan's season ${plan.seasonYear}, got ${enquiry.eventOn}`);
  const { farm } = plan.snapshot;
  const held = heldBooking(enquiry, farm);
  const stands = asMetBy(plan, held, null);
  const draft = matchedWith(stands, held, null);
  const needIndex = draft.match.needs.findIndex(({ booking }) => booking.id === draft.draftId);
  const needStems = draft.match.needs[needIndex].stems;
  const likely = gained(stands.match, draft.match, needIndex);
  const poorYears = () => (stands === plan ? poor : poorMatches(stands));
  const poorNeedStems = (before: Match) =>
    gained(before, match(farm, before.supplies, draft.match.needs, buyInFinder(plan.snapshot)), needIndex).stems;
  const promisedNeedStems = likely.stems === 0 ? 0 : Math.min(likely.stems, ...poorYears().map(poorNeedStems));
  const asked = enquiry.stemCount;
  const promisedStems = Math.min(asked, stemsWithoutSpare(promisedNeedStems, farm.spareShare));
  const likelyStems = Math.min(asked, stemsWithoutSpare(likely.stems, farm.spareShare));
  return {
    enquiry,
    verdict: promisedStems === asked ? "yes" : likelyStems === asked ? "likely" : likelyStems > 0 ? "partly" : "no",
    promisedStems,
    likelyStems,
    needStems,
    promisedNeedStems,
    likelyNeedStems: likely.stems,
    draft,
    needIndex,
    losers: likely.losers,
  };
}

/** The need of an enquiry in its own match. */
export const needOf = ({ draft, needIndex }: EnquiryAnswer): Need => draft.match.needs[needIndex];

/** The stems that are likely, spare included, by colour; they sum to `likelyNeedStems`. What others would lose is taken off all colours in proportion. */
export function likelyColours({ draft, likelyNeedStems }: EnquiryAnswer): ColourStems[] {
  const got = coloursBy(draft.match, ({ booking }) => (booking.id === draft.draftId ? booking.id : null));
  const colours = got.get(draft.draftId) ?? [];
  const counted = apportion(
    likelyNeedStems,
    colours.map(({ stems }) => stems),
  );
  return colours.map((row, index) => ({ ...row, stems: counted[index] })).filter(({ stems }) => stems > 0);
}

/** What a need gets that was not there before, less what all others have less than before; and who those are. */
function gained(before: Match, after: Match, needIndex: number): { stems: number; losers: Loser[] } {
  const lose = losers(before, after);
  const got = after.needs[needIndex].stems - after.shortStems[needIndex];
  return { stems: Math.max(0, got - lose.reduce((sum, { stems }) => sum + stems, 0)), losers: lose };
}
