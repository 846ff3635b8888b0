import { addDays, type Day, withWeekday } from "#lib/domain/day";
import { type EventDays, type EventHabit, eventDaysOf } from "#lib/domain/event-days";
import type { Booking } from "#lib/domain/records/booking";
import { isDelivery } from "#lib/plan/road/orders";
import { inWords } from "./numbers";

/**
 * The days of an event in the order in which they come: "cut by Thu 10 Jun, what is worn by Fri 11 Jun; design Fri 11 Jun; deliver Sat 12 Jun". Without a day of
 * the event: "cut by two days before; design the day before; deliver on the day".
 */
export const eventDaysInWords = (eventOn: Day | null, days: EventDays): string =>
  inOrder(days, (daysBefore) =>
    eventOn === null ? daysBeforeInWords(daysBefore) : withWeekday(addDays(eventOn, -daysBefore)),
  );

/** A farm's habit in the days of the week: "cut by Thursday; design Friday; deliver Saturday". A week and more before they are counted. */
export const eventDaysOfSaturday = (habit: EventHabit): string =>
  inOrder(eventDaysOf(habit), (daysBefore) =>
    daysBefore > SATURDAY ? daysBeforeInWords(daysBefore) : DAYS_TO_SATURDAY[SATURDAY - daysBefore],
  );

const DAYS_TO_SATURDAY = ["Sunday", "Monday", "Tuesday", "Wednesday", "Thursday", "Friday", "Saturday"];
const SATURDAY = DAYS_TO_SATURDAY.length - 1;

function inOrder(days: EventDays, on: (daysBefore: number) => string): string {
  const worn = days.wornLeadDays === days.leadDays ? "" : `, what is worn by ${on(days.wornLeadDays)}`;
  return `cut by ${on(days.leadDays)}${worn}; design ${on(days.designDays)}; deliver ${on(days.deliverDays)}`;
}

/** "on the day", "the day before", "three days before" */
export const daysBeforeInWords = (daysBefore: number): string =>
  daysBefore === 0 ? "on the day" : daysBefore === 1 ? "the day before" : `${inWords(daysBefore)} days before`;

/**
 * When what is cut for somebody is made up, and when it is delivered unless on the day of the event, which stands beside it already: "design Fri 11 Jun". Of a
 * standing order in stems nothing is made up: then it is empty.
 */
export function benchDaysInWords(booking: Booking, farm: EventHabit): string {
  if (isDelivery(booking) && booking.pieces.length === 0) return "";
  const { designDays, deliverDays } = eventDaysOf(farm, booking);
  const on = (daysBefore: number) => withWeekday(addDays(booking.eventOn, -daysBefore));
  return `design ${on(designDays)}${deliverDays === 0 ? "" : `, deliver ${on(deliverDays)}`}`;
}
