import { count, number, open } from "./field";

/**
 * What hands and room can do. Rates have a built-in figure; what is at hand is null until the farm has said it, and nothing is then held against it.
 * 150 stems cut an hour: from memory, the lower middle of 100 to 300 (no published figure for flowers of events was found). 36 stems made up an hour: one studio's
 * hour for a bridal bouquet of about 36 stems (published, DES-BRIDAL), taken for all pieces.
 */
export const CAPACITY = {
  cutStemsPerHour: number({
    absent: 150,
    above: 0,
    most: 10_000,
    unit: "stems an hour",
    label: "One pair of hands cuts",
    hint: "Walked, cut and stripped. 150 is from memory: time a morning of your own.",
  }),
  cutHoursPerDay: open(
    number({
      above: 0,
      most: 500,
      unit: "hours a picking day",
      label: "Hours for cutting",
      hint: "Of all hands together. Left empty, no day is too long.",
    }),
  ),
  benchStemsPerHour: number({
    absent: 36,
    above: 0,
    most: 10_000,
    unit: "stems an hour",
    label: "One designer makes up",
    hint: "36 is one studio’s published hour for a bridal bouquet, taken for all pieces: time your own.",
  }),
  benchHoursPerWeek: open(
    number({
      above: 0,
      most: 2_000,
      unit: "hours a week",
      label: "Hours at the bench",
      hint: "Of all hands together. Left empty, no week is too long.",
    }),
  ),
  bucketPlaces: open(
    count({
      of: "buckets",
      above: 0,
      most: 10_000,
      unit: "buckets",
      label: "Places in the cooler",
      hint: "Left empty, there is room for all.",
    }),
  ),
};
