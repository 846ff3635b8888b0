import { dayInYear, toDayNumber } from "#lib/domain/day";
import { ROLES } from "#lib/domain/words";
import { forecast, type YearKind } from "./forecast";
import type { Plan } from "./plan";
import { measuredDays, reachByRole } from "./reach";
import { supplyOf } from "./supply";

/** Stems within reach of a week in a poor and in a rich year. */
export type Band = { readonly lowStems: number; readonly highStems: number };

/**
 * One year in ten is later, or lighter, than this: 1.28 spreads (the normal distribution's 90 % point), times √½, since we take half of a planting's variance to be
 * the year's, shared by all. Our assumption, as in the simulation.
 */
const ONE_YEAR_IN_TEN = 1.2816 * Math.SQRT1_2;

/**
 * How far the reach of each week and role may lie from the plan's: the least and the most over years that are early or late, light or
 * heavy, with an early frost in the light ones and a late frost in the heavy [G4]. Quick and coarse; the simulation says how likely.
 * @returns one row a week of the plan, one band a role in the order of `ROLES`
 */
export function seasonBand(plan: Plan): Band[][] {
  const { snapshot, seasonYear, meetingSeasons, weeks, match } = plan;
  const { frost } = snapshot.farm;
  const frostOn = (monthDay: typeof frost.firstAutumnP10) => toDayNumber(dayInYear(monthDay, seasonYear));
  const years: { kind: YearKind; frostDay: number }[] = [-1, 1].flatMap((late) => [
    {
      kind: { lateness: late * ONE_YEAR_IN_TEN, heaviness: -ONE_YEAR_IN_TEN },
      frostDay: frostOn(frost.firstAutumnP10),
    },
    { kind: { lateness: late * ONE_YEAR_IN_TEN, heaviness: ONE_YEAR_IN_TEN }, frostDay: frostOn(frost.firstAutumnP90) },
  ]);
  const others = meetingSeasons
    .filter((season) => season !== seasonYear)
    .flatMap((season) => forecast(snapshot, season).plantings);
  const supplies = years.map(({ kind, frostDay }) =>
    supplyOf(snapshot, [...forecast(snapshot, seasonYear, frostDay, kind).plantings, ...others], ...meetingSeasons),
  );
  const eventDays = [...new Set(match.needs.map((need) => need.eventDay))];
  return weeks.map(({ monday, roles }) => {
    const first = toDayNumber(monday);
    const days = measuredDays(
      first,
      eventDays.filter((day) => day >= first && day < first + 7),
    );
    const reaches = supplies.map((supply) => reachByRole(snapshot.farm, supply, days));
    const bandOf = (index: number): Band => {
      const all = [...reaches.map((reach) => reach[index]), roles[index].reachableStems];
      return { lowStems: Math.min(...all), highStems: Math.max(...all) };
    };
    return ROLES.map((_, index) => bandOf(index));
  });
}
