import { dayInYear, toDayNumber, yearOf } from "#lib/domain/day";
import { groupsOf } from "#lib/domain/groups-of";
import type { Snapshot } from "#lib/domain/snapshot";
import { truthOf } from "./compared";
import { forecastOfThen } from "./forecast-of-then";
import { saidBy } from "./said-by";
import { WINTER_DAY } from "./truth";
import { whatCame } from "./what-came";

/** By crop id, how many days later than winter said first cuts came in a season, on the mean over its plantings. */
export type WinterBefore = { readonly season: number; readonly daysLateOf: ReadonlyMap<number, number> };

/** So many seasons before are looked at, the latest ones. Our choice. */
const SEASONS_BEFORE = 3;

/** The seasons before one of which anything was cut or looked at, the latest first. */
export function recordedBefore({ cuts, budLooks }: Snapshot, seasonYear: number): number[] {
  const years = [...cuts.map(({ cutOn }) => yearOf(cutOn)), ...budLooks.map(({ lookedOn }) => yearOf(lookedOn))];
  return [...new Set(years)]
    .filter((year) => year < seasonYear)
    .sort((a, b) => b - a)
    .slice(0, SEASONS_BEFORE);
}

/** How true winter's first cuts were in a season, crop by crop: whether a crop is off the same way each year. */
export function winterBefore(snapshot: Snapshot, season: number): WinterBefore {
  const winterDay = toDayNumber(dayInYear(WINTER_DAY, season));
  const said = saidBy(forecastOfThen(snapshot, season, winterDay));
  const compared = whatCame(snapshot, season).firstCuts.flatMap((came) => {
    const saidDay = said.firstCutOf(came);
    return saidDay === null || came.day < winterDay ? [] : [{ cropId: came.crop.id, cameDay: came.day, saidDay }];
  });
  const ofCrop = groupsOf(compared, ({ cropId }) => cropId);
  const late = [...ofCrop].map(([id, firstCuts]) => [id, truthOf(firstCuts, []).timing?.daysLate ?? 0] as const);
  return { season, daysLateOf: new Map(late) };
}
