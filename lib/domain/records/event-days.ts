import { count, open } from "./field";

/** So many days before an event any of its days may lie, at most. */
export const MOST_DAYS_BEFORE = 14;

const daysBefore = { of: "days", unit: "days", least: 0, most: MOST_DAYS_BEFORE };

/**
 * The farm's habit, in days before the event; 0 is its own day. `wornLaterDays`: by how many days the last cut for what is worn may come later than for the
 * rest, which an older farm has never said and so is none there. That design is on the day before and delivery on the day, and that worn pieces are cut a
 * day later, is common practice.
 */
export const EVENT_DAYS_HABIT = {
  leadDays: count({ ...daysBefore, label: "Last cut before the event", hint: "Time to condition and to design." }),
  wornLaterDays: count({
    ...{ of: "days", unit: "days", least: 0, most: 7, absent: 0, heading: "worn_later_days" },
    label: "What is worn may be cut later, by",
    hint: "Stems that are asked to hold out of water: boutonnieres, corsages, crowns. Never after the design day.",
  }),
  designDays: count({
    ...daysBefore,
    ...{ absent: 1, heading: "design_days_before", label: "Design before the event" },
    hint: "The day on which it is made up.",
  }),
  deliverDays: count({
    ...daysBefore,
    ...{ absent: 0, heading: "delivery_days_before", label: "Delivery before the event" },
    hint: "0: on the day itself.",
  }),
};

/** A booking's own days, in days before its event; null where they follow from the others and the farm's habit. They move with the event. */
export const OWN_EVENT_DAYS = {
  leadDays: open(count({ ...daysBefore, heading: "last_cut_days_before", label: "Last cut" })),
  designDays: open(count({ ...daysBefore, heading: "design_days_before", label: "Design" })),
  deliverDays: open(count({ ...daysBefore, heading: "delivery_days_before", label: "Delivery" })),
};

type OwnDays = Record<keyof typeof OWN_EVENT_DAYS, number | null>;

/** What is wrong with the days of an event together, each with the field that mends it; empty when nothing is. */
export function oddEventDays({
  leadDays,
  designDays,
  deliverDays,
}: OwnDays): { readonly field: keyof OwnDays; readonly message: string }[] {
  const isAfter = (one: number | null, other: number | null) => one !== null && other !== null && one < other;
  return [
    ...(isAfter(leadDays, designDays)
      ? [
          {
            field: "leadDays" as const,
            message: "the last cut is after the design day: choose an earlier cut or a later design day",
          },
        ]
      : isAfter(leadDays, deliverDays)
        ? [
            {
              field: "leadDays" as const,
              message: "the last cut is after the delivery: choose an earlier cut or a later delivery",
            },
          ]
        : []),
    ...(isAfter(designDays, deliverDays)
      ? [
          {
            field: "designDays" as const,
            message: "the design is after the delivery: choose an earlier design day or a later delivery",
          },
        ]
      : []),
  ];
}
