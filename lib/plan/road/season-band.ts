import { toDayNumber } from "#lib/domain/day";
import { ROLES } from "#lib/domain/words";
import type { Plan } from "./plan";
import { measuredDays, reachByRole } from "./reach";
import { unusualYears } from "./unusual-years";

/** Stems within reach of a week in a poor and in a rich year. */
export type ReachBand = { readonly lowStems: number; readonly highStems: number };

/**
 * How far the reach of each week and role may lie from the plan's: the least and the most over years that are early or late, light or
 * heavy, with an early frost in the light ones and a late frost in the heavy [G4]. Quick and coarse: four kinds of year, no chances.
 * @returns one row a week of the plan, one band a role in the order of `ROLES`
 */
export function seasonBand(plan: Plan): ReachBand[][] {
  const { snapshot, weeks, match } = plan;
  const { poor, rich } = unusualYears(plan);
  return weeks.map(({ monday, roles }) => {
    const first = toDayNumber(monday);
    const ofWeek = match.needs.filter(({ eventDay }) => eventDay >= first && eventDay < first + 7);
    const days = measuredDays(snapshot.farm, first, ofWeek);
    const reaches = [...poor, ...rich].map((supply) => reachByRole(supply, days));
    const bandOf = (index: number): ReachBand => {
      const all = [...reaches.map((reach) => reach[index]), roles[index].reachableStems];
      return { lowStems: Math.min(...all), highStems: Math.max(...all) };
    };
    return ROLES.map((_, index) => bandOf(index));
  });
}
