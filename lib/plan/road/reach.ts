import type { Farm } from "#lib/domain/records/farm-settings";
import { ROLES } from "#lib/domain/words";
import { servingWindow } from "./hold-window";
import type { VarietySupply } from "./supply";

/** A week without an event is measured as if it had one on its Saturday. */
export const SATURDAY_FROM_MONDAY = 5;

/** The event days that a week is measured by: its own, or its Saturday. Day numbers, ascending. */
export const measuredDays = (monday: number, eventDays: readonly number[]): number[] =>
  eventDays.length ? [...new Set(eventDays)].sort((a, b) => a - b) : [monday + SATURDAY_FROM_MONDAY];

/**
 * Stems within reach of some event days, by role in the order of `ROLES`: of every variety that can take the role, cut in the hold window of one of the
 * days, each counted once. @param eventDays ascending day numbers
 */
export function reachByRole(farm: Farm, supplies: readonly VarietySupply[], eventDays: readonly number[]): number[] {
  const byRole = ROLES.map(() => 0);
  for (const supply of supplies) {
    const { crop, days, stems } = supply;
    let reachable = 0;
    let place = 0;
    for (const eventDay of eventDays) {
      const { earliest, latest } = servingWindow(eventDay, farm.leadDays, supply);
      while (place < days.length && days[place] < earliest) place++;
      for (; place < days.length && days[place] <= latest; place++) reachable += stems[place];
    }
    if (reachable > 0)
      ROLES.forEach((role, index) => {
        if (crop.roles.includes(role)) byRole[index] += reachable;
      });
  }
  return byRole;
}
