"use server";

import { z } from "zod";
import { updateFarm } from "#db/write/farm";
import { removeWeather, takeWeather } from "#db/write/weather";
import type { Day } from "#lib/domain/day";
import type { Parsed } from "#lib/domain/problem";
import { recordedDays, type WeatherDay, weatherOfYears, weatherYearSchema } from "#lib/domain/records/weather-day";
import { type ChangedDay, weatherNews } from "#lib/domain/weather-news";
import { action, refusal } from "../../action";
import { whyUnread } from "../../download";
import { loadFarm } from "../../load";
import { FormValues } from "../../ui/form-values";
import { readFrost } from "../settings/farm-values";
import { readRecordedClimate } from "./weather-values";

/** What a file would bring: counts, and the first of the days that it says otherwise. */
export type ReadAgainstKept = {
  readonly newDayCount: number;
  /** The last of the new days; null where there are none. */
  readonly lastNewOn: Day | null;
  readonly sameDayCount: number;
  readonly changedDayCount: number;
  readonly firstChanged: readonly ChangedDay[];
};

const MOST_CHANGED_SHOWN = 12;

/** Compares the days of a file with those that are kept; writes nothing. Null when what was sent holds no days, or the farm cannot be read. */
export async function compareWeather(_: null, form: FormData): Promise<ReadAgainstKept | null> {
  const read = sentDays(new FormValues(form));
  if (!read.ok || whyUnread() !== null) return null;
  const { newDays, changedDays, sameDayCount } = weatherNews(loadFarm().weather, read.parsed);
  return {
    newDayCount: newDays.length,
    lastNewOn:
      newDays
        .map(({ date }) => date)
        .sort()
        .at(-1) ?? null,
    sameDayCount,
    changedDayCount: changedDays.length,
    firstChanged: changedDays.slice(0, MOST_CHANGED_SHOWN),
  };
}

/** Takes the days of a file: new ones, and with `changes` those that stand otherwise as well. */
export const saveWeather = action((values, { weather }) => {
  const read = sentDays(values);
  if (!read.ok) return read;
  const { newDays, changedDays } = weatherNews(weather, read.parsed);
  const changes = values.text("changes") === "yes" ? changedDays.map(({ read: day }) => day) : [];
  return { ok: true, parsed: [...newDays, ...changes] };
}, takeWeather);

/** Removes all recorded days. */
export const removeAllWeather = action(
  (_, { weather }) =>
    weather ? { ok: true, parsed: null } : refusal("", "no recorded days are kept: none can be removed"),
  removeWeather,
);

/** Takes the frost dates that the recorded weather gives. */
export const takeRecordedFrost = action((values, { farm }) => readFrost(values, farm), updateFarm);

/** Lets the farm go by the usual year that the recorded weather makes. */
export const takeRecordedClimate = action(readRecordedClimate, (database, climate, { farm }) =>
  updateFarm(database, { ...farm, climate }),
);

/** The days that the page read from a file, in the form of the rows that keep them. */
function sentDays(values: FormValues): Parsed<WeatherDay[]> {
  const years = z.array(weatherYearSchema).max(400).safeParse(values.json("years"));
  const weather = years.success ? weatherOfYears(years.data) : null;
  return weather
    ? { ok: true, parsed: recordedDays(weather) }
    : refusal("", "no days of weather came with this form: choose the file again");
}
