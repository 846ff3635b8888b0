import type { Problem } from "#lib/domain/problem";
import type { Snapshot } from "#lib/domain/snapshot";
import { buyInFinder } from "./buy-in";
import { type BuyIn, buying } from "./buying";
import { type Forecast, forecast, frostDayOf } from "./forecast";
import { type Gap, gaps } from "./gaps";
import { type Match, match } from "./match";
import { needs } from "./needs";
import { type PickLine, pickList } from "./pick-list";
import { supplyOf } from "./supply";
import { type Surplus, surplus } from "./surplus";
import { type Week, weeks } from "./weeks";

/** A season, planned: each step's answer, and what stood in the way. */
export type Plan = {
  readonly snapshot: Snapshot;
  readonly seasonYear: number;
  /** The first frost reckoned with, as a day number. */
  readonly frostDay: number;
  readonly forecast: Forecast;
  readonly match: Match;
  readonly gaps: readonly Gap[];
  readonly weeks: readonly Week[];
  readonly pickList: readonly PickLine[];
  readonly buying: readonly BuyIn[];
  readonly surplus: readonly Surplus[];
  readonly problems: readonly Problem[];
};

/**
 * The road, walked once: what will bloom, what is asked, which cut serves which need, what is short and why, what to cut for whom,
 * what to buy in and what is over. Pure: the same snapshot and year give the same plan.
 */
export function plan(snapshot: Snapshot, seasonYear: number, frostDay = frostDayOf(snapshot.farm, seasonYear)): Plan {
  const { farm } = snapshot;
  const buyIn = buyInFinder(snapshot.crops);
  const bloom = forecast(snapshot, seasonYear, frostDay);
  const supplies = supplyOf(snapshot, bloom.plantings, seasonYear);
  const matched = match(farm, supplies, needs(snapshot, seasonYear), buyIn.centsOf);
  const short = gaps(farm, matched);
  return {
    snapshot,
    seasonYear,
    frostDay,
    forecast: bloom,
    match: matched,
    gaps: short,
    weeks: weeks(farm, matched, short),
    pickList: pickList(matched),
    buying: buying(farm, short, buyIn.cropOf),
    surplus: surplus(farm, matched),
    problems: bloom.problems,
  };
}
