import fc from "fast-check";
import { weatherOfDays } from "#lib/domain/records/weather-day";

/** A few recorded days, decades apart at times. */
export const anyWeather = fc
  .uniqueArray(
    fc.record({
      day: fc.integer({ min: 18_000, max: 26_000 }),
      low: fc.integer({ min: -900, max: 570 }),
      above: fc.nat(300),
    }),
    { maxLength: 6, selector: ({ day: recorded }) => recorded },
  )
  .map((days) =>
    weatherOfDays(
      days.map(({ day: recorded, low, above }) => ({
        day: recorded,
        lowC: low / 10,
        highC: Math.min(570, low + above) / 10,
      })),
    ),
  );
