import { cents, number, open, recordSchema, share } from "./field";

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
    label: "Depth of leaves",
    hint: "8 inches (20 cm) to start from: published for straw in North Carolina.",
  }),
  leafCentsPerCubicMetre: cents({ measure: "dollarsPerVolume", label: "Leaves cost" }),
  tarpCentsPerSquareMetre: cents({ measure: "dollarsPerArea", label: "Tarp for a winter costs" }),
  coverHoursPerSquareMetre: number({ least: 0, most: 10, measure: "hoursPerArea", label: "Covering and uncovering" }),
  winterSurvivalShare: share({
    label: "Of a hundred clumps kept, alive in spring",
    hint: "No published figure was found. What do you expect of your ground and your winters? The answer moves with this number more than with any other; Keep or dig shows how.",
  }),
  freeBedCentsPerSquareMetre: cents({
    measure: "dollarsPerArea",
    label: "An early crop in a free bed brings",
    hint: "Lost when the bed stays full until the dahlias bloom.",
  }),
  leafCubicMetresAtHand: atHand("Leaves at hand", { measure: "volume" }),
  tarpSquareMetresAtHand: atHand("Tarp at hand", { measure: "area" }),
  hoursAtHand: atHand("Hours at hand", { unit: "hours" }),
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
