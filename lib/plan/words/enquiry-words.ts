import { aloud, type Day, inFull, withWeekday } from "#lib/domain/day";
import { allOf, anyOf } from "#lib/domain/listed";
import type { Enquiry } from "#lib/domain/records/enquiry";
import type { Colour } from "#lib/domain/words";
import type { EnquiryAnswer } from "#lib/plan/road/enquiry";
import { nearestThatHas, type OtherDay } from "#lib/plan/road/enquiry-days";
import type { BuyInOffer, ColourOffer } from "#lib/plan/road/enquiry-offers";
import { countOf, forCount, inRoundMoney, inWholes } from "./numbers";

type Asked = Pick<Enquiry, "role" | "colours">;

/** "blush stems", "1 stem in blush or cream", "filler stems", "green stems of foliage": what a caller asks for, after its count. */
export function stemsNoun({ role, colours }: Asked, stemCount: number): string {
  const [first, ...more] = colours;
  const hue = first && more.length === 0 ? `${first} ` : "";
  const job = role === "focal" || role === "foliage" ? "" : `${role} `;
  const foliage = role === "foliage" ? " of foliage" : "";
  const oneOf = more.length > 0 ? ` in ${anyOf(colours)}` : "";
  return `${hue}${job}${forCount(stemCount, "stem")}${foliage}${oneOf}`;
}

/** "all 40", and "1" of one stem alone. */
const allWords = (stemCount: number): string => `${stemCount > 1 ? "all " : ""}${inWholes(stemCount)}`;

/** "in blush or cream", "in any colour" */
const inColours = (colours: readonly Colour[]): string =>
  colours.length > 0 ? `in ${anyOf(colours)}` : "in any colour";

/** The answer in a word and its number, and what goes with it. "Yes" and "can be promised" are said of poor years alone [E2]. */
export function verdictWords(answer: EnquiryAnswer): { head: string; rest: string } {
  const { enquiry, verdict, promisedStems, likelyStems } = answer;
  const [promised, likely, asked] = [promisedStems, likelyStems, enquiry.stemCount].map(inWholes);
  const all = allWords(enquiry.stemCount);
  const colours = inColours(enquiry.colours);
  const nothingSure = "none can be promised, since a poor year, one in ten, leaves none";
  switch (verdict) {
    case "yes":
      return { head: `Yes: ${all}`, rest: `${colours}. A poor year, one in ten, leaves as many.` };
    case "likely":
      return promisedStems > 0
        ? { head: `Likely: ${all}`, rest: `${colours}; ${promised} can be promised, what a poor year leaves.` }
        : { head: `Likely: ${all}`, rest: `${colours}; ${nothingSure}.` };
    case "partly":
      if (promisedStems === 0) return { head: `Perhaps ${likely}`, rest: `of ${asked} ${colours}; ${nothingSure}.` };
      return {
        head: `Partly: ${promised}`,
        rest: `of ${asked} ${colours} can be promised${likelyStems > promisedStems ? `; ${likely} are likely` : ""}.`,
      };
    case "no":
      return { head: "None", rest: `of ${asked} ${colours} can be had for that day.` };
  }
}

/** What more there is to say to a caller, as far as it is known. */
export type Further = {
  readonly offers: readonly ColourOffer[];
  /** Null where nothing is to be bought in, or it is too late to order. */
  readonly buyIn: BuyInOffer | null;
  readonly nearest: OtherDay | null;
};

/** A near colour is named aloud if it brings this share of the stems asked, or more: who wants 120 is not helped by 3. Our own measure. */
const WORTH_SAYING = 0.1;

/**
 * The answer as it is read to the caller: what can be promised, what could be had with a near colour, that the rest would be bought in, and the nearest
 * day that has all of it.
 */
export function toTheCaller(answer: EnquiryAnswer, { offers, buyIn, nearest }: Further): string {
  const last = offers.at(-1);
  const isWorthSaying = last && last.answer.likelyStems - answer.likelyStems >= WORTH_SAYING * answer.enquiry.stemCount;
  const rest = isWorthSaying ? last.answer : answer;
  return [
    promiseAloud(answer),
    withoutAloud(answer),
    isWorthSaying ? offerAloud(answer, last) : "",
    buyIn && rest.verdict !== "yes" ? buyInAloud(rest) : "",
    nearest ? nearestAloud(answer.enquiry, nearest) : "",
  ]
    .filter((sentence) => sentence !== "")
    .join(" ");
}

function promiseAloud({ enquiry, verdict, promisedStems, likelyStems }: EnquiryAnswer): string {
  const { stemCount, eventOn } = enquiry;
  const on = `For ${aloud(eventOn)}`;
  const all = `${allWords(stemCount)} ${stemsNoun(enquiry, stemCount)}`;
  const promised = `${inWholes(promisedStems)} ${stemsNoun(enquiry, promisedStems)}`;
  const likely = `${inWholes(likelyStems)} ${stemsNoun(enquiry, likelyStems)}`;
  switch (verdict) {
    case "yes":
      return `${on} I can promise ${all}.`;
    case "likely":
      return promisedStems > 0
        ? `${on} I can promise ${promised}; ${allWords(stemCount)} are likely.`
        : `${on} ${all} ${forCount(stemCount, "is", "are")} likely; I cannot promise ${forCount(stemCount, "it", "them")} yet.`;
    case "partly":
      if (promisedStems === 0)
        return `${on} ${likely} ${forCount(likelyStems, "is", "are")} likely; I cannot promise ${forCount(likelyStems, "it", "them")} yet.`;
      return likelyStems > promisedStems
        ? `${on} I can promise ${promised}; ${inWholes(likelyStems)} are likely.`
        : `${on} I can promise ${promised}.`;
    case "no":
      return `${on} I have no ${stemsNoun(enquiry, 2)}.`;
  }
}

/** Colours asked of which there will be none; where there are none at all it is said already. */
function withoutAloud(answer: EnquiryAnswer): string {
  const missing = missingColours(answer);
  return answer.verdict === "no" || missing.length === 0 ? "" : `None of them would be ${anyOf(missing)}.`;
}

/** Colours asked for in which nothing is likely, so that none is dropped without a word. */
export function missingColours({ enquiry, draft, needIndex }: EnquiryAnswer): Colour[] {
  const { servings, supplies } = draft.match;
  const got = new Set(
    servings
      .filter((one) => one.needIndex === needIndex)
      .map(({ supplyIndex }) => supplies[supplyIndex].variety.colour),
  );
  return enquiry.colours.filter((colour) => !got.has(colour));
}

function offerAloud(asked: EnquiryAnswer, { added, answer }: ColourOffer): string {
  const welcome = `If ${allOf(added)} ${forCount(added.length, "is", "are")} welcome too`;
  const { stemCount } = asked.enquiry;
  if (answer.verdict === "yes") return `${welcome}, I can promise ${allWords(stemCount)}.`;
  if (answer.promisedStems > asked.promisedStems) return `${welcome}, I can promise ${inWholes(answer.promisedStems)}.`;
  const likely = answer.verdict === "likely" ? allWords(stemCount) : inWholes(answer.likelyStems);
  return `${welcome}, ${likely} ${forCount(answer.likelyStems, "is", "are")} likely.`;
}

function buyInAloud({ verdict, promisedStems, enquiry }: EnquiryAnswer): string {
  if (verdict === "likely") return "What a poor year lacks I would buy in.";
  return promisedStems === 0
    ? `I would buy ${forCount(enquiry.stemCount, "it", "them")} in.`
    : `The other ${inWholes(enquiry.stemCount - promisedStems)} I would buy in.`;
}

function nearestAloud({ stemCount, colours }: Enquiry, { day, promisedStems }: OtherDay): string {
  const all = `${stemCount > 1 ? "All " : ""}${inWholes(stemCount)}${colours.length > 0 ? ` ${inColours(colours)}` : ""}`;
  return promisedStems >= stemCount
    ? `${all} I can promise for ${aloud(day)}.`
    : `${all} ${forCount(stemCount, "is", "are")} likely on ${aloud(day)}.`;
}

/** "No blue or silver focal is planted for 2027." for colours of which no variety can take the role; empty where there is none. */
export function notPlantedWords(colours: readonly Colour[], { role }: Asked, seasonYear: number): string {
  return colours.length > 0 ? `No ${anyOf(colours)} ${role} is planted for ${seasonYear}.` : "";
}

/** "With the farm’s spare 132 stems are cut to give 120." Empty without spare. */
export const spareWords = ({ needStems, enquiry }: EnquiryAnswer): string =>
  needStems === enquiry.stemCount
    ? ""
    : `With the farm’s spare ${countOf(needStems, "stem")} are cut to give ${inWholes(enquiry.stemCount)}.`;

/** Which other day has all of it, the nearest; or that none has. `days` are all there are. */
export function nearestWords(days: readonly OtherDay[], stemCount: number): string {
  const nearest = nearestThatHas(days, stemCount);
  const all = stemCount > 1 ? allWords(stemCount) : "it";
  if (!nearest) return `None of them has ${all}.`;
  return nearest.promisedStems >= stemCount
    ? `The nearest that can promise ${all}: ${withWeekday(nearest.day)}.`
    : `On none can ${all} be promised; the nearest on which ${all} ${stemCount > 1 ? "are" : "is"} likely: ${withWeekday(nearest.day)}.`;
}

/** Of days on which nothing was asked yet, which can promise the most focal stems, and on how many none can be promised. */
export function mostLeftWords(days: readonly OtherDay[]): string {
  const best = days.toSorted((a, b) => b.promisedStems - a.promisedStems)[0];
  if (!best || best.promisedStems === 0)
    return "None can be promised: a poor year, one in ten, leaves none on any of them.";
  const none = days.filter(({ promisedStems }) => promisedStems === 0).length;
  const rest = none > 0 ? ` On ${countOf(none, "Saturday")} none can be: a poor year, one in ten, leaves nothing.` : "";
  return `The most can be promised on ${withWeekday(best.day)}: ${countOf(best.promisedStems, "stem")}.${rest}`;
}

/** What a kept bed brings, and where its cost is told. */
export const KEPT_BRINGS = "In the colours asked: kept dahlias bloom weeks earlier. What keeping costs is told under";

/** "2 bunches of 10 at the price of garden rose, $60 (trade); 3 in a poor year, $90; order by Sat 22 May" */
export function buyInWords({ crop, colour, ordinary, poorest, orderBy }: BuyInOffer): string {
  const bunches = ({ bunchCount, costCents }: BuyInOffer["ordinary"]) =>
    `${countOf(bunchCount, "bunch", "bunches")}, ${inRoundMoney(costCents)}`;
  const years =
    ordinary.bunchCount === poorest.bunchCount
      ? bunches(poorest)
      : ordinary.bunchCount === 0
        ? `${bunches(poorest)}, in a poor year only`
        : `${bunches(ordinary)}; in a poor year ${bunches(poorest)}`;
  return `${years}. Priced as ${colour ? `${colour} ` : ""}${crop.name.toLowerCase()} at ${crop.bunchStems.count} a bunch (${crop.buyInCents.mark}); order by ${withWeekday(orderBy)}.`;
}

/** Why nothing can be bought in. */
export const noBuyInWords = (buyIn: BuyInOffer | null, { role, colours }: Asked): string =>
  buyIn
    ? `It is too late to buy in: the order was due by ${withWeekday(buyIn.orderBy)}.`
    : `No ${role}${colours.length ? ` in ${anyOf(colours)}` : ""} is to be had from others in that month.`;

/** The note of a booking that holds an enquiry: when it was asked, and what. */
export const holdNote = (enquiry: Enquiry, askedOn: Day): string =>
  `Asked on ${inFull(askedOn)}: ${inWholes(enquiry.stemCount)} ${stemsNoun(enquiry, enquiry.stemCount)}.`;
