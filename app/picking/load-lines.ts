import { yearOf } from "#lib/domain/day";
import type { PickLine } from "#lib/plan/road/pick-list";
import { chosenLines, type PickChoice } from "#lib/plan/road/pick-sheets";
import { loadFarm, loadPlan } from "../load";
import { yearsOfChoice } from "./choice";

/** The lines that a choice asks for, from every season it touches; null when it names a booking that is not there. */
export function loadLines(choice: PickChoice): PickLine[] | null {
  if (!("bookingId" in choice))
    return yearsOfChoice(choice).flatMap((year) => chosenLines(loadPlan(year).pickList, choice));
  const booking = loadFarm().bookings.find(({ id }) => id === choice.bookingId);
  return booking ? chosenLines(loadPlan(yearOf(booking.eventOn)).pickList, choice) : null;
}
