import type { Metadata } from "next";
import { yearOf } from "#lib/domain/day";
import { frostRecord } from "#lib/plan/learning/frost-record";
import { recordedClimate } from "#lib/plan/learning/recorded-climate";
import { recordInWords } from "#lib/plan/words/weather-words";
import { today } from "../../clock";
import { farmRevision, loadFarm } from "../../load";
import { BareGround } from "../../look/bare-ground";
import { SeasonHeatLine } from "../../season/season-heat-line";
import { Form } from "../../ui/form.client";
import { FarmTabs } from "../farm-tabs";
import { ClimateOfRecord } from "./climate-of-record";
import { RecordedFrost } from "./recorded-frost";
import { removeAllWeather } from "./weather-actions";
import { WeatherFile } from "./weather-file.client";
import "./weather.css";

export const metadata: Metadata = { title: "Weather" };

/** The weather that was recorded: what is kept, more of it from a file, and what it says of frost. */
export default function WeatherPage() {
  const snapshot = loadFarm();
  const { farm, weather } = snapshot;
  const climate = weather && recordedClimate(weather);
  return (
    <>
      <h1>Farm: weather</h1>
      <FarmTabs open="/farm/weather" />
      {weather ? <p className="lead">{recordInWords(weather)}</p> : <NothingRecorded />}
      <SeasonHeatLine snapshot={snapshot} seasonYear={yearOf(today())} />
      {weather && (
        <div className="cols weather-record">
          <RecordedFrost record={frostRecord(weather)} reckoned={farm.frost} />
          {climate && <ClimateOfRecord found={climate} farm={farm} />}
        </div>
      )}
      <section aria-labelledby="file">
        <h2 id="file">Bring in daily highs and lows</h2>
        <p>
          CSV with DATE, TMAX and TMIN (the public daily summaries of weather stations), or date, high and low. New days
          are added; a day that is kept already changes only when you say so.
        </p>
        <WeatherFile key={farmRevision()} units={farm.units} />
      </section>
      {weather && (
        <section aria-labelledby="learn">
          <h2 id="learn">First cuts that you wrote down</h2>
          <p>
            With the weather of their years they teach a curve when it begins:{" "}
            <a href="/farm/weather/learn">learn from your first cuts</a>.
          </p>
        </section>
      )}
      {weather && (
        <details className="fold">
          <summary>Remove the weather</summary>
          <p>All recorded days go, and the seasons are reckoned without them. One undo brings them back.</p>
          <Form action={removeAllWeather} submit="Remove all recorded days" label="Remove the weather" isQuiet />
        </details>
      )}
    </>
  );
}

const NothingRecorded = () => (
  <div className="empty">
    <BareGround />
    <p>
      No weather is recorded yet. With a file of ten years or more the farm’s frost dates come from your own ground, and
      with any file the days that have passed are reckoned as they were.
    </p>
  </div>
);
