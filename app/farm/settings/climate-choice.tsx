import { CLIMATE_ORIGIN, CLIMATE_STATIONS } from "#lib/domain/catalogue/climate-stations";
import { MONTHS } from "#lib/domain/day";
import { measureIn, shown } from "#lib/domain/measures";
import { CLIMATE } from "#lib/domain/records/climate";
import type { Farm } from "#lib/domain/records/farm-settings";
import { formFields } from "#lib/domain/records/form";
import { climateInWords } from "#lib/plan/words/climate-words";
import { Form } from "../../ui/form.client";
import { NumberField, SelectField } from "../../ui/form-fields.client";
import { OriginMark } from "../../ui/origin-mark";
import { RecordField } from "../../ui/record-field";
import { removeClimate, saveClimate, takeStationClimate } from "./settings-actions";

const OPTIONS = CLIMATE_STATIONS.map(({ station }) => ({ value: station, label: station }));

/** What a usual year is like where the farm lies: chosen by name, or typed; until then bloom goes by the calendar. */
export const ClimateChoice = ({ farm }: { farm: Farm }) => (
  <section aria-labelledby="climate">
    <h2 id="climate">Climate</h2>
    <p>
      {farm.climate
        ? `A usual year is that of ${farm.climate.station}. Crops that have a bloom clock bloom by its warmth, from the day they are planted. ${climateInWords(farm.climate, farm.units)}`
        : "No climate is chosen, so every crop blooms by the calendar. Choose one, and crops that have a bloom clock bloom by warmth, from the day they are planted."}
    </p>
    <Form action={takeStationClimate} submit="Use the climate of this place" label="Climate of a station" isQuiet>
      <div className="fields">
        <SelectField
          name="station"
          label="Station"
          options={OPTIONS}
          value={farm.climate?.station}
          hint="The nearest in distance and height. A farm in a hollow or on a hill is colder."
          isWide
        />
      </div>
    </Form>
    <p className="small soft">
      Mean highs and lows of each month, 1981–2010: <OriginMark origin={CLIMATE_ORIGIN} />. Latitudes are from memory.
    </p>
    <details>
      <summary>{farm.climate ? "See or change the numbers" : "Type the numbers of your own place"}</summary>
      <TypedClimate farm={farm} />
    </details>
    {farm.climate && (
      <Form action={removeClimate} submit="Bloom by the calendar alone" label="No climate" isQuiet>
        <p className="small">The climate is taken away. The history takes that back.</p>
      </Form>
    )}
  </section>
);

function TypedClimate({ farm }: { farm: Farm }) {
  const { station, latitudeDegrees } = CLIMATE;
  const fields = formFields({ station, latitudeDegrees }, farm.climate ?? undefined, farm);
  const measure = measureIn(farm.units, "temperature");
  const twelve = [
    { name: "monthlyHighsC", kind: "high", title: `Mean high of each month, ${measure.word}` },
    { name: "monthlyLowsC", kind: "low", title: `Mean low of each month, ${measure.word}` },
  ] as const;
  return (
    <Form action={saveClimate} submit="Save this climate" label="Your own climate">
      <div className="fields">
        <RecordField {...fields.station} hint="Where the numbers come from." />
        <RecordField {...fields.latitudeDegrees} hint="For example 37.5." />
      </div>
      {twelve.map(({ name, kind, title }) => (
        <fieldset key={name}>
          <legend>{title}</legend>
          <div className="fields months">
            {MONTHS.map((month, index) => (
              <NumberField
                key={month}
                name={`${name}[${index}]`}
                label={month}
                listedAs={`${month}, mean ${kind}`}
                value={farm.climate ? shown(measure, farm.climate[name][index], farm.decimalMark) : ""}
              />
            ))}
          </div>
        </fieldset>
      ))}
    </Form>
  );
}
