import type { Snapshot } from "#lib/domain/snapshot";
import type { Grown } from "#lib/plan/road/grown";
import { replay } from "#lib/plan/road/replay";
import { SPREADS_AT_MOST, together } from "./sample-spreads";

/** The year's part in first cuts, the same for all plantings: a share, and the score of that share. */
type YearOfFirstCuts = { readonly share: number; readonly score: number };

/** How chance moves a planting's first cut, by whole days (early, when negative), and the most days by which it can. */
export type FirstCutChance = {
  readonly daysLate: (year: YearOfFirstCuts, ownScore: number) => number;
  readonly mostDays: number;
};

/**
 * How chance moves the first cuts of a season. Where the season can be replayed, a curve told by warmth is as late as in the recorded year that the
 * year's share takes, the same for all plantings, and the planting's own part of its spread is added; any other is late by its assumed spread [R5, Y3].
 * @param sharedShare  the part of the variance that is the year's
 */
export function firstCutChances(
  snapshot: Snapshot,
  seasonYear: number,
  sharedShare: number,
): (row: Grown) => FirstCutChance {
  const replayed = replay(snapshot, seasonYear);
  return (row) => {
    const spreadDays = row.curve?.firstCutSpreadDays ?? 0;
    const late = replayed?.daysLateOf(row);
    if (!late)
      return {
        mostDays: mostShiftDays(spreadDays),
        daysLate: (year, ownScore) => shiftDays(spreadDays, together(year.score, ownScore, sharedShare)),
      };
    const ownDays = spreadDays * Math.sqrt(1 - sharedShare);
    return {
      mostDays: late.reduce((most, days) => Math.max(most, Math.abs(days)), 0) + mostShiftDays(ownDays),
      daysLate: (year, ownScore) => late[Math.floor(year.share * late.length)] + shiftDays(ownDays, ownScore),
    };
  };
}

const mostShiftDays = (spreadDays: number): number => Math.round(SPREADS_AT_MOST * spreadDays);

const shiftDays = (spreadDays: number, score: number): number =>
  Math.round(spreadDays * Math.min(SPREADS_AT_MOST, Math.max(-SPREADS_AT_MOST, score)));
