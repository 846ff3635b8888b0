import type { Snapshot } from "#lib/domain/snapshot";
import { buyInFinder } from "./buy-in";
import { type BuyIn, buying } from "./buying";
import { type Forecast, forecast, frostDayOf, ORDINARY_YEAR } from "./forecast";
import { type Gap, gaps } from "./gaps";
import type { LivedDays } from "./lived-days";
import { type Match, match } from "./match";
import { needs } from "./needs";
import { meetingSeasons } from "./seasons";
import { supplyToDate } from "./supply-to-date";
import { type Week, weeks } from "./weeks";
import { whenAsked } from "./when-asked";
import { type Work, workOf } from "./work";

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
  /** Of all seasons that meet: what every booking could have, enquiries too. */
  readonly match: Match;
  /** How the days before today were lived through, for the plan after a change; null where no day has passed. */
  readonly lived: LivedDays | null;
  /** The first frost reckoned with, as a day number. */
  readonly frostDay: number;
  readonly gaps: readonly Gap[];
  readonly weeks: readonly Week[];
  /** What would close each gap. */
  readonly buying: readonly BuyIn[];
  /** What is to be cut, bought and sold: nothing for an enquiry [N5]. The next three are parts of it. */
  readonly work: Work;
  readonly orders: Work["orders"];
  readonly pickList: Work["pickList"];
  readonly surplus: Work["surplus"];
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
  const isSameDesign = before?.snapshot.recipes === snapshot.recipes && before.snapshot.farm === farm;
  const asked = needs(snapshot, seasons, isSameDesign ? before.match.needs : [], today);
  const { supplies, lived } = supplyToDate({ snapshot, plantings, seasons, needs: asked, today }, before?.lived);
  const matched = match(farm, supplies, asked, buyIn);
  const short = whenAsked(() => gaps(farm, matched, seasonYear));
  const byWeek = whenAsked(() => weeks(farm, matched, short(), seasonYear));
  const couldBuy = whenAsked(() => buying(farm, short(), buyIn));
  const work = workOf({ snapshot, seasonYear, seasons, match: matched, gaps: short, buying: couldBuy }, buyIn);
  return {
    snapshot,
    seasonYear,
    today,
    meetingSeasons: seasons,
    frostDay,
    forecast: bloom,
    match: matched,
    lived,
    get gaps() {
      return short();
    },
    get weeks() {
      return byWeek();
    },
    get buying() {
      return couldBuy();
    },
    work,
    get orders() {
      return work.orders;
    },
    get pickList() {
      return work.pickList;
    },
    get surplus() {
      return work.surplus;
    },
    problems: bloom.problems,
  };
}
