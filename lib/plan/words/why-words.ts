import { inShort, monthDayInShort, toDay } from "#lib/domain/day";
import { allOf } from "#lib/domain/listed";
import { measureIn, shown } from "#lib/domain/measures";
import { type BloomCurve, YEAR_SEASONS } from "#lib/domain/records/curve";
import { learnedFor } from "#lib/domain/records/learned";
import type { Planting } from "#lib/domain/records/planting";
import type { Units } from "#lib/domain/words";
import type { Grown } from "#lib/plan/road/grown";
import type { HeatReached } from "#lib/plan/road/heat-reached";
import { countOf, inPercent, inWholes } from "./numbers";

/** What planting late costs it, in a sentence; null where it costs nothing. `share` is what is left of its stems [F13]. */
export const lateInWords = (share: number): string | null =>
  share === 1 ? null : `Planted late, it gives ${inPercent(share)} of the stems of a planting on its known day.`;

/** "spring 58 %, summer 46 %, autumn 58 % and winter 58 %"; "90 % in every season" where they are alike. */
export const bySeasonInWords = (shares: readonly number[]): string =>
  shares.every((share) => share === shares[0])
    ? `${inPercent(shares[0])} in every season`
    : allOf(YEAR_SEASONS.map((season, index) => `${season} ${inPercent(shares[index])}`));

/** What is graded out of a planting's stems, and by whose word, in a sentence [F17]; null where all that is cut is fit to sell by the curve, which is said of no season. */
export function gradedInWords({ planting, curve }: Pick<Grown, "planting" | "curve">): string | null {
  const isByCurve = curve !== null && curve.saleableBySeason.length > 0;
  if (planting.gradeOutShare === null)
    return isByCurve
      ? `Fit to sell of what is cut: ${bySeasonInWords(curve.saleableBySeason)}, as the curve says; your own share graded out would take its place.`
      : null;
  const own = `Graded out: ${inPercent(planting.gradeOutShare)} of what is cut, by your own word`;
  return isByCurve ? `${own}, in place of what the curve says is fit to sell.` : `${own}.`;
}

/**
 * Why a planting blooms when it does, in a sentence or two: "621 of 690 degree days above 50 °F by 14 Jul". `reached` is null where the calendar tells its
 * first cut. Null without a curve.
 */
export function whyInWords({ curve, planting }: Grown, reached: HeatReached | null, units: Units): string | null {
  if (!curve) return null;
  if (reached === null || curve.heatBaseC === null) {
    const { anchor } = curve;
    const told =
      anchor.kind === "day-of-year"
        ? `the calendar: on ${monthDayInShort(anchor.firstCut)} every year`
        : `the calendar: ${anchor.days} days after planting`;
    const offer = curve.heatBaseC === null ? "" : " Once the farm has a climate, warmth tells it.";
    return `Its first cut goes by ${told}.${movedInWords(curve, planting)}${offer}`;
  }
  const measure = measureIn(units, "temperature");
  const inUnit = (degreeDays: number) => inWholes(degreeDays * measure.shownPerStored);
  const needed = `${inUnit(reached.needed)} degree days above ${shown(measure, curve.heatBaseC)} ${measure.word}`;
  const from = `counted from ${inShort(toDay(reached.from))}`;
  const { reachedOn } = reached;
  if (reachedOn !== null && reached.by >= reachedOn)
    return `It has had the ${needed} that it needs, ${from}, by ${inShort(toDay(reachedOn))}.${movedInWords(curve, planting)}`;
  const now =
    reached.by <= reached.from
      ? `none of ${inUnit(reached.needed)} yet`
      : `${inUnit(reached.reached)} of ${inUnit(reached.needed)} by ${inShort(toDay(reached.by))}`;
  const then =
    reachedOn === null ? "which it will not have this season" : `which it should have on ${inShort(toDay(reachedOn))}`;
  return `It needs ${needed}, ${from}, ${then}: ${now}.${movedInWords(curve, planting)}`;
}

/** " The curve moves its first cut 3 days later. Recorded seasons move it 4 days later." Empty where they move it by nothing. */
function movedInWords(curve: BloomCurve, { seasonYear }: Planting): string {
  const by = (days: number) => `its first cut ${countOf(Math.abs(days), "day")} ${days > 0 ? "later" : "earlier"}`;
  const { laterDays } = learnedFor(curve, seasonYear);
  const moved = curve.laterDays === 0 ? "" : ` The curve moves ${by(curve.laterDays)}.`;
  return laterDays === 0 ? moved : `${moved} What recorded seasons taught moves ${by(laterDays)}.`;
}
