import { integer, sqliteTable, text } from "drizzle-orm/sqlite-core";
import { FIRST_WEATHER_YEAR, LAST_WEATHER_YEAR } from "#lib/domain/records/weather-day";
import { checks, holds, isList } from "./checks";

/** Recorded weather, a row a year; its id is the year. Days lie in a list each, so that thirty years are thirty rows for the journal to note. */
export const weatherYear = sqliteTable(
  "weather_year",
  {
    id: integer("id").primaryKey(),
    highTenthsC: text("high_tenths_c").notNull(),
    lowTenthsC: text("low_tenths_c").notNull(),
  },
  () =>
    checks(
      "weather_year",
      holds("year", `id BETWEEN ${FIRST_WEATHER_YEAR} AND ${LAST_WEATHER_YEAR}`),
      isList("high_tenths_c"),
      isList("low_tenths_c"),
      holds(
        "days",
        "CASE WHEN json_valid(high_tenths_c) AND json_valid(low_tenths_c) THEN json_array_length(high_tenths_c) IN (365, 366) " +
          "AND json_array_length(low_tenths_c) = json_array_length(high_tenths_c) ELSE 0 END",
      ),
    ),
);
