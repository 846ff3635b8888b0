import { z } from "zod";
import { yearOf } from "../day";
import { daySchema } from "../day-schema";
import { DAY_IN_SEASONS, isSeasonYear } from "../season-years";
import { field } from "./field";
import { day, word } from "./kinds";

/** The name of another thing, on a sheet: the reader of the sheets finds out which one it is. */
export const nameOf = (label: string) => field(word, z.string().trim(), { label });

/** What a booking is known by, to people and on the sheets of its lines. */
export const BOOKING_NAMES = {
  client: field(word, z.string().trim().min(1, "name the client").max(120, "a name has at most 120 letters"), {
    label: "Client",
  }),
  eventOn: field(
    day,
    z
      .string()
      .trim()
      .min(1, { error: "choose the day of the event", abort: true })
      .pipe(daySchema)
      .refine((on) => isSeasonYear(yearOf(on)), DAY_IN_SEASONS),
    { label: "Day of the event" },
  ),
};
