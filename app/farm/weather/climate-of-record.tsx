import { CLIMATE } from "#lib/domain/records/climate";
import type { Farm } from "#lib/domain/records/farm-settings";
import { formFields } from "#lib/domain/records/form";
import type { RecordedClimate } from "#lib/plan/learning/recorded-climate";
import { climateInWords } from "#lib/plan/words/climate-words";
import { countOf } from "#lib/plan/words/numbers";
import { Form } from "../../ui/form.client";
import { RecordField } from "../../ui/record-field";
import { takeRecordedClimate } from "./weather-actions";
import { RECORD_STATION } from "./weather-values";

/** The usual year that the recorded weather makes, and the button that lets the farm go by it. */
export function ClimateOfRecord({ found, farm }: { found: RecordedClimate; farm: Farm }) {
  const { latitudeDegrees } = formFields({ latitudeDegrees: CLIMATE.latitudeDegrees }, farm.climate ?? undefined, farm);
  const climate = { ...found, station: RECORD_STATION, latitudeDegrees: farm.climate?.latitudeDegrees ?? 0 };
  const isTaken =
    farm.climate !== null &&
    (["monthlyHighsC", "monthlyLowsC"] as const).every((name) => String(farm.climate?.[name]) === String(found[name]));
  return (
    <section aria-labelledby="climate">
      <h2 id="climate">A usual year by your record</h2>
      <p>
        {countOf(found.yearCount, "year")} make a usual year. {climateInWords(climate, farm.units)}
      </p>
      {isTaken ? (
        <p className="good-word">✓ The farm goes by this year.</p>
      ) : (
        <>
          <p className="soft">
            {farm.climate ? `The farm goes by that of ${farm.climate.station}.` : "The farm has chosen no climate yet."}
          </p>
          <Form action={takeRecordedClimate} submit="Go by this year" label="Climate of your record" isQuiet>
            <div className="fields">
              <RecordField {...latitudeDegrees} hint="For example 37.5." />
            </div>
          </Form>
        </>
      )}
    </section>
  );
}
