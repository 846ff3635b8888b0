import { addDays, type Day, daysBetween, yearOf } from "#lib/domain/day";
import type { MatchedSeason } from "./draft";
import { type EnquiryAnswer, enquiryAnswer } from "./enquiry";
import { blooms, needOf } from "./enquiry-offers";
import type { Match } from "./match";

/** What the same enquiry would get on another day: stems for the caller. */
export type OtherDay = { readonly day: Day; readonly promisedStems: number; readonly likelyStems: number };

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
  for (const day of days) {
    const eventDay = need.eventDay + daysBetween(asked.enquiry.eventOn, day);
    // Where nothing of it is cut at all, nobody need be asked.
    if (!blooms(plan, { ...need, eventDay })) yield { day, promisedStems: 0, likelyStems: 0 };
    else {
      const { promisedStems, likelyStems } = enquiryAnswer(plan, poor, { ...asked.enquiry, eventOn: day });
      yield { day, promisedStems, likelyStems };
    }
  }
}

/** The nearest of the days that has all of it: one on which all can be promised, or where there is none, one on which all is likely; null without any. */
export function nearestThatHas(days: readonly OtherDay[], stemCount: number): OtherDay | null {
  const promised = days.find(({ promisedStems }) => promisedStems >= stemCount);
  return promised ?? days.find(({ likelyStems }) => likelyStems >= stemCount) ?? null;
}
