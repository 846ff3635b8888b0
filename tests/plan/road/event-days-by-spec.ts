import type { Booking } from "#lib/domain/records/booking";
import type { Farm } from "#lib/domain/records/farm-settings";
import type { StemAsk } from "#lib/domain/words";

type Habit = Pick<Farm, "leadDays" | "wornLaterDays" | "designDays" | "deliverDays">;
type Own = Pick<Booking, "leadDays" | "designDays" | "deliverDays">;

/** The days of an event by a slow second method: what rule M12 says, case by case, one for each of the eight ways in which a booking may have days of its own. */
export function eventDaysBySpec(habit: Habit, own: Own) {
  const [cut, design, delivery] = [own.leadDays ?? -1, own.designDays ?? -1, own.deliverDays ?? -1];
  const toDesign = habit.designDays - habit.deliverDays;
  const toCut = habit.leadDays - habit.designDays;
  const said = [own.leadDays, own.designDays, own.deliverDays].map((days) => (days === null ? "-" : "x")).join("");
  const least = (a: number, b: number) => Math.min(a, b);
  const cases: Record<string, [number, number, number]> = {
    "---": [habit.leadDays, habit.designDays, habit.deliverDays],
    "--x": [delivery + toDesign + toCut, delivery + toDesign, delivery],
    "-x-": [design + toCut, design, least(habit.deliverDays, design)],
    "-xx": [design + toCut, design, delivery],
    "x--": [cut, least(habit.designDays, cut), least(habit.deliverDays, cut)],
    "x-x": [cut, least(delivery + toDesign, cut), delivery],
    "xx-": [cut, design, least(habit.deliverDays, design)],
    xxx: [cut, design, delivery],
  };
  const [leadDays, designDays, deliverDays] = cases[said];
  let wornLeadDays = leadDays;
  for (let later = 0; later < habit.wornLaterDays && wornLeadDays > designDays; later++) wornLeadDays--;
  return { leadDays, designDays, deliverDays, wornLeadDays };
}

/** How many days before its event the last stem of a line may be cut. */
export function lastCutBySpec(habit: Habit, own: Own, asks: readonly StemAsk[]): number {
  const { leadDays, wornLeadDays } = eventDaysBySpec(habit, own);
  return asks.some((ask) => ask === "out of water") ? wornLeadDays : leadDays;
}
