import { apportion, evenPart } from "#lib/maths/apportion";
import { wholeStems } from "./grown";
import { type ShareFrom, thinnedBy } from "./plants-seen";

/** Plants that stand and yield from a day on; not whole, since a good year counts as more of them. Day numbers; the first stands from the start. */
export type PlantsFrom = { readonly fromDay: number; readonly plantCount: number };

/** Stems that open on each day of the weeks, for so many plants; whole, and exact in sum [F3], but for the days that heat takes away [F11]. */
export function opening(
  weeks: readonly number[],
  plants: readonly PlantsFrom[],
  opensFrom: number,
  heatEnd: number | null,
): Int32Array {
  const openDays = heatEnd === null ? Number.POSITIVE_INFINITY : Math.max(0, heatEnd - opensFrom);
  const days = new Int32Array(Math.min(weeks.length * 7, openDays));
  const perPlant = weeks.reduce((sum, stems) => sum + stems, 0);
  // Where plants were counted anew, what opens from that day on is what these plants would give.
  for (const { fromDay, plantCount } of plants) {
    const weekStems = apportion(wholeStems(plantCount * perPlant), weeks);
    for (let index = Math.max(0, fromDay - opensFrom); index < days.length; index++)
      days[index] = evenPart(weekStems[Math.floor(index / 7)], index % 7, 7);
  }
  return days;
}

/**
 * Of stems that open day by day, those that losses leave: with plants that are gone go their stems from that day on, and what stands open on them [PL1].
 * @param takenOn  the day on which a stem that opens on a day is cut, or that day itself where it never is
 */
export function thinnedOpening(
  openingStems: Int32Array,
  losses: readonly ShareFrom[],
  takenOn: (index: number) => number,
): Int32Array {
  if (losses.length === 0) return openingStems;
  const thinned = thinnedBy(losses);
  return openingStems.map((stems, index) => thinned(stems, takenOn(index)));
}
