import type { EVENT_DAYS_HABIT, OWN_EVENT_DAYS } from "./records/event-days";
import type { StemAsk } from "./words";

/** A farm's habit, and what a booking says of its own; in days before the event. */
export type EventHabit = Readonly<Record<keyof typeof EVENT_DAYS_HABIT, number>>;
export type OwnEventDays = Readonly<Record<keyof typeof OWN_EVENT_DAYS, number | null>>;

/** The days of one event, each so many days before it: delivery, design, the last cut, and the last cut of what is worn. The earlier a day, the larger. */
export type EventDays = {
  readonly deliverDays: number;
  readonly designDays: number;
  readonly leadDays: number;
  readonly wornLeadDays: number;
};

const NOTHING_SAID: OwnEventDays = { leadDays: null, designDays: null, deliverDays: null };

/** Stands in for a day that is not said: later than none. */
const OPEN = Number.POSITIVE_INFINITY;

/**
 * The days of an event [M12]. What the booking says of itself stands. Of the rest the last cut keeps its distance from an own design, else both theirs from an
 * own delivery, as they are in the farm's habit; and what is not said comes no earlier than an own day before it.
 * @param habit  last cut, design and delivery in their order, as a farm's are
 * @param own    in order too, as a booking's are
 */
export function eventDaysOf(habit: EventHabit, own: OwnEventDays = NOTHING_SAID): EventDays {
  const { leadDays: ownLead, designDays: ownDesign, deliverDays: ownDelivery } = own;
  const moved = ownDelivery === null ? 0 : ownDelivery - habit.deliverDays;
  const deliverDays = ownDelivery ?? Math.min(habit.deliverDays, ownDesign ?? OPEN, ownLead ?? OPEN);
  const designDays = ownDesign ?? Math.min(habit.designDays + moved, ownLead ?? OPEN);
  const leadDays = ownLead ?? habit.leadDays + (ownDesign === null ? moved : ownDesign - habit.designDays);
  const wornLeadDays = Math.max(designDays, leadDays - habit.wornLaterDays);
  return { deliverDays, designDays, leadDays, wornLeadDays };
}

/** Whether stems are for something worn: they are asked to hold out of water. */
export const isWorn = (asks: readonly StemAsk[]): boolean => asks.includes("out of water");
