import { cookies } from "next/headers";
import type { Day } from "#lib/domain/day";
import { isSeasonYear } from "#lib/domain/season-years";
import { today } from "../clock";

export const SEASON_COOKIE = "season";

/** The season that lies ahead of a day: its own year while events can still come, the next from November on. */
const seasonAhead = (day: Day): number => Number(day.slice(0, 4)) + (day.slice(5) >= "11-01" ? 1 : 0);

/** The season that all screens show: the one last chosen, else the one ahead. */
export async function seasonYear(): Promise<number> {
  const chosen = Number((await cookies()).get(SEASON_COOKIE)?.value);
  return isSeasonYear(chosen) ? chosen : seasonAhead(today());
}
