import { addDays, type Day, dayInYear } from "#lib/domain/day";
import type { Snapshot } from "#lib/domain/snapshot";
import { replantedOn } from "#lib/plan/road/grown";
import type { WinterBed } from "./beds";

/**
 * Where a day stands to the winter before a season [K11]. `ahead`: the season before still has weeks to go. `open`: which beds to keep is the question of
 * the day. `over`: tubers go back into the ground, and what was dug cannot be kept any more.
 */
export type KeepingTime = "ahead" | "open" | "over";

/** The decision begins so many days before the first frost reckoned with, which ends the season before. Our assumption. */
const DAYS_BEFORE_FROST = 28;

/**
 * `beds` are the candidates of the season (`winterBeds`). The winter is over on the day the first of them is replanted; without any, on the day
 * of the last spring frost reckoned with.
 */
export function keepingTime(
  { farm }: Pick<Snapshot, "farm">,
  beds: readonly WinterBed[],
  seasonYear: number,
  today: Day,
): KeepingTime {
  const opens = addDays(dayInYear(farm.frost.firstAutumnP50, seasonYear - 1), -DAYS_BEFORE_FROST);
  if (today < opens) return "ahead";
  const replanted = beds.flatMap(({ plantings }) => plantings.map(({ dug }) => replantedOn(dug.planting)));
  const [over = dayInYear(farm.frost.lastSpringP50, seasonYear)] = replanted.sort();
  return today < over ? "open" : "over";
}
