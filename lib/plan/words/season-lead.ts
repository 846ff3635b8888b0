import { type Day, toDay } from "#lib/domain/day";
import { type Gap, stemsShort } from "#lib/plan/road/gaps";
import type { Plan } from "#lib/plan/road/plan";
import type { WinterBed } from "#lib/plan/winter/beds";
import { clumpCount, clumpsLost } from "#lib/plan/winter/costs";
import { coloursInWords } from "./colour-words";
import { dayInWords } from "./keep-or-dig-words";
import { countOf, forCount, inPercent, inWholes } from "./numbers";

/** Gaps of one role, the largest first, then by day. */
export const rankedGaps = (gaps: readonly Gap[], role: Gap["need"]["role"]): Gap[] =>
  gaps
    .filter(({ need }) => need.role === role)
    .sort((a, b) => b.shortStems - a.shortStems || a.need.eventDay - b.need.eventDay || a.needIndex - b.needIndex);

/** How many gaps the sentence names before it says how many more there are. */
const NAMED_COUNT = 4;

/** "144 stay short: 58 blue or lavender for The Ousel Farm wedding and 86 red for The Lantern Barn wedding." Empty when none is. */
export function staysShortInWords(ranked: readonly Gap[]): string {
  const stems = stemsShort(ranked);
  if (stems === 0) return "";
  const named = ranked
    .slice(0, NAMED_COUNT)
    .map(
      ({ shortStems, need }) =>
        `${inWholes(shortStems)} ${need.colours.length ? "" : "of "}${coloursInWords(need)} for ${need.booking.client}`,
    );
  const others = stemsShort(ranked.slice(NAMED_COUNT));
  const rest = others > 0 ? [`${inWholes(others)} in ${countOf(ranked.length - NAMED_COUNT, "smaller gap")}`] : [];
  return `${inWholes(stems)} ${forCount(stems, "stays", "stay")} short: ${[...named, ...rest].join("; ")}.`;
}

/**
 * What a choice of beds rests on: "75 % of the clumps survive the winter, first cut 5 June". `tried` is the plan with the beds kept. The first cut is
 * left out when nothing is cut in them.
 */
export function restsOnInWords(kept: readonly WinterBed[], tried: Plan): string {
  const rows = kept.flatMap(({ plantings }) => plantings.map((row) => row.kept.planting));
  const clumps = clumpCount(rows);
  const share = clumps === 0 ? 0 : 1 - clumpsLost(rows, tried.snapshot.farm) / clumps;
  const ids = new Set(rows.map(({ id }) => id));
  const cuts = tried.forecast.plantings.flatMap(({ planting, cutDays }) =>
    ids.has(planting.id) ? cutDays.slice(0, 1) : [],
  );
  return numbersInWords(share, cuts.length ? toDay(cuts.reduce((a, b) => Math.min(a, b))) : null);
}

/** The numbers of kept beds that a choice hangs on most. */
const numbersInWords = (survivalShare: number, firstCut: Day | null): string =>
  `${inPercent(survivalShare)} of the clumps survive the winter${firstCut === null ? "" : `, first cut ${dayInWords(firstCut)}`}`;

/** A bed's clumps, the share of them that would live through a winter in the ground, and its first cut then. */
type Wintering = { readonly clumpCount: number; readonly survivalShare: number; readonly keptFirstCut: Day | null };

/** The same of some beds told one by one; empty when they hold no clump. */
export function winteringInWords(beds: readonly Wintering[]): string {
  const clumps = beds.reduce((sum, bed) => sum + bed.clumpCount, 0);
  if (clumps === 0) return "";
  const living = beds.reduce((sum, bed) => sum + bed.clumpCount * bed.survivalShare, 0);
  const [first = null] = beds.flatMap(({ keptFirstCut }) => keptFirstCut ?? []).sort();
  return numbersInWords(living / clumps, first);
}

/** Why a choice of beds for a season is not written any more. */
export const winterOverInWords = (seasonYear: number): string =>
  `the winter before ${seasonYear} is over: beds that were dug cannot be kept any more. Change a planting on its bed’s page if it stands otherwise`;
