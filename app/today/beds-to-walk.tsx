import { type Day, daysBetween, toDayNumber, yearOf } from "#lib/domain/day";
import { allOf } from "#lib/domain/listed";
import type { Snapshot } from "#lib/domain/snapshot";
import { budWalk } from "#lib/plan/learning/season/bud-walk";
import { countOf } from "#lib/plan/words/numbers";

/** A bed whose buds were looked at within so many days is not walked again: once a week is enough. */
const LOOK_EVERY_DAYS = 7;
/** Beds named before it says how many more. */
const NAMED = 6;

/** The beds whose buds were not looked at this week, by name, and the way to the walk. */
export function BedsToWalk({ snapshot, today }: { snapshot: Snapshot; today: Day }) {
  const stops = budWalk(snapshot, yearOf(today), toDayNumber(today));
  const due = stops.filter(
    ({ lastLook }) => lastLook === null || daysBetween(lastLook.lookedOn, today) >= LOOK_EVERY_DAYS,
  );
  const beds = [...new Set(due.map(({ row }) => row.bed.name))];
  if (beds.length === 0) return null;
  return (
    <section aria-labelledby="walk">
      <h2 id="walk">{countOf(beds.length, "bed")} to walk for buds</h2>
      <p>
        {allOf([...beds.slice(0, NAMED), ...(beds.length > NAMED ? [countOf(beds.length - NAMED, "more bed")] : [])])}.{" "}
        <a href="/beds/buds">Bud walk</a>
      </p>
    </section>
  );
}
