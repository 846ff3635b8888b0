import { farmBefore, hasChangedSince } from "#db/journal/farm-before";
import { toDayNumber, yearOf } from "#lib/domain/day";
import type { Snapshot } from "#lib/domain/snapshot";
import { type MovedBooking, movedBookings } from "#lib/plan/road/moved-promises";
import { type Plan, plan } from "#lib/plan/road/plan";
import { dayBegan, today } from "../clock";
import { asShown, farmDatabase, farmFile, loadPlan, whileHeld } from "../load";

type Kept = { readonly key: string; readonly snapshot: Snapshot | null; plan: Plan | null };

/** Kept for the life of the server, across the bundles that Next makes: the farm as it stood at the end of yesterday, which no write of today changes. */
const shared: typeof globalThis & { yesterdayKept?: Kept } = globalThis;

/** Whose stems moved since the end of yesterday, in the season of the year; null where it is no longer known how the farm stood then. */
export function movedSinceYesterday(): MovedBooking[] | null {
  const yesterday = whileHeld(yesterdayIfChanged, shared.yesterdayKept ?? null);
  // Nothing was written since: nothing moved, and no second plan has to be made.
  if (yesterday === null) return [];
  if (yesterday.snapshot === null) return null;
  const now = loadPlan(yearOf(today()));
  // Both are plans of today: what moves is what was written since, and never a day's passing.
  yesterday.plan ??= plan(asShown(yesterday.snapshot), now.seasonYear, undefined, null, toDayNumber(today()));
  return movedBookings(yesterday.plan, now);
}

/** The farm as it stood at the end of yesterday; null where nothing was written since. */
function yesterdayIfChanged(): Kept | null {
  const began = dayBegan();
  if (!hasChangedSince(farmDatabase(), began)) return null;
  const key = `${began} ${today()} ${farmFile().turn}`;
  if (shared.yesterdayKept?.key !== key)
    shared.yesterdayKept = { key, snapshot: farmBefore(farmDatabase(), began), plan: null };
  return shared.yesterdayKept;
}
