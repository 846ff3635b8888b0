import { inShort, toDay } from "#lib/domain/day";
import type { Grown } from "#lib/plan/road/grown";
import { daysLateAt, type Replay } from "#lib/plan/road/replay";
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

/** What varies in sampled seasons, and where it is taken from. */
export const sampledInWords = (replay: Replay | null): string =>
  `${
    replay
      ? `Each sampled season has the spring of one of your ${countOf(replay.years.length, "recorded year")}, the same for every crop that follows warmth; yields, winters and frost vary by their spreads.`
      : "First cuts, yields, winters and frost vary: seasons are sampled from their spreads."
  } A thousand of them are the same ones with these beds kept and with every bed dug.`;
