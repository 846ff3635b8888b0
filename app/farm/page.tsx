import type { Metadata } from "next";
import { loadFarm } from "../load";
import { FarmTabs } from "./farm-tabs";
import { ClimateChoice } from "./settings/climate-choice";
import { FrostStations } from "./settings/frost-stations";
import { SettingsForm } from "./settings/settings-form";
import { StartOwn } from "./settings/start-own";
import { WeatherFrost } from "./settings/weather-frost";

export const metadata: Metadata = { title: "Farm" };

/** The farm's settings, and the doors to all else that a farm is made of. */
export default function FarmPage() {
  const snapshot = loadFarm();
  return (
    <>
      <h1>Farm</h1>
      <FarmTabs open="/farm" />
      <h2>Settings</h2>
      <SettingsForm farm={snapshot.farm} />
      <ClimateChoice farm={snapshot.farm} />
      <FrostStations />
      <WeatherFrost />
      <section aria-labelledby="import">
        <h2 id="import">Bring in CSV files</h2>
        <p>
          Beds, plantings, bookings and the rest come from a spreadsheet in one go. Every problem is listed first, by
          file and line, and nothing is written before you say so.
        </p>
        <p className="actions">
          <a className="button main" href="/farm/files">
            Bring in files, or take yours out
          </a>
        </p>
      </section>
      <StartOwn {...snapshot} />
    </>
  );
}
