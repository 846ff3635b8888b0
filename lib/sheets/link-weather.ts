import { yearOf } from "#lib/domain/day";
import { FIRST_WEATHER_YEAR, LAST_WEATHER_YEAR, type WeatherDay } from "#lib/domain/records/weather-day";
import { placeInWords } from "./sheet-problem";
import { linkRows, type SheetRows } from "./sheet-rows";

/** Recorded days, each once, none with its low above its high. A day that the farm has already is replaced. */
export function linkWeather(sheet: SheetRows<WeatherDay>): SheetRows<WeatherDay> {
  const seen = new Map<string, string>();
  return linkRows(sheet, (day, say, { place }) => {
    const earlier = seen.get(day.date);
    if (earlier) say("date", `${day.date} stands on ${earlier} already: keep one of the two rows`);
    else seen.set(day.date, placeInWords(place));
    if (day.lowC > day.highC)
      say("low_c", `the low, ${day.lowC}, lies above the high, ${day.highC}: change one of them`);
    if (yearOf(day.date) < FIRST_WEATHER_YEAR || yearOf(day.date) > LAST_WEATHER_YEAR)
      say(
        "date",
        `no day of ${yearOf(day.date)} can have been recorded: write a year from ${FIRST_WEATHER_YEAR} to ${LAST_WEATHER_YEAR}`,
      );
    return day;
  });
}
