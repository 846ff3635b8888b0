import { type Day, inShort } from "#lib/domain/day";
import type { Colour, Role } from "#lib/domain/words";
import { type EnquiryAnswer, likelyColours, needOf, type Verdict } from "#lib/plan/road/enquiry";
import { cropFitCents } from "#lib/plan/road/fit";
import type { Match } from "#lib/plan/road/match";
import type { Plan } from "#lib/plan/road/plan";
import { type HeldStems, heldForNeed } from "#lib/plan/road/stem-holders";
import type { ColourStems } from "#lib/plan/road/week-colours";
import { windowHolders } from "#lib/plan/road/window-holders";
import { notPlantedWords, spareWords, verdictWords } from "#lib/plan/words/enquiry-words";
import { reasonInWords } from "#lib/plan/words/gap-words";

/** Stems of one variety from one bed or the cooler, by name. `bedId` is null for the cooler. */
export type NamedLot = {
  readonly stems: number;
  readonly name: string;
  readonly colour: Colour;
  readonly place: string;
  readonly bedId: number | null;
};

/** A booking that has, or would lose, so many stems. */
export type NamedBooking = {
  readonly id: number;
  readonly client: string;
  readonly day: string;
  readonly stems: number;
  readonly lots: readonly NamedLot[];
};

/** What a screen shows of an answer: names and words, no plan. Stems are the caller's, but for `colours` and `lots`, which hold the spare. */
export type AnswerView = {
  readonly verdict: Verdict;
  readonly role: Role;
  readonly eventOn: Day;
  readonly head: string;
  readonly rest: string;
  readonly stemCount: number;
  readonly promisedStems: number;
  readonly likelyStems: number;
  readonly needStems: number;
  readonly colours: readonly ColourStems[];
  readonly lots: readonly NamedLot[];
  readonly losers: readonly NamedBooking[];
  readonly holders: readonly NamedBooking[];
  readonly reasons: readonly string[];
  /** Colours that nobody here grows for the role; empty when all are grown. */
  readonly notPlanted: string;
  readonly spare: string;
};

export function answerView(plan: Plan, answer: EnquiryAnswer): AnswerView {
  const { enquiry, draft, needIndex, verdict, promisedStems, likelyStems, needStems } = answer;
  const gap = draft.gaps.find((one) => one.needIndex === needIndex);
  return {
    verdict,
    role: enquiry.role,
    eventOn: enquiry.eventOn,
    ...verdictWords(answer),
    ...{ stemCount: enquiry.stemCount, promisedStems, likelyStems, needStems },
    colours: likelyColours(answer),
    lots: lotsOf(draft.match, heldForNeed(draft.match, needIndex)),
    losers: answer.losers.map(({ booking, stems }) => named(booking, stems)),
    holders: gap ? holdersOf(answer) : [],
    reasons: gap?.reasons.map(({ reason, stems }) => reasonInWords(reason, stems, gap.need)) ?? [],
    notPlanted: notPlantedWords(coloursNotPlanted(plan, answer), enquiry, plan.seasonYear),
    spare: spareWords(answer),
  };
}

/** Stems by name as a screen shows them. */
export const lotsOf = ({ supplies }: Match, held: readonly HeldStems[]): NamedLot[] =>
  held.map(({ supplyIndex, stand, stems }) => {
    const { variety, crop } = supplies[supplyIndex];
    const bed = stand.kind === "planting" ? stand.planting.bed : null;
    return {
      stems,
      name: `${crop.name} ${variety.name}`,
      colour: variety.colour,
      place: bed?.name ?? "the cooler",
      bedId: bed?.id ?? null,
    };
  });

const named = (
  booking: EnquiryAnswer["losers"][number]["booking"],
  stems: number,
  lots: NamedLot[] = [],
): NamedBooking => ({
  id: booking.id,
  client: booking.client,
  day: inShort(booking.eventOn),
  stems,
  lots,
});

/** The bookings that have stems which it could take as they are, most first. */
const holdersOf = ({ draft, needIndex }: EnquiryAnswer): NamedBooking[] =>
  windowHolders(draft.match, needIndex).map(({ booking, stems, held }) =>
    named(booking, stems, lotsOf(draft.match, held)),
  );

function coloursNotPlanted({ match }: Plan, answer: EnquiryAnswer): Colour[] {
  const need = needOf(answer);
  const planted = new Set(
    match.supplies.filter(({ crop }) => cropFitCents(need, crop) !== null).map(({ variety }) => variety.colour),
  );
  return answer.enquiry.colours.filter((colour) => !planted.has(colour));
}
