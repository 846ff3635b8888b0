import { type Day, toDay, yearOf } from "#lib/domain/day";
import type { Problem } from "#lib/domain/problem";
import type { Enquiry } from "#lib/domain/records/enquiry";
import { type EnquiryAnswer, enquiryAnswer } from "#lib/plan/road/enquiry";
import { nearestThatHas, type OtherDay, onOtherDays, sameWeekdays } from "#lib/plan/road/enquiry-days";
import { type BuyInOffer, buyInOffer, type ColourOffer, colourOffers } from "#lib/plan/road/enquiry-offers";
import { NEAR_DAYS } from "#lib/plan/road/gaps";
import type { Match } from "#lib/plan/road/match";
import type { Plan } from "#lib/plan/road/plan";
import { keepOffer } from "#lib/plan/what-if/enquiry-keep";
import { noBuyInWords, toTheCaller } from "#lib/plan/words/enquiry-words";
import { loadPlan, loadPoorYears } from "../../load";
import { weekBookings } from "../week-bookings";
import { type AnswerView, answerView } from "./answer-view";
import { buyInRung, colourRung, keepRung, type Rung } from "./rungs";

/**
 * What is said of a question, line by line as it becomes known: what is wrong with it, or why it cannot be asked; else the answer, what could be done, and
 * other days, the nearest first. `sentence` is what is read to the caller, as far as is known; `weekdays` are the days that will come.
 */
export type AnswerLine =
  | { readonly problems: readonly Problem[] }
  | { readonly unanswerable: "past" | "nothing planted"; readonly eventOn: Day }
  | { readonly answer: AnswerView; readonly sentence: string; readonly weekdays: readonly Day[] }
  | { readonly rung: Rung }
  | { readonly noBuyIn: string }
  | { readonly sentence: string }
  | { readonly otherDay: OtherDayView }
  | { readonly done: true };

/** Another day, and who has booked its week. */
export type OtherDayView = OtherDay & { readonly booked: readonly string[] };

type Asked = {
  readonly plan: Plan;
  readonly poor: readonly Match[];
  readonly answer: EnquiryAnswer;
  readonly today: Day;
};
type Offered = { readonly offers: readonly ColourOffer[]; readonly buyIn: BuyInOffer | null };

/** The answer itself comes first; every other line asks the match anew, so that the work can end with any. */
export function* answerLines(enquiry: Enquiry, today: Day): Generator<AnswerLine> {
  const { eventOn } = enquiry;
  if (eventOn < today) return yield { unanswerable: "past", eventOn };
  const plan = loadPlan(yearOf(eventOn));
  if (plan.match.supplies.length === 0) return yield { unanswerable: "nothing planted", eventOn };
  const poor = loadPoorYears(plan.seasonYear);
  const answer = enquiryAnswer(plan, poor, enquiry);
  const asked = { plan, poor, answer, today };
  const sentence = toTheCaller(answer, { offers: [], buyIn: null, nearest: null });
  yield { answer: answerView(plan, answer), sentence, weekdays: daysShown(plan, sameWeekdays(eventOn, today)) };
  const offered = yield* couldBeDone(asked);
  yield { sentence: toTheCaller(answer, { ...offered, nearest: null }) };
  yield* onOtherDaysToo(asked, offered);
  yield { done: true };
}

/** The days of a picture: those on which anything at all may be in bloom, in order. */
function daysShown({ match, snapshot }: Plan, days: readonly Day[]): Day[] {
  const cuts = match.supplies.flatMap((supply) => [supply.days[0], supply.days[supply.days.length - 1]]);
  const first = toDay(cuts.reduce((a, b) => Math.min(a, b)) + snapshot.farm.leadDays);
  const last = toDay(cuts.reduce((a, b) => Math.max(a, b)) + NEAR_DAYS);
  return days.filter((day) => day >= first && day <= last).sort();
}

/** Near colours, beds to keep, and stems to buy in for the rest. */
function* couldBeDone({ plan, poor, answer, today }: Asked): Generator<AnswerLine, Offered> {
  const offers: ColourOffer[] = [];
  for (const offer of colourOffers(plan, poor, answer)) {
    offers.push(offer);
    yield { rung: colourRung(offer) };
  }
  const keep = keepOffer(plan, answer, today);
  if (keep) yield { rung: keepRung(keep) };
  const rest = offers.at(-1)?.answer ?? answer;
  if (rest.verdict === "yes") return { offers, buyIn: null };
  const buyIn = buyInOffer(plan, rest);
  if (buyIn && buyIn.orderBy >= today) {
    yield { rung: buyInRung(buyIn, rest) };
    return { offers, buyIn };
  }
  yield { noBuyIn: noBuyInWords(buyIn, answer.enquiry) };
  return { offers, buyIn: null };
}

/** The same on other days; the sentence names the nearest that has it as soon as it is known. */
function* onOtherDaysToo({ plan, poor, answer, today }: Asked, offered: Offered): Generator<AnswerLine> {
  const { eventOn, stemCount } = answer.enquiry;
  const found: OtherDay[] = [];
  let nearest: OtherDay | null = null;
  const bookingsOf = weekBookings(plan.snapshot, today);
  const isSure = () => nearest !== null && nearest.promisedStems >= stemCount;
  for (const otherDay of onOtherDays(plan, poor, answer, sameWeekdays(eventOn, today))) {
    found.push(otherDay);
    yield { otherDay: { ...otherDay, booked: bookingsOf(otherDay.day).map(({ client }) => client) } };
    if (answer.verdict === "yes" || isSure()) continue;
    nearest = nearestThatHas(found, stemCount);
    if (isSure()) yield { sentence: toTheCaller(answer, { ...offered, nearest }) };
  }
  if (nearest && !isSure()) yield { sentence: toTheCaller(answer, { ...offered, nearest }) };
}
