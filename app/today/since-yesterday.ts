import { farmBefore, hasChangedSince } from "#db/journal/farm-before";
import { toDayNumber, yearOf } from "#lib/domain/day";
import type { Snapshot } from "#lib/domain/snapshot";
import { type MovedBooking, movedBookings } from "#lib/plan/road/moved-promises";
import { type Plan, plan } from "#lib/plan/road/plan";
import { dayBegan, today } from "../clock";
import { asShown, farmDatabase, farmFile, loadPlan } from "../load";

type Kept = { readonly key: string; readonly snapshot: Snapshot | null; plan: Plan | null };

/** Kept for the life of the server, across the bundles that Next makes: the farm as it stood at the end of yesterday, which no write of today changes. */
const shared: typeof globalThis & { yesterdayKept?: Kept } = globalThis;

/** Whose stems moved since the end of yesterday, in the season of the year; null where it is no longer known how the farm stood then. */
export function movedSinceYesterday(): MovedBooking[] | null {
  const began = dayBegan();
  // Nothing was written since: nothing moved, and no second plan has to be made.
  if (!hasChangedSince(farmDatabase(), began)) return [];
  const key = `${began} ${today()} ${farmFile().turn}`;
  if (shared.yesterdayKept?.key !== key)
    shared.yesterdayKept = { key, snapshot: farmBefore(farmDatabase(), began), plan: null };
  const kept = shared.yesterdayKept;
  if (kept.snapshot === null) return null;
  const now = loadPlan(yearOf(today()));
  // Both are plans of today: what moves is what was written since, and never a day's passing.
  kept.plan ??= plan(asShown(kept.snapshot), now.seasonYear, undefined, null, toDayNumber(today()));
  return movedBookings(kept.plan, now);
}
