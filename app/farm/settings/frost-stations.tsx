import { FROST_STATIONS, type FrostStation } from "#lib/domain/catalogue/frost-stations";
import { type MonthDay, monthDayInShort } from "#lib/domain/day";
import { Form } from "../../ui/form.client";
import { SelectField } from "../../ui/form-fields.client";
import { OriginMark } from "../../ui/origin-mark";
import { takeStationFrost } from "./settings-actions";

const OPTIONS = FROST_STATIONS.map(({ place, years }) => ({ value: place, label: `${place} (${years})` }));

const inWords = (...days: (MonthDay | null)[]): string =>
  days.map((day) => (day ? monthDayInShort(day) : "not given")).join(" · ");

/** Published frost dates to start from, and the button that takes them over. */
export const FrostStations = () => (
  <section aria-labelledby="stations">
    <h2 id="stations">Published frost dates to start from</h2>
    <p>
      Examples of weather stations, at 32 °F (0 °C). Ground near you can differ by weeks: your own notes are better. A
      date that a station does not publish stays as you have it.
    </p>
    <Form
      action={takeStationFrost}
      submit="Use the published dates of this place"
      label="Published frost dates"
      isQuiet
    >
      <div className="fields">
        <SelectField name="place" label="Station" options={OPTIONS} isWide />
      </div>
    </Form>
    <details>
      <summary>The dates, with their sources</summary>
      <table className="cards-on-phone">
        <thead>
          <tr>
            <th scope="col">Station</th>
            <th scope="col">First of autumn, 10 · 50 · 90 %</th>
            <th scope="col">Last of spring, 10 · 50 · 90 %</th>
            <th scope="col">Source</th>
          </tr>
        </thead>
        <tbody>
          {FROST_STATIONS.map((station) => (
            <StationRow key={station.place} station={station} />
          ))}
        </tbody>
      </table>
    </details>
  </section>
);

const StationRow = ({ station: { place, years, frost, origin, note } }: { station: FrostStation }) => (
  <tr>
    <th scope="row">
      {place} <span className="soft small">{years}</span>
    </th>
    <td data-label="First of autumn">{inWords(frost.firstAutumnP10, frost.firstAutumnP50, frost.firstAutumnP90)}</td>
    <td data-label="Last of spring">{inWords(frost.lastSpringP10, frost.lastSpringP50, frost.lastSpringP90)}</td>
    <td data-label="Source">
      <OriginMark origin={origin} /> <span className="soft small">{note}</span>
    </td>
  </tr>
);
