import { z } from "zod";
import { daySchema, monthDaySchema } from "./day-schema";
import { BOOKING } from "./records/booking";
import { EARLIER_ASKS } from "./records/earlier-ask";
import { keptSchema } from "./records/field";
import { FINAL_COUNT } from "./records/final-count";
import { PIECE } from "./records/piece";
import { PLANTING } from "./records/planting";
import { PROMISED_STEMS } from "./records/promised-stems";
import { keptStemLineSchema } from "./records/stem-line";
import { FIRST_SEASON, LAST_SEASON } from "./season-years";
import { STATUSES } from "./words";

/** What a winter uses up, of which a farm has so much at hand. */
export const RESOURCES = ["leaves", "tarp", "hours"] as const;
export type Resource = (typeof RESOURCES)[number];

/** A booking as a what-if keeps it; one of an earlier version had no promises. */
const keptBookingSchema = keptSchema({ ...BOOKING, ...FINAL_COUNT, ...EARLIER_ASKS }).extend({
  unacceptableCropIds: z.array(z.int()),
  pieces: z.array(keptSchema(PIECE)),
  stemLines: z.array(keptStemLineSchema),
  promises: z.array(keptSchema(PROMISED_STEMS)).default([]),
});

const id = z.int();
const crop = z.int().nullable();

/**
 * One thing supposed otherwise than it is. Days shifted count later when positive; a factor of 1 leaves yield as it is; `cropId`
 * null means every crop. `atHand` is in cubic metres of leaves, square metres of tarp or hours; null means as much as wanted.
 */
export const changeSchema = z.discriminatedUnion("kind", [
  z.object({ kind: z.literal("bed-kept"), bedId: id }),
  z.object({ kind: z.literal("bed-dug"), bedId: id }),
  z.object({ kind: z.literal("frost-moved"), firstFrost: monthDaySchema }),
  z.object({
    kind: z.literal("season-shifted"),
    days: z.int("write whole days").min(-60, "at most 60 days earlier").max(60, "at most 60 days later"),
    cropId: crop,
  }),
  z.object({
    kind: z.literal("yield-scaled"),
    factor: z.number("write a number").min(0, "at least 0").max(5, "at most 5 times"),
    cropId: crop,
  }),
  z.object({ kind: z.literal("booking-added"), booking: keptBookingSchema }),
  z.object({ kind: z.literal("booking-moved"), bookingId: id, eventOn: daySchema }),
  z.object({ kind: z.literal("booking-dropped"), bookingId: id }),
  z.object({ kind: z.literal("status-set"), bookingId: id, status: z.enum(STATUSES) }),
  z.object({ kind: z.literal("planting-added"), planting: keptSchema(PLANTING) }),
  z
    .object({
      kind: z.literal("planting-moved"),
      plantingId: id,
      bedId: z.int().nullable(),
      plantedOn: daySchema.nullable(),
    })
    .refine(({ bedId, plantedOn }) => bedId !== null || plantedOn !== null, "say which bed, which day, or both"),
  z.object({ kind: z.literal("planting-removed"), plantingId: id }),
  z.object({
    kind: z.literal("at-hand-set"),
    resource: z.enum(RESOURCES),
    atHand: z.number("write a number").min(0, "at least 0").nullable(),
  }),
]);
export type Change = z.infer<typeof changeSchema>;
export type ChangeOf<Kind extends Change["kind"]> = Extract<Change, { kind: Kind }>;

/** A list of changes under a name, for one season, applied in order. It writes nothing to the farm until it is adopted. */
export const whatIfSchema = z.object({
  id: z.int(),
  name: z.string().trim().min(1, "give it a name").max(80, "a name has at most 80 letters"),
  seasonYear: z.int("write a year").min(FIRST_SEASON, "a year from 1990").max(LAST_SEASON, "a year up to 2200"),
  changes: z.array(changeSchema).max(500, "at most 500 changes"),
});
export type WhatIf = z.infer<typeof whatIfSchema>;
