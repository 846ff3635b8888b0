import { addDays, type Day, daysBetween, yearOf } from "#lib/domain/day";
import type { BookingDraft } from "#lib/domain/records/booking";
import { blooms, mayBloomIn } from "./blooms";
import { asMetBy, type MatchedSeason, seasonsMetBy } from "./draft";
import { type EnquiryAnswer, enquiryAnswer, heldBooking, likelyColours, needOf } from "./enquiry";
import type { Match } from "./match";
import type { Need } from "./needs";
import type { ColourStems } from "./week-colours";

/** What the same enquiry would get on another day: stems for the caller, and those that are likely by colour, spare included. */
export type OtherDay = {
  readonly day: Day;
  readonly promisedStems: number;
  readonly likelyStems: number;
  readonly colours: readonly ColourStems[];
};

/**
 * The days a whole number of weeks from the day asked, in its year and from `today` on, the nearest first; of two as near the earlier first.
 * A caller who wants a Saturday is offered Saturdays.
 */
export function sameWeekdays(asked: Day, today: Day): Day[] {
  const days: Day[] = [];
  const isOffered = (day: Day) => yearOf(day) === yearOf(asked) && day >= today;
  for (let weeks = 1; weeks <= 53; weeks++)
    days.push(...[addDays(asked, -7 * weeks), addDays(asked, 7 * weeks)].filter(isOffered));
  return days;
}

/**
 * The same enquiry on other days [E5], in the order of the days given. One day is worked out each time the next is asked for, so that the work can end
 * with any of them.
 */
export function* onOtherDays(
  plan: MatchedSeason,
  poor: readonly Match[],
  asked: EnquiryAnswer,
  days: readonly Day[],
): Generator<OtherDay> {
  const need = needOf(asked);
  const { farm } = plan.snapshot;
  /** By the seasons beside the plan's, whether they have any. */
  const beside = new Map<string, (need: Need) => boolean>();
  const mayBloomBeside = (draft: BookingDraft, needThen: Need) => {
    const seasons = seasonsMetBy(plan, draft, null).filter((season) => !plan.meetingSeasons.includes(season));
    const mayBloom = beside.get(seasons.join()) ?? mayBloomIn(seasons, plan.snapshot);
    beside.set(seasons.join(), mayBloom);
    return seasons.length > 0 && mayBloom(needThen);
  };
  for (const day of days) {
    const enquiry = { ...asked.enquiry, eventOn: day };
    const needThen = { ...need, eventDay: need.eventDay + daysBetween(asked.enquiry.eventOn, day) };
    // Where nothing of it is cut at all, in the plan's seasons or in those that the day makes meet them [M8], nobody need be asked.
    const held = heldBooking(enquiry, farm);
    const isCut =
      blooms(plan, needThen) || (mayBloomBeside(held, needThen) && blooms(asMetBy(plan, held, null), needThen));
    if (!isCut) yield { day, promisedStems: 0, likelyStems: 0, colours: [] };
    else {
      const answer = enquiryAnswer(plan, poor, enquiry);
      const { promisedStems, likelyStems } = answer;
      yield { day, promisedStems, likelyStems, colours: likelyColours(answer) };
    }
  }
}

/** The nearest of the days that has all of it: one on which all can be promised, or where there is none, one on which all is likely; null without any. */
export function nearestThatHas<T extends Pick<OtherDay, "promisedStems" | "likelyStems">>(
  days: readonly T[],
  stemCount: number,
): T | null {
  const promised = days.find(({ promisedStems }) => promisedStems >= stemCount);
  return promised ?? days.find(({ likelyStems }) => likelyStems >= stemCount) ?? null;
}
