"use client";

import { type ChangeEvent, type MouseEvent, useId, useState, useTransition } from "react";
import { recordedDays, weatherRow, weatherYearsWith } from "#lib/domain/records/weather-day";
import { TEMPERATURE_UNITS, type TemperatureUnit } from "#lib/domain/weather";
import type { Units } from "#lib/domain/words";
import { UNIT_WORDS } from "#lib/plan/words/weather-words";
import { readWeather, type WeatherSheet } from "#lib/sheets/weather-sheet";
import { MOST_FORM_BYTES } from "../../door/limits";
import { answered } from "../../ui/answered.client";
import { compareWeather, type ReadAgainstKept } from "./weather-actions";
import { WeatherFound } from "./weather-found";

type Read = {
  readonly sheet: WeatherSheet;
  /** The days as the rows that would keep them. */
  readonly years: string;
  /** What they would change; null when the farm did not answer. */
  readonly against: ReadAgainstKept | null;
};

/** The file of before is let go of, so that after mending it the same one can be chosen again; its name stays until then. */
const forget = ({ currentTarget }: MouseEvent<HTMLInputElement>) => {
  currentTarget.value = "";
};

/** A weather file: read on the page, every problem named by its line, compared with what is kept, and taken only when the grower says so. */
export function WeatherFile({ units }: { units: Units }) {
  const [unit, setUnit] = useState<TemperatureUnit>(units === "us" ? "f" : "c");
  const [text, setText] = useState<string | null>(null);
  const [read, setRead] = useState<Read | null>(null);
  const [isPending, startReading] = useTransition();
  const id = useId();
  const look = (chosen: string, written: TemperatureUnit) => {
    setText(chosen);
    startReading(async () => {
      const sheet = readWeather(chosen, written);
      const days = sheet.weather ? recordedDays(sheet.weather) : [];
      const years = JSON.stringify(weatherYearsWith([], days).map(weatherRow));
      const form = new FormData();
      form.set("years", years);
      const isAsked = days.length > 0 && years.length < MOST_FORM_BYTES;
      const against = isAsked ? await answered(compareWeather(null, form)) : null;
      setRead({ sheet, years, against });
    });
  };
  const choose = async ({ target }: ChangeEvent<HTMLInputElement>) => {
    const file = target.files?.[0];
    if (file) look(await file.text(), unit);
  };
  const chooseUnit = ({ target }: ChangeEvent<HTMLSelectElement>) => {
    const chosen = TEMPERATURE_UNITS.find((known) => known === target.value) ?? unit;
    setUnit(chosen);
    if (text !== null) look(text, chosen);
  };
  return (
    <>
      <div className="fields">
        <div className="field">
          <label htmlFor={`${id}-file`}>Weather file</label>
          <input id={`${id}-file`} type="file" accept=".csv,.tsv,.txt" onClick={forget} onChange={choose} />
        </div>
        <div className="field">
          <label htmlFor={`${id}-unit`}>Temperatures, unless the file says</label>
          <select id={`${id}-unit`} value={unit} onChange={chooseUnit}>
            {TEMPERATURE_UNITS.map((value) => (
              <option key={value} value={value}>
                {UNIT_WORDS[value]}
              </option>
            ))}
          </select>
        </div>
      </div>
      <div aria-live="polite">
        {isPending && <p className="soft">Reading…</p>}
        {read && !isPending && (
          <WeatherFound {...read} units={units} isTooLong={read.years.length >= MOST_FORM_BYTES} />
        )}
      </div>
    </>
  );
}
