import { addDays, type Day } from "#lib/domain/day";
import { nearColours } from "#lib/domain/near-colours";
import type { Colour } from "#lib/domain/words";
import { blooms } from "./blooms";
import { type Bought, buyInFinder } from "./buy-in";
import { bunchesOf } from "./buying";
import type { MatchedSeason } from "./draft";
import { type EnquiryAnswer, enquiryAnswer, needOf } from "./enquiry";
import type { Match } from "./match";

/** The same enquiry with `added` welcome beside the colours asked, in this order; `answer` is what it then gets. */
export type ColourOffer = { readonly added: readonly Colour[]; readonly answer: EnquiryAnswer };

/** Colours offered beside those asked, at most: more are a list, and no answer for a caller. */
const MOST_COLOURS = 3;

/**
 * What would be had if near colours were welcome too, one more with each offer, each named and each bringing stems [E4]. Ends when all can be promised.
 * One offer is worked out each time the next is asked for.
 */
export function* colourOffers(
  plan: MatchedSeason,
  poor: readonly Match[],
  asked: EnquiryAnswer,
): Generator<ColourOffer> {
  let [best, added]: [EnquiryAnswer, readonly Colour[]] = [asked, []];
  const { enquiry } = asked;
  for (const colour of nearColours(enquiry.colours)) {
    if (best.verdict === "yes" || added.length === MOST_COLOURS) return;
    if (!blooms(asked.draft, { ...needOf(asked), colours: [colour] })) continue;
    const colours = [...enquiry.colours, ...added, colour];
    const answer = enquiryAnswer(plan, poor, { ...enquiry, colours });
    if (answer.likelyStems <= best.likelyStems) continue;
    [best, added] = [answer, [...added, colour]];
    yield { added, answer };
  }
}

/**
 * What buying in the rest would take: whole bunches of one crop for what is short in an ordinary year, and for what a poor one would lack. `orderBy` is
 * the farm's ordering days before the event; from the day after it is too late.
 */
export type BuyInOffer = Bought & {
  readonly ordinary: { readonly bunchCount: number; readonly costCents: number };
  readonly poorest: { readonly bunchCount: number; readonly costCents: number };
  readonly orderBy: Day;
};

/** How the stems that an answer cannot promise could be bought in [B1]; null when it can promise all or nothing is to be had. */
export function buyInOffer({ snapshot }: MatchedSeason, answer: EnquiryAnswer): BuyInOffer | null {
  if (answer.verdict === "yes") return null;
  const bought = buyInFinder(snapshot).boughtAs(needOf(answer));
  if (!bought) return null;
  const { crop } = bought;
  return {
    ...bought,
    ordinary: bunchesOf(crop, answer.needStems - answer.likelyNeedStems),
    poorest: bunchesOf(crop, answer.needStems - answer.promisedNeedStems),
    orderBy: addDays(answer.enquiry.eventOn, -snapshot.farm.orderDaysAhead),
  };
}
