import { yearOf } from "#lib/domain/day";
import type { PickLine } from "#lib/plan/pick-list";
import { chosenLines, type PickChoice } from "#lib/plan/pick-sheets";
import { loadFarm, loadPlan } from "../load";
import { yearOfChoice } from "./choice";

/** The lines that a choice asks for, from the season it lies in; null when it names a booking that is not there. */
export function loadLines(choice: PickChoice): PickLine[] | null {
  const year = yearOfChoice(choice) ?? yearOfBooking(choice);
  return year === null ? null : chosenLines(loadPlan(year).pickList, choice);
}

function yearOfBooking(choice: PickChoice): number | null {
  if (!("bookingId" in choice)) return null;
  const booking = loadFarm().bookings.find(({ id }) => id === choice.bookingId);
  return booking ? yearOf(booking.eventOn) : null;
}
