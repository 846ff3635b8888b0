import { allOf } from "#lib/domain/listed";
import { type EnquiryAnswer, likelyColours } from "#lib/plan/road/enquiry";
import type { BuyInOffer, ColourOffer } from "#lib/plan/road/enquiry-offers";
import { heldForNeed } from "#lib/plan/road/stem-holders";
import type { ColourStems } from "#lib/plan/road/week-colours";
import type { KeepOffer } from "#lib/plan/what-if/enquiry-keep";
import { buyInWords, KEPT_BRINGS } from "#lib/plan/words/enquiry-words";
import { lotsOf, type NamedLot } from "./answer-view";

/**
 * A thing that could be done, and what the caller could then have. `colours` are the stems that are likely, `missingStems` those that are not, both with
 * spare; `isBought` where the missing are bought in. `askWith` are the colours to ask with instead, and those among them that are new.
 */
export type Rung = {
  readonly kind: "colour" | "keep" | "buy-in";
  readonly title: string;
  readonly words: string;
  readonly lots: readonly NamedLot[];
  readonly promisedStems: number;
  readonly likelyStems: number;
  readonly colours: readonly ColourStems[];
  readonly missingStems: number;
  readonly isBought: boolean;
  readonly askWith: { readonly colours: string; readonly added: string } | null;
};

/** "if pink is welcome too", then "and peach as well"; with the stems of the colour that came last. */
export function colourRung({ added, answer }: ColourOffer): Rung {
  const { draft, needIndex, enquiry } = answer;
  const last = added[added.length - 1];
  const lots = lotsOf(draft.match, heldForNeed(draft.match, needIndex));
  return {
    ...rungOf(answer),
    kind: "colour",
    title: added.length === 1 ? `if ${last} is welcome too` : `and ${last} as well`,
    lots: lots.filter(({ colour }) => colour === last),
    askWith: { colours: enquiry.colours.join(", "), added: allOf(added) },
  };
}

export const keepRung = ({ beds, answer }: KeepOffer): Rung => ({
  ...rungOf(answer),
  kind: "keep",
  title: `with ${allOf(beds.map(({ name }) => name))} kept in the ground`,
  words: KEPT_BRINGS,
});

/** @param rest  the answer that is to be filled up: the last with near colours, or the one asked for */
export const buyInRung = (buyIn: BuyInOffer, rest: EnquiryAnswer): Rung => ({
  ...rungOf(rest),
  kind: "buy-in",
  title: "and the rest bought in",
  words: buyInWords(buyIn),
  promisedStems: rest.enquiry.stemCount,
  likelyStems: rest.enquiry.stemCount,
  isBought: true,
});

const rungOf = (answer: EnquiryAnswer): Omit<Rung, "kind" | "title"> => ({
  words: "",
  lots: [],
  promisedStems: answer.promisedStems,
  likelyStems: answer.likelyStems,
  colours: likelyColours(answer),
  missingStems: answer.needStems - answer.likelyNeedStems,
  isBought: false,
  askWith: null,
});
