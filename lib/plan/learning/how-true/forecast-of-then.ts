import { type Day, toDay } from "#lib/domain/day";
import type { Bed } from "#lib/domain/records/bed";
import type { Farm } from "#lib/domain/records/farm-settings";
import type { Snapshot } from "#lib/domain/snapshot";
import type { DailyWeather } from "#lib/domain/weather";
import { type Forecast, forecast } from "#lib/plan/road/forecast";
import { shownSeason } from "../season/season-lesson";
import { asCurvesSay } from "../season/watched-plantings";

/**
 * The forecast of a season as it was on the morning of a day [HT1]: worked out again from what was recorded before the day, moved by what the season had
 * shown by then where the farm goes by that [O5].
 * @param then  as a day number
 */
export function forecastOfThen(snapshot: Snapshot, seasonYear: number, then: number): Forecast {
  const known = knownThen(snapshot, then);
  const shown = known.farm.followsSeason ? shownSeason(known, seasonYear) : null;
  return forecast(shown ? { ...known, shown } : known, seasonYear);
}

/**
 * The farm without what was recorded from a day on: cuts, looks, losses, frosts, sprays and weather; and without the grower's own word of a season, of which
 * nobody wrote down when it was said. All else stands as it does today. Rows that stay are the same objects.
 */
function knownThen(snapshot: Snapshot, then: number): Snapshot {
  const day = toDay(then);
  const { farm, beds, cuts, budLooks, losses, weather } = snapshot;
  return {
    ...asCurvesSay(snapshot),
    farm: withoutFrostsFrom(farm, day),
    beds: beds.map((bed) => withoutSprayFrom(bed, day)),
    cuts: cuts.filter(({ cutOn }) => cutOn < day),
    budLooks: budLooks.filter(({ lookedOn }) => lookedOn < day),
    losses: losses.filter(({ seenOn }) => seenOn < day),
    weather: weather && weatherBefore(weather, then),
  };
}

const withoutFrostsFrom = (farm: Farm, day: Day): Farm =>
  farm.killingFrosts.every((came) => came < day)
    ? farm
    : { ...farm, killingFrosts: farm.killingFrosts.filter((came) => came < day) };

const withoutSprayFrom = (bed: Bed, day: Day): Bed =>
  bed.noEntryFrom === null || bed.noEntryFrom < day ? bed : { ...bed, noEntryFrom: null, noEntryUntil: null };

/** The days of a record before a day; null where there are none. */
function weatherBefore({ firstDay, highC, lowC }: DailyWeather, day: number): DailyWeather | null {
  const dayCount = day - firstDay;
  return dayCount <= 0 ? null : { firstDay, highC: highC.subarray(0, dayCount), lowC: lowC.subarray(0, dayCount) };
}
