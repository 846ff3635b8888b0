import { z } from "zod";
import { daySchema } from "../day-schema";
import { field } from "./field";
import { day, listOf } from "./kinds";

/** The middle of summer in the northern half of the earth: a frost before it is one of spring. */
const MIDSUMMER = "07-15";

const killingFrostsSchema = z
  .array(daySchema.refine((on) => on.slice(5) >= MIDSUMMER, "a frost of autumn comes from 15 July on"))
  .max(200, "at most 200 frosts")
  .refine(
    (days) => new Set(days.map((on) => on.slice(0, 4))).size === days.length,
    "one killing frost a year: keep its first",
  );

/** The days on which frost really ended the season's tender crops, a year one. */
export const KILLING_FROSTS = {
  killingFrosts: field(listOf(day), killingFrostsSchema, {
    absent: [],
    label: "Killing frosts",
    hint: "The first of each autumn, a day a year: what is tender ends there, in that season alone. For example: 2026-10-14 / 2027-10-03.",
  }),
};
