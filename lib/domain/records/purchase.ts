import { z } from "zod";
import { daySchema } from "../day-schema";
import { cents, count, field, open, recordSchema, rowId } from "./field";
import { day, word } from "./kinds";
import { BOOKING_NAMES } from "./names";
import { VARIETY_NAMES } from "./variety";

const ordered = {
  supplier: field(word, z.string().trim().min(1, "name the supplier").max(120, "a name has at most 120 letters"), {
    label: "Supplier",
  }),
  orderedOn: field(day, daySchema, { label: "Ordered on" }),
  arrivesOn: field(day, daySchema, { label: "Arrives on" }),
  bunchCount: count({ of: "bunches", least: 1, most: 10_000, label: "Bunches", heading: "bunches" }),
  bunchStems: count({ of: "stems", least: 1, most: 1_000, label: "Stems a bunch", heading: "stems_a_bunch" }),
  bunchCents: open(cents({ label: "A bunch costs", heading: "bunch_cents" })),
  daysToOpen: count({
    of: "days",
    unit: "days",
    least: 0,
    most: 30,
    absent: 0,
    label: "Days to open",
    hint: "From the day they arrive until they can be used.",
  }),
};

const stems = {
  stemsForBooking: count({
    of: "stems",
    least: 0,
    most: 1_000_000,
    absent: 0,
    label: "Stems for the booking",
    hint: "What the bunches hold beyond is for anybody.",
  }),
};

const arrived = {
  arrivedOn: open(field(day, daySchema, { label: "Arrived on" })),
  arrivedStems: open(count({ of: "stems", least: 0, most: 1_000_000, label: "Stems that arrived" })),
};

/** A purchase as a form writes it. `bookingId` null: for anybody. */
export const PURCHASE = {
  varietyId: rowId("Variety"),
  ...ordered,
  bookingId: open(rowId("Booking")),
  ...stems,
  ...arrived,
};

/** A purchase, a row. `client` and `event_on` name the booking it is for, both or neither; the two columns of what arrived are empty until it does. */
export const PURCHASE_SHEET = {
  ...VARIETY_NAMES,
  ...ordered,
  client: open(BOOKING_NAMES.client),
  eventOn: open(field(day, daySchema, { label: "Day of the event" })),
  ...stems,
  ...arrived,
};

type Days = {
  readonly orderedOn: string;
  readonly arrivesOn: string;
  readonly arrivedOn: string | null;
  readonly arrivedStems: number | null;
};

/** What is wrong with the fields of a purchase together, each with the field that mends it; empty when nothing is. */
export const oddPurchase = ({ orderedOn, arrivesOn, arrivedOn, arrivedStems }: Days) => [
  ...(arrivesOn < orderedOn
    ? [{ field: "arrivesOn" as const, message: "it arrives before it was ordered: mend one of the two days" }]
    : []),
  ...((arrivedOn === null) !== (arrivedStems === null)
    ? [
        {
          field: "arrivedStems" as const,
          message: "the day it arrived and the stems go together: fill both, or neither",
        },
      ]
    : []),
];

const check = (
  purchase: Days,
  context: { addIssue: (issue: { code: "custom"; path: string[]; message: string }) => void },
) => {
  for (const { field, message } of oddPurchase(purchase)) context.addIssue({ code: "custom", path: [field], message });
};

/** A purchase before it has an id. */
export const purchaseDraftSchema = recordSchema(PURCHASE).superRefine(check);
export type PurchaseDraft = z.infer<typeof purchaseDraftSchema>;

/**
 * Stems bought in from a supplier: one flower of an order, to arrive on a day. `bunchCents` is null where no price is told. Of the stems as many as
 * `stemsForBooking` are the booking's own, the rest are for anybody. `arrivedOn` and `arrivedStems` are null until it is written down that they came;
 * fewer than were ordered is a short delivery, and 0 says that none came.
 */
export const purchaseSchema = recordSchema({ id: rowId("Id"), ...PURCHASE }).superRefine(check);
export type Purchase = z.infer<typeof purchaseSchema>;
