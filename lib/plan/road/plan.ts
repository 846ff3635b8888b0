import type { Snapshot } from "#lib/domain/snapshot";
import { buyInFinder } from "./buy-in";
import { type BuyIn, buying } from "./buying";
import { type Forecast, forecast, frostDayOf, ORDINARY_YEAR } from "./forecast";
import { type Gap, gaps } from "./gaps";
import { type Match, match } from "./match";
import { needs } from "./needs";
import { type OrdersPlan, ordersPlan } from "./orders";
import { type PickLine, pickList, walkedTogether } from "./pick-list";
import { meetingSeasons } from "./seasons";
import { supplyToDate } from "./supply-to-date";
import { type Surplus, surplus } from "./surplus";
import { type Week, weeks } from "./weeks";
import { whenAsked } from "./when-asked";

/**
 * A season, planned: each step's answer, and what stood in the way. What follows from the match (gaps, weeks, paper) is worked out when it is
 * first asked for: a screen asks for a part of it.
 */
export type Plan = {
  readonly snapshot: Snapshot;
  readonly seasonYear: number;
  /** The day it was made on, as a day number: behind it stands what was recorded [T1]. Null where no day has passed. */
  readonly today: number | null;
  /** The seasons that the match sees together; this one alone unless stems of one could serve another's bookings. */
  readonly meetingSeasons: readonly number[];
  /** Of this season's plantings. */
  readonly forecast: Forecast;
  /** Of all seasons that meet. */
  readonly match: Match;
  /** The first frost reckoned with, as a day number. */
  readonly frostDay: number;
  readonly gaps: readonly Gap[];
  readonly weeks: readonly Week[];
  /** The standing orders of all seasons that meet, served from what bookings leave; null where none goes out. */
  readonly orders: OrdersPlan | null;
  /** For bookings and for standing orders. */
  readonly pickList: readonly PickLine[];
  readonly buying: readonly BuyIn[];
  /** What neither bookings nor standing orders take. */
  readonly surplus: readonly Surplus[];
  readonly problems: Forecast["problems"];
};

/**
 * The road, walked once: what will bloom, what is asked, which cut serves which need, what is short and why, what to cut for whom,
 * what to buy in and what is over. The match sees every season that meets this one; all else is this season's part of it. Pure: the same snapshot and year give the same plan [L1].
 * @param before  a plan of the same season, before a change: what rests on rows that are still the same objects is taken from it, and the plan is the
 *   one that it would be without [L3]
 * @param today   the day it is made on, as a day number; null plans the season as if no day had passed
 */
export function plan(
  snapshot: Snapshot,
  seasonYear: number,
  frostDay = frostDayOf(snapshot.farm, seasonYear),
  before: Plan | null = null,
  today: number | null = null,
): Plan {
  const { farm } = snapshot;
  const buyIn = buyInFinder(snapshot);
  const isSameYear = before?.snapshot.farm === farm && before.frostDay === frostDay;
  const bloom = forecast(snapshot, seasonYear, frostDay, ORDINARY_YEAR, isSameYear ? before.forecast : null);
  const seasons = meetingSeasons(snapshot, seasonYear);
  const others = seasons.filter((season) => season !== seasonYear).map((season) => forecast(snapshot, season));
  const plantings = [bloom, ...others].flatMap((one) => one.plantings);
  const isSameDesign = before?.snapshot.recipes === snapshot.recipes;
  const asked = needs(snapshot, seasons, isSameDesign ? before.match.needs : []);
  const supplies = supplyToDate({ snapshot, plantings, seasons, needs: asked, today });
  const matched = match(farm, supplies, asked, buyIn);
  const short = whenAsked(() => gaps(farm, matched, seasonYear));
  const byWeek = whenAsked(() => weeks(farm, matched, short(), seasonYear));
  const orders = whenAsked(() => ordersPlan(snapshot, seasons, matched, buyIn));
  const picks = whenAsked(() => {
    const sold = orders();
    const ofBookings = pickList(matched, seasonYear);
    return sold ? walkedTogether(ofBookings, pickList(sold.match, seasonYear)) : ofBookings;
  });
  const toBuy = whenAsked(() => buying(farm, short(), buyIn));
  const over = whenAsked(() => surplus(orders()?.match ?? matched, seasonYear));
  return {
    snapshot,
    seasonYear,
    today,
    meetingSeasons: seasons,
    frostDay,
    forecast: bloom,
    match: matched,
    get gaps() {
      return short();
    },
    get weeks() {
      return byWeek();
    },
    get orders() {
      return orders();
    },
    get pickList() {
      return picks();
    },
    get buying() {
      return toBuy();
    },
    get surplus() {
      return over();
    },
    problems: bloom.problems,
  };
}
