import { inShort, toDay, yearOf } from "#lib/domain/day";
import type { Snapshot } from "#lib/domain/snapshot";
import { LEAST_RECORDED_YEARS } from "#lib/domain/weather";
import type { Grown } from "#lib/plan/road/grown";
import { daysLateAt, type Replay, wholeYears } from "#lib/plan/road/replay";
import { countOf } from "./numbers";

/**
 * How far a planting's first cut may still lie, by the years that the farm has recorded, in a sentence; null for one that goes by the calendar.
 * "Replayed through 18 recorded years, the first cut falls between 28 May and 9 Jun in eight of ten, by the weather alone."
 */
export function replayInWords(row: Grown, replay: Replay | null): string | null {
  const late = replay?.daysLateOf(row);
  if (!late || row.firstCut === null) return null;
  const [early, behind] = [0.1, 0.9].map((share) => toDay((row.firstCut ?? 0) + daysLateAt(late, share)));
  const years = countOf(late.length, "recorded year");
  return early === behind
    ? `Its weather is all but recorded, and ${years} agree on ${inShort(early)}; how far the clock itself is off they cannot say.`
    : `Replayed through ${years}, the first cut falls between ${inShort(early)} and ${inShort(behind)} in eight of ten, by the weather alone.`;
}

/**
 * Why a first cut keeps its assumed spread on a farm that records its weather, in a sentence: "6 years of your weather are whole; from 10 on they say how
 * early or late it comes." Null where the farm records none, has no climate, or has years enough.
 */
export function tooFewYearsInWords({ farm, weather }: Pick<Snapshot, "farm" | "weather">): string | null {
  if (farm.climate === null || weather === null) return null;
  const yearCount = wholeYears(weather).length;
  if (yearCount >= LEAST_RECORDED_YEARS) return null;
  return `That is assumed: ${countOf(yearCount, "year of your weather is", "years of your weather are")} whole, and from ${LEAST_RECORDED_YEARS} on they say how early or late it comes.`;
}

/** What varies in sampled seasons, and where it is taken from. */
export const sampledInWords = (replay: Replay | null, tooFewYears: string | null = null): string =>
  `${
    replay
      ? `Each sampled season has the spring of one of your ${countOf(replay.years.length, "recorded year")}, the same for every crop that follows warmth${withFrost(replay)} vary by their spreads.`
      : ["First cuts, yields, winters and frost vary: seasons are sampled from their spreads.", tooFewYears]
          .filter(Boolean)
          .join(" ")
  } A thousand of them are the same ones with these beds kept and with every bed dug.`;

/** Why what was recorded of a season is not in its sampled ones, in a sentence after them; empty while nothing of it is recorded. */
export const notSampledInWords = (
  { cuts, budLooks }: Pick<Snapshot, "cuts" | "budLooks">,
  seasonYear: number,
): string =>
  cuts.some(({ cutOn }) => yearOf(cutOn) === seasonYear) ||
  budLooks.some(({ lookedOn }) => yearOf(lookedOn) === seasonYear)
    ? ` They are whole seasons, moved by what ${seasonYear} has shown where the plan goes by that; what was cut so far is in none of them.`
    : "";

/** Where the frost of sampled seasons comes from, as the sentence goes on. */
const withFrost = ({ frostDaysLate }: Replay): string =>
  frostDaysLate.every((late) => late === null)
    ? "; yields, winters and frost"
    : ", and its first frost; yields and winters";
