import type { Day } from "#lib/domain/day";
import type { Snapshot } from "#lib/domain/snapshot";
import { type Adoption, choosesBeds } from "#lib/plan/what-if/adoption";
import { winterBeds } from "#lib/plan/winter/beds";
import { keepingTime } from "#lib/plan/winter/keeping-time";

/** Whether adopting this would keep or dig beds in a winter that is over [K11]. */
export const isOfWinterOver = (toWrite: Adoption, farm: Snapshot, seasonYear: number, today: Day): boolean =>
  choosesBeds(toWrite, farm) && keepingTime(farm, winterBeds(farm, seasonYear), seasonYear, today) === "over";
