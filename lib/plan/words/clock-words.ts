import { monthDayInShort } from "#lib/domain/day";
import { measureIn, shown } from "#lib/domain/measures";
import type { BloomCurve } from "#lib/domain/records/curve";
import type { Units } from "#lib/domain/words";
import type { UnusableFirstCut } from "#lib/plan/learning/recorded-seasons";
import { countOf } from "./numbers";

type Clock = Pick<BloomCurve, "anchor" | "heatBaseC" | "heatCeilingC" | "heatLimitC" | "heatFrom" | "heatPlace">;

/** When a curve's first cut comes at its known place: "on 5 Jun" · "91 days after planting, moved 3 days later". */
export function firstCutInWords({ anchor, laterDays }: Pick<BloomCurve, "anchor" | "laterDays">): string {
  const known =
    anchor.kind === "day-of-year" ? `on ${monthDayInShort(anchor.firstCut)}` : `${anchor.days} days after planting`;
  const moved = laterDays > 0 ? "later" : "earlier";
  return laterDays === 0 ? known : `${known}, moved ${countOf(Math.abs(laterDays), "day")} ${moved}`;
}

/** What the clock of a curve goes by, in a sentence; null where it goes by the calendar alone. */
export function clockInWords(
  { anchor, heatBaseC, heatCeilingC, heatLimitC, heatFrom, heatPlace }: Clock,
  units: Units,
): string | null {
  if (heatBaseC === null || heatFrom === null) return null;
  const measure = measureIn(units, "temperature");
  const degrees = (celsius: number) => `${shown(measure, celsius)} ${measure.word}`;
  const ceiling = heatCeilingC === null ? "" : `, no faster above ${degrees(heatCeilingC)}`;
  const limit = heatLimitC === null ? "" : ` and not at all at ${degrees(heatLimitC)}`;
  const place = heatPlace ?? "your own climate";
  const known =
    anchor.kind === "day-of-year"
      ? `counted from ${monthDayInShort(heatFrom)}; the day is known in ${place}`
      : `counted from the planting day; the days are known for planting on ${monthDayInShort(heatFrom)} in ${place}`;
  return `Where the farm has a climate, it follows warmth above ${degrees(heatBaseC)}${ceiling}${limit}, ${known}.`;
}

/** Why a first cut says nothing of warmth: "40 days before the first cut have no weather". */
export const unusableInWords = (cut: UnusableFirstCut): string =>
  cut.kind === "outside-season"
    ? `${cut.firstCut} lies outside the season of ${cut.year}`
    : `${countOf(cut.missingDayCount, "day")} before the first cut have no weather`;
