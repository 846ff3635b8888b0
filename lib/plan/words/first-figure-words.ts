import { monthDayInShort } from "#lib/domain/day";
import type { Farm } from "#lib/domain/records/farm-settings";
import { type FirstFigures, FROST_TRIED_DAYS } from "#lib/plan/what-if/first-figures";
import { countOf, inPercent, inRoundMoney, inWholes, inWords } from "./numbers";

/** A figure that is set first: why it matters, and what it moves on this farm. */
export type FirstFigureWords = { readonly why: string; readonly moves: string };

/** "of 17 beds that could stay, six pay at 75 %". `payingBedCount` is null while nobody has asked which beds pay. */
export const survivalMoves = (figures: FirstFigures, farm: Farm, payingBedCount: number | null): FirstFigureWords => ({
  why: "No published figure was found. Keep or dig moves with this more than with any other.",
  moves: survivalInWords(figures, inPercent(farm.winter.winterSurvivalShare), payingBedCount),
});

function survivalInWords(figures: FirstFigures, share: string, payingBedCount: number | null): string {
  const { winterBedCount, keptBedCount, seasonYear } = figures;
  if (winterBedCount === 0) return `no bed of ${seasonYear} could stay in the ground`;
  const could = `of ${countOf(winterBedCount, "bed")} that could stay`;
  if (payingBedCount === null) return `${could}, ${inWords(keptBedCount)} ${keptBedCount === 1 ? "does" : "do"}`;
  return `${could}, ${inWords(payingBedCount)} ${payingBedCount === 1 ? "pays" : "pay"} at ${share}`;
}

/** "two weeks earlier: 277 more stems short in 2027" */
export function frostMoves({ earlyFrostShortStems: stems, seasonYear }: FirstFigures, farm: Farm): FirstFigureWords {
  const { firstAutumnP10: early, firstAutumnP90: late } = farm.frost;
  const moved =
    stems === 0 ? "no stem more is short" : `${inWholes(Math.abs(stems))} ${stems > 0 ? "more" : "fewer"} stems short`;
  return {
    why: `Half of all years have had it by then; one in ten by ${monthDayInShort(early)}, nine in ten by ${monthDayInShort(late)}. It ends what is tender.`,
    moves: `${inWords(FROST_TRIED_DAYS / 7)} weeks earlier: ${moved} in ${seasonYear}`,
  };
}

/** "digging all 17 beds and replanting: 61 hours, $1,224"; the hours to divide are among them. */
export function wageMoves({ winterBedCount, digHours }: FirstFigures, farm: Farm): FirstFigureWords {
  const cents = Math.round(digHours * farm.winter.wageCentsPerHour);
  return {
    why: "Digging, dividing, replanting and covering are paid by it.",
    moves:
      winterBedCount === 0
        ? "no bed is there to dig"
        : `digging ${winterBedCount === 1 ? "the one bed" : `all ${winterBedCount} beds`} and replanting: ${countOf(Math.round(digHours), "hour")}, ${inRoundMoney(cents)}`,
  };
}

/** "1,231 of the 13,540 stems booked for 2027 are spare" */
export const spareMoves = ({ stems, spareStems, seasonYear }: FirstFigures): FirstFigureWords => ({
  why: "Added to a new booking for breakage; each booking keeps its own.",
  moves:
    stems === 0
      ? `nothing is booked for ${seasonYear} yet`
      : `${inWholes(spareStems)} of the ${inWholes(stems)} stems booked for ${seasonYear} are spare`,
});
