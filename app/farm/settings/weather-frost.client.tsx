"use client";

import { type ChangeEvent, useId, useState } from "react";
import { inShort, monthDayInShort } from "#lib/domain/day";
import type { TemperatureUnit } from "#lib/domain/weather";
import type { Units } from "#lib/domain/words";
import { type FrostRecord, type FrostYear, frostRecord, LEAST_YEARS } from "#lib/plan/learning/frost-record";
import { countOf } from "#lib/plan/words/numbers";
import { readWeather, type WeatherSheet } from "#lib/sheets/weather-sheet";
import { Form } from "../../ui/form.client";
import { type Column, Table } from "../../ui/table";
import { takeRecordedFrost } from "./settings-actions";

const UNIT_WORDS: Readonly<Record<TemperatureUnit, string>> = {
  f: "°F",
  c: "°C",
  tenths: "tenths of °C, as in public daily summaries",
};

const MOST_SHOWN = 8;

type Read = { readonly name: string; readonly text: string };

/** Frost dates from the grower's own weather file. It is read on the page: the file goes nowhere, only the dates are kept, and only when she says so. */
export function WeatherFrost({ units }: { units: Units }) {
  const [unit, setUnit] = useState<TemperatureUnit>(units === "us" ? "f" : "c");
  const [file, setFile] = useState<Read | null>(null);
  const id = useId();
  const choose = async ({ target }: ChangeEvent<HTMLInputElement>) => {
    const chosen = target.files?.[0];
    setFile(chosen ? { name: chosen.name, text: await chosen.text() } : null);
  };
  return (
    <section aria-labelledby="weather-frost">
      <h2 id="weather-frost">Frost dates from your own weather file</h2>
      <p>
        Daily highs and lows of {LEAST_YEARS} years or more, as CSV with DATE, TMAX and TMIN (the public daily summaries
        of weather stations) or date, high and low. It is read here, on this page.
      </p>
      <div className="fields">
        <div className="field">
          <label htmlFor={`${id}-file`}>Weather file</label>
          <input id={`${id}-file`} type="file" accept=".csv,.tsv,.txt" onChange={choose} />
        </div>
        <div className="field">
          <label htmlFor={`${id}-unit`}>Temperatures, unless the file says</label>
          <select id={`${id}-unit`} value={unit} onChange={({ target }) => setUnit(target.value as TemperatureUnit)}>
            {Object.entries(UNIT_WORDS).map(([value, words]) => (
              <option key={value} value={value}>
                {words}
              </option>
            ))}
          </select>
        </div>
      </div>
      <div aria-live="polite">
        {file && <Found key={`${file.name} ${unit}`} sheet={readWeather(file.text, unit)} />}
      </div>
    </section>
  );
}

function Found({ sheet }: { sheet: WeatherSheet }) {
  const { weather, problems, recordedDayCount, missingDayCount, unit } = sheet;
  const record = weather ? frostRecord(weather) : null;
  return (
    <>
      {weather && (
        <p>
          {countOf(recordedDayCount, "day")} read in {UNIT_WORDS[unit]}, {countOf(missingDayCount, "day")} missing
          between the first and the last.
        </p>
      )}
      {problems.length > 0 && (
        <div className="notice bad">
          <p>{countOf(problems.length, "line was", "lines were")} not taken:</p>
          <ul>
            {problems.slice(0, MOST_SHOWN).map(({ line, message }) => (
              <li key={`${line} ${message}`}>
                line {line}: {message}
              </li>
            ))}
            {problems.length > MOST_SHOWN && <li>and {problems.length - MOST_SHOWN} more</li>}
          </ul>
        </div>
      )}
      {record && <Dates record={record} />}
    </>
  );
}

const COLUMNS: readonly Column<FrostYear>[] = [
  { head: "Year", kind: "name", cell: ({ year }) => year },
  { head: "Last of spring", cell: ({ lastSpring }) => (lastSpring ? inShort(lastSpring) : "none") },
  { head: "First of autumn", cell: ({ firstAutumn }) => (firstAutumn ? inShort(firstAutumn) : "none") },
];

function Dates({ record: { years, leftOut, dates } }: { record: FrostRecord }) {
  return (
    <>
      {dates ? (
        <>
          <p className="lead">
            First frost of autumn: <strong>{monthDayInShort(dates.firstAutumnP50)}</strong> in the middle of{" "}
            {countOf(years.length, "year")}, one year in ten by {monthDayInShort(dates.firstAutumnP10)}, nine in ten by{" "}
            {monthDayInShort(dates.firstAutumnP90)}. Last of spring: {monthDayInShort(dates.lastSpringP50)}, one year in
            ten after {monthDayInShort(dates.lastSpringP10)}.
          </p>
          <Form
            action={takeRecordedFrost}
            submit="Use these dates"
            label="Frost dates from your weather"
            hidden={Object.fromEntries(Object.entries(dates).map(([name, day]) => [`frost.${name}`, day]))}
          />
        </>
      ) : (
        <p className="notice">
          {countOf(years.length, "year is", "years are")} whole enough to tell its frosts by; {LEAST_YEARS} are needed
          to say what one year in ten does.
        </p>
      )}
      {leftOut.length > 0 && (
        <p className="small">
          Left out, since a frost may hide in their missing days:{" "}
          {leftOut.map(({ year, missingDayCount }) => `${year} (${missingDayCount})`).join(", ")}.
        </p>
      )}
      <details>
        <summary>Year by year, at 32 °F (0 °C) in the air</summary>
        <Table caption="Frosts by year" isCaptionHidden columns={COLUMNS} rows={years} keyOf={({ year }) => year} />
      </details>
    </>
  );
}
