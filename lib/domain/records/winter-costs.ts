import { z } from "zod";
import { cents, count, field, likelihood, number, open, recordSchema, share } from "./field";
import { choice } from "./kinds";

/** By what bookings still to come are expected [K12]. */
export const EXPECTED_FROM = ["a number", "last season"] as const;

const perHour = (label: string, unit: string) => number({ above: 0, unit, label });
const atHand = (label: string, about: { measure?: "volume" | "area"; unit?: string }) =>
  open(number({ least: 0, label, ...about }));

export const WINTER_COSTS = {
  wageCentsPerHour: cents({ label: "An hour of work costs" }),
  digClumpsPerHour: perHour("Digging", "clumps per hour"),
  divideClumpsPerHour: perHour("Washing, dividing, packing", "clumps per hour"),
  replantTubersPerHour: perHour("Replanting in spring", "tubers per hour"),
  storageCentsPerClump: cents({ label: "Storage of a clump" }),
  storageLossShare: share({
    label: "Lost in store",
    hint: "7.5 % to start from: the middle of 5 to 10 %, published by the American Dahlia Society.",
  }),
  divisionsPerClump: number({ least: 0, most: 50, unit: "tubers", label: "Tubers from a clump" }),
  tuberCents: cents({ label: "A tuber costs" }),
  tubersWantedShare: share({
    label: "Of the tubers gained, wanted",
    hint: "For more beds or for sale; only these save money.",
  }),
  leafDepthMetres: number({
    least: 0,
    most: 1,
    of: "metres",
    measure: "depth",
    label: "Depth of leaves that must stay",
    hint: "8 inches (20 cm) to start from: published for straw in North Carolina.",
  }),
  leafSettlingShare: number({
    absent: 0,
    least: 0,
    most: 0.9,
    measure: "percent",
    label: "Leaves settle by",
    hint: "More is laid than must stay: at 20 %, 10 inches for 8. No published figure was found.",
  }),
  leafEdgeMetres: number({
    absent: 0,
    least: 0,
    most: 3,
    of: "metres",
    measure: "depth",
    label: "Leaves past every edge of the bed",
  }),
  leafCentsPerCubicMetre: cents({ measure: "dollarsPerVolume", label: "Leaves cost" }),
  leafHaulHoursPerCubicMetre: number({
    absent: 0,
    least: 0,
    most: 100,
    measure: "hoursPerVolume",
    label: "Hauling leaves",
    hint: "Loading, driving and tipping: hours of the winter like any other.",
  }),
  tarpEdgeMetres: number({
    absent: 0,
    least: 0,
    most: 3,
    of: "metres",
    measure: "depth",
    label: "Tarp past every edge of the bed",
    hint: "About 16 inches (40 cm) a side to hold it down and lead water off.",
  }),
  tarpCentsPerSquareMetre: cents({ measure: "dollarsPerArea", label: "Tarp for a winter costs" }),
  coverHoursPerSquareMetre: number({ least: 0, most: 10, measure: "hoursPerArea", label: "Covering and uncovering" }),
  winterSurvivalShare: share({
    label: "Of a hundred clumps kept, alive in spring",
    hint: "No published figure was found. What do you expect of your ground and your winters? The answer moves with this number more than with any other; Keep or dig shows how.",
  }),
  replantDeadShare: share({
    absent: 0,
    label: "Of a hundred clumps dead in spring, replanted",
    hint: "A tuber and its planting are then paid for, and it blooms as late as a replanted one. A place left empty costs nothing and gives nothing.",
  }),
  freeBedCentsPerSquareMetre: cents({
    measure: "dollarsPerArea",
    label: "An early crop in a free bed brings",
    hint: "What you would really sell from it before the dahlias go in. Lost when the bed stays full.",
  }),
  leafCubicMetresAtHand: atHand("Leaves at hand", { measure: "volume" }),
  tarpSquareMetresAtHand: atHand("Tarp at hand", { measure: "area" }),
  hoursAtHand: atHand("Hours at hand", { unit: "hours" }),
  expectedFrom: field(choice(EXPECTED_FROM), z.enum(EXPECTED_FROM), {
    absent: "a number",
    label: "Bookings still to come",
    hint: "In November most of next season is not booked yet: Keep or dig reckons with what will be.",
    meanings: {
      "a number": "so many free Saturdays, as said below",
      "last season": "what was booked last season and has no counterpart yet",
    },
  }),
  expectedSaturdayCount: count({
    of: "Saturdays",
    unit: "Saturdays",
    absent: 0,
    least: 0,
    most: 60,
    label: "Free Saturdays that will still be booked",
    hint: "Each asks for what the booking nearest to it in the year asks.",
  }),
  expectedWeightShare: likelihood({
    absent: 0.3,
    label: "Of a hundred such bookings, come",
    hint: "How much a stem short for one weighs beside one of a confirmed booking. 60 % to start from, as a hold: our own guess.",
  }),
  workHoursPerDay: number({
    absent: 6,
    least: 0.5,
    most: 24,
    unit: "hours a day",
    label: "Winter work in the field",
    hint: "The worksheet spreads the work over days of so many hours, of all hands together.",
  }),
  figuresEdition: count({ absent: 1, least: 1, most: 1000, label: "Edition of the built-in winter figures settled" }),
  keepShareAtMost: open(
    share({
      unit: "% of the beds that could stay",
      label: "Keep at most",
      hint: "New to it? A first winter on a tenth of the beds is a trial that costs little.",
    }),
  ),
};

/** What keeping and digging cost, and what the farm has of each. The built-in figures are from memory: ask the grower. */
export const winterCostsSchema = recordSchema(WINTER_COSTS);
