import { z } from "zod";
import { type Field, field, open, recordSchema } from "./field";
import { decimal, listOf, word } from "./kinds";

/** January to December. */
const MONTH_COUNT = 12;

const monthlyC = (heading: string, label: string): Field<readonly number[]> =>
  field(
    listOf(decimal),
    z
      .array(
        z.number("write degrees").min(-60, "at least -60 °C").max(60, "at most 60 °C"),
        "write all twelve months of the climate",
      )
      .length(MONTH_COUNT, "write twelve months, January first"),
    { heading, label },
  );

/** What the weather of a place is like in a usual year: what a climate is made of. */
export const CLIMATE = {
  station: field(
    word,
    z
      .string("name the place of the climate")
      .trim()
      .min(1, "name the place of the climate")
      .max(120, "a name has at most 120 letters"),
    {
      heading: "climate_station",
      label: "Place of the climate",
    },
  ),
  latitudeDegrees: {
    ...field(decimal, z.number("write degrees of latitude").min(-66, "from -66 to 66").max(66, "from -66 to 66"), {
      heading: "climate_latitude_degrees",
      label: "Latitude",
      unit: "degrees north",
    }),
    limits: { least: -66, most: 66 },
  },
  monthlyHighsC: monthlyC("climate_monthly_highs_c", "Mean highs by month in °C"),
  monthlyLowsC: monthlyC("climate_monthly_lows_c", "Mean lows by month in °C"),
};

/**
 * The usual year of a place: the mean high and low of each month, January first, in degrees Celsius, and its latitude in degrees north.
 * `station` says where the numbers come from: a weather station of the built-in list, or the grower's own words.
 */
export const climateSchema = recordSchema(CLIMATE).superRefine(({ monthlyHighsC, monthlyLowsC }, context) => {
  monthlyHighsC.forEach((high, month) => {
    if (monthlyLowsC[month] > high)
      context.addIssue({
        code: "custom",
        path: ["monthlyLowsC", month],
        message: "the mean low of a month cannot be above its mean high",
      });
  });
});
export type Climate = z.infer<typeof climateSchema>;

/** The parts of a climate as columns of a sheet or table: each is null where a farm has chosen none. */
export const OPEN_CLIMATE = {
  station: open(CLIMATE.station),
  latitudeDegrees: open(CLIMATE.latitudeDegrees),
  monthlyHighsC: open(CLIMATE.monthlyHighsC),
  monthlyLowsC: open(CLIMATE.monthlyLowsC),
};
type ClimateColumns = { readonly [Name in keyof Climate]: Climate[Name] | null };

/** A climate, or none, as its columns. */
export const climateColumns = (climate: Climate | null): ClimateColumns =>
  climate ?? { station: null, latitudeDegrees: null, monthlyHighsC: null, monthlyLowsC: null };

/** The climate of these columns, for the schema to check; none when all are null. */
export const climateOfColumns = <T>(columns: { readonly [Name in keyof Climate]: T | null }) =>
  Object.keys(CLIMATE).every((name) => columns[name as keyof Climate] === null) ? null : columns;
