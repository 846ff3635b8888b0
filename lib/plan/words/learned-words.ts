import { allOf } from "#lib/domain/listed";
import type { BloomCurve } from "#lib/domain/records/curve";
import type { Learned } from "#lib/domain/records/learned";
import { TREATMENT_WORDS } from "#lib/domain/words";
import type { CurveProposal } from "#lib/plan/learning/review/curve-proposals";
import type { CurveSeason } from "#lib/plan/learning/review/curve-seasons";
import { countOf, inPercent } from "./numbers";

/** "4 days later", "2 days earlier", "on its day" */
const laterInWords = (days: number): string =>
  days === 0 ? "on its day" : `${countOf(Math.abs(days), "day")} ${days > 0 ? "later" : "earlier"}`;

const stemsInWords = (factor: number): string => (factor === 1 ? "all its stems" : `${inPercent(factor)} of its stems`);

/** "From 2028 on 4 days later and 95 % of its stems, as recorded seasons taught." of the last that a curve has learned; empty where it has learned nothing. */
export function learnedInWords({ learned }: Pick<BloomCurve, "learned">): string {
  const last = learned.reduce<Learned | null>((a, b) => (a && a.fromSeason > b.fromSeason ? a : b), null);
  return last === null
    ? ""
    : `From ${last.fromSeason} on ${laterInWords(last.laterDays)} and ${stemsInWords(last.yieldFactor)}, as recorded seasons taught.`;
}

type Shown = Pick<CurveProposal, "crop" | "varietyName" | "curve" | "part" | "was" | "is">;

/** "Dahlia, kept in the ground over winter" */
export const curveNamed = ({ crop, varietyName, curve }: Pick<Shown, "crop" | "varietyName" | "curve">): string =>
  [crop.name, varietyName, TREATMENT_WORDS[curve.treatment]].filter((name) => name !== null).join(", ");

/** "first cut 4 days later, now on its day" · "92 % of its stems, now all its stems" */
export const proposalInWords = ({ part, was, is }: Pick<Shown, "part" | "was" | "is">): string =>
  part === "timing"
    ? `first cut ${laterInWords(is.laterDays)}, now ${laterInWords(was.laterDays)}`
    : `${stemsInWords(is.yieldFactor)}, now ${stemsInWords(was.yieldFactor)}`;

/** "2026: 8 days later; 2027: 6 days later", each by how much was seen of it where that is not nearly all. */
export const seasonsInWords = (part: CurveProposal["part"], seasons: readonly CurveSeason[]): string =>
  seasons
    .map((one) => {
      const [said, seen] =
        part === "timing"
          ? [laterInWords(Math.round(one.daysLate) + 0), one.timingSeen]
          : [stemsInWords(Math.round(one.yieldFactor * 100) / 100), one.yieldSeen];
      return `${one.season}: ${said}${seen < 0.85 ? ` (${inPercent(seen)} of it seen)` : ""}`;
    })
    .join("; ");

/** What a page of proposals says first. */
export const proposalsLead = (count: number, seasons: readonly number[]): string => {
  if (seasons.length === 0)
    return "No season with recorded cuts or bud walks is over yet. After the first frost, what it taught is proposed here, curve by curve.";
  const of = `${seasons.length === 1 ? "season" : "seasons"} ${allOf(seasons.map(String))}`;
  return count === 0
    ? `The curves stand as the recorded ${of} taught.`
    : `What the recorded ${of} taught: ${countOf(count, "change")} to take or leave. They count from next season on; seasons that were stay as they were planned.`;
};
