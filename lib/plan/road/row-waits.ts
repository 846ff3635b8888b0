import { type Day, toDay, toDayNumber } from "#lib/domain/day";
import { eventDaysOf } from "#lib/domain/event-days";
import type { Farm } from "#lib/domain/records/farm-settings";
import type { PlantingForecast } from "./forecast";
import type { PickLine } from "./pick-list";
import { stemsThatWait, waitsUntil } from "./waiting-stems";

/**
 * What becomes of a row of the list that is left for the next picking day [T14]: `until`, the first of its beds' next days; `waitingStems` of `stems` still keep in the field
 * then; `tooLate` are bookings, by name, for whose events that day is past the last on which a stem may be cut [M1].
 */
export type RowWaits = {
  readonly until: Day;
  readonly stems: number;
  readonly waitingStems: number;
  readonly tooLate: readonly string[];
  /** Whether any stem that keeps is still in time for a booking that it is asked for. */
  readonly isOfUse: boolean;
};

/** What of a row's lines can be left. @param lines  of one variety in one bed, not recorded; day numbers in them */
export function rowWaits(lines: readonly PickLine[], farm: Farm, day: Day): RowWaits | null {
  const asked = new Map<PlantingForecast, { from: number; stems: number }>();
  for (const { stand, stems } of lines) {
    if (stand.kind !== "planting") continue;
    const from = stand.leftFrom ?? toDayNumber(day);
    asked.set(stand.planting, { from, stems: stems + (asked.get(stand.planting)?.stems ?? 0) });
  }
  const [first] = asked.keys();
  if (!first) return null;
  const until = waitsUntil(farm, first, toDayNumber(day));
  const isTooLate = ({ booking }: PickLine) =>
    toDayNumber(booking.eventOn) - eventDaysOf(farm, booking).leadDays < until;
  const waitingStems = [...asked].reduce(
    (sum, [planting, { from, stems }]) => sum + Math.min(stems, stemsThatWait(planting, from, until, farm)),
    0,
  );
  return {
    until: toDay(until),
    stems: lines.reduce((sum, { stems }) => sum + stems, 0),
    waitingStems,
    tooLate: [...new Set(lines.filter(isTooLate).map(({ booking }) => booking.client))],
    isOfUse: waitingStems > 0 && !lines.every(isTooLate),
  };
}
