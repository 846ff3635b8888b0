import { eventDaysOf } from "#lib/domain/event-days";
import type { Farm } from "#lib/domain/records/farm-settings";
import { ROLES } from "#lib/domain/words";
import { servingWindow } from "./hold-window";
import type { Need } from "./needs";
import type { VarietySupply } from "./supply";

/** A week without an event is measured as if it had one on its Saturday. */
export const SATURDAY_FROM_MONDAY = 5;

/** A day that a week is measured by. `leadDays`: of each role, in the order of `ROLES`, from the last cut to the event. Day number. */
export type MeasuredDay = { readonly eventDay: number; readonly leadDays: readonly number[] };

/** Stands for a role that nobody asks for. */
const NOBODY_ASKS = Number.POSITIVE_INFINITY;

/**
 * The event days that a week is measured by, ascending: those of its needs, or its Saturday. Of a role the last cut is the latest of the day's needs of it; of
 * a role that none of them asks for, the latest of their bookings, what is worn aside; of a week without an event, the farm's habit [G2].
 */
export function measuredDays(farm: Farm, monday: number, needs: readonly Need[]): MeasuredDay[] {
  if (needs.length === 0)
    return [{ eventDay: monday + SATURDAY_FROM_MONDAY, leadDays: ROLES.map(() => eventDaysOf(farm).leadDays) }];
  const byDay = new Map<number, Need[]>();
  for (const need of needs) {
    const ofDay = byDay.get(need.eventDay);
    if (ofDay) ofDay.push(need);
    else byDay.set(need.eventDay, [need]);
  }
  return [...byDay]
    .sort(([a], [b]) => a - b)
    .map(([eventDay, ofDay]) => {
      const usual = Math.min(...ofDay.map(({ booking }) => eventDaysOf(farm, booking).leadDays));
      const least = ROLES.map((role) =>
        ofDay.reduce((days, need) => (need.role === role ? Math.min(days, need.leadDays) : days), NOBODY_ASKS),
      );
      return { eventDay, leadDays: least.map((days) => (days === NOBODY_ASKS ? usual : days)) };
    });
}

/**
 * Stems within reach of some days, by role in the order of `ROLES`: of every variety that can take the role, cut in the hold window of one of the
 * days, each counted once. @param days ascending
 */
export function reachByRole(supplies: readonly VarietySupply[], days: readonly MeasuredDay[]): number[] {
  const byRole = ROLES.map(() => 0);
  for (const roles of rolesCutAlike(days))
    for (const supply of supplies) {
      if (!roles.some((index) => supply.crop.roles.includes(ROLES[index]))) continue;
      const reachable = reachOf(supply, days, roles[0]);
      if (reachable === 0) continue;
      for (const index of roles) if (supply.crop.roles.includes(ROLES[index])) byRole[index] += reachable;
    }
  return byRole;
}

/** The roles by their place, those together that have the same last cut on every day: mostly all. */
function rolesCutAlike(days: readonly MeasuredDay[]): number[][] {
  const alike = new Map<string, number[]>();
  ROLES.forEach((_, index) => {
    const key = days.map(({ leadDays }) => leadDays[index]).join();
    alike.set(key, [...(alike.get(key) ?? []), index]);
  });
  return [...alike.values()];
}

/** Stems of a supply that are cut in the hold window of one of the days, for a role by its place. */
function reachOf(supply: VarietySupply, measured: readonly MeasuredDay[], role: number): number {
  const { days, stems } = supply;
  let reachable = 0;
  let place = 0;
  for (const { eventDay, leadDays } of measured) {
    const { earliest, latest } = servingWindow(eventDay, leadDays[role], supply);
    while (place < days.length && days[place] < earliest) place++;
    for (; place < days.length && days[place] <= latest; place++) reachable += stems[place];
  }
  return reachable;
}
