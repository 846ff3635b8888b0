import { z } from "zod";
import { monthDaySchema } from "./day";
import { UNITS } from "./words";

const share = z.number("write a share").min(0, "a share from 0 to 1").max(1, "a share from 0 to 1");
const cents = z.int("write whole cents").min(0, "money cannot be negative").max(100_000_000, "at most 1,000,000");

/**
 * The first frost of autumn and the last of spring, as dates that 10, 50 and 90 of 100 years have reached.
 * Autumn: p10 is early (one year in ten has had frost by then), p90 late. Spring: p10 is late (one year in ten has frost
 * after it), p90 early. The sense is that of the US climate normals (NCEI); tables with spring reversed exist.
 */
export const frostDatesSchema = z
  .object({
    firstAutumnP10: monthDaySchema,
    firstAutumnP50: monthDaySchema,
    firstAutumnP90: monthDaySchema,
    lastSpringP10: monthDaySchema,
    lastSpringP50: monthDaySchema,
    lastSpringP90: monthDaySchema,
  })
  .superRefine((frost, context) => {
    if (!(frost.firstAutumnP10 <= frost.firstAutumnP50 && frost.firstAutumnP50 <= frost.firstAutumnP90))
      context.addIssue({
        code: "custom",
        path: ["firstAutumnP50"],
        message: "autumn frost dates must come in order: 10 % first, 90 % last",
      });
    if (!(frost.lastSpringP90 <= frost.lastSpringP50 && frost.lastSpringP50 <= frost.lastSpringP10))
      context.addIssue({
        code: "custom",
        path: ["lastSpringP50"],
        message: "spring frost dates must come in order: 90 % first, 10 % last",
      });
  });
export type FrostDates = z.infer<typeof frostDatesSchema>;

const chance = z.number("write a share from 0 to 1").gt(0, "more than 0").max(1, "at most 1");

/**
 * How likely the stems of a booking will be wanted, by its status: an uncovered stem costs its buy-in price times this, which is the money it is
 * expected to cost, and so the weight of its claim. The built-in shares are our own guess.
 */
export const statusWeightsSchema = z
  .object({ confirmed: chance, held: chance, enquiry: chance })
  .refine((weight) => weight.confirmed > weight.held && weight.held > weight.enquiry, {
    path: ["confirmed"],
    message: "confirmed must weigh more than held, and held more than an enquiry",
  });

/** What keeping and digging cost, and what the farm has of each. The built-in figures are from memory: ask the grower. */
export const winterCostsSchema = z.object({
  wageCentsPerHour: cents,
  digClumpsPerHour: z.number().gt(0, "more than 0"),
  divideClumpsPerHour: z.number().gt(0, "more than 0"),
  replantTubersPerHour: z.number().gt(0, "more than 0"),
  storageCentsPerClump: cents,
  storageLossShare: share,
  divisionsPerClump: z.number().min(0, "at least 0").max(50, "at most 50"),
  tuberCents: cents,
  tubersWantedShare: share,
  leafDepthMetres: z.number().min(0, "at least 0").max(1, "at most 1 metre"),
  leafCentsPerCubicMetre: cents,
  tarpCentsPerSquareMetre: cents,
  coverHoursPerSquareMetre: z.number().min(0, "at least 0").max(10, "at most 10"),
  winterSurvivalShare: share,
  freeBedCentsPerSquareMetre: cents,
  leafCubicMetresAtHand: z.number().min(0, "at least 0").nullable(),
  tarpSquareMetresAtHand: z.number().min(0, "at least 0").nullable(),
  hoursAtHand: z.number().min(0, "at least 0").nullable(),
  keepShareAtMost: share.nullable(),
});
export type WinterCosts = z.infer<typeof winterCostsSchema>;

/** The farm's own settings. `pickingWeekdays`: Monday 1 … Sunday 7. `leadDays`: days from last cut to event for conditioning and design. */
export const farmSchema = z.object({
  name: z.string().trim().min(1, "the farm needs a name").max(120, "a name has at most 120 letters"),
  isInvented: z.boolean(),
  zone: z.string().trim().max(10, "a zone such as 7a"),
  units: z.enum(UNITS),
  pickingWeekdays: z.array(z.int().min(1).max(7)).min(1, "choose at least one picking day"),
  leadDays: z.int("write whole days").min(0, "at least 0 days").max(14, "at most 14 days"),
  orderDaysAhead: z.int("write whole days").min(0, "at least 0 days").max(365, "at most 365 days"),
  spareShare: share,
  frost: frostDatesSchema,
  statusWeights: statusWeightsSchema,
  winter: winterCostsSchema,
});
export type Farm = z.infer<typeof farmSchema>;
