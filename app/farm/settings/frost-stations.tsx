import { FROST_STATIONS, type FrostStation } from "#lib/domain/catalogue/frost-stations";
import { type MonthDay, monthDayInShort } from "#lib/domain/day";
import { Form } from "../../ui/form.client";
import { SelectField } from "../../ui/form-fields.client";
import { OriginMark } from "../../ui/origin-mark";
import { type Column, Table } from "../../ui/table";
import { takeStationFrost } from "./settings-actions";

const OPTIONS = FROST_STATIONS.map(({ place, years }) => ({ value: place, label: `${place} (${years})` }));

const inWords = (...days: (MonthDay | null)[]): string =>
  days.map((day) => (day ? monthDayInShort(day) : "not given")).join(" · ");

const COLUMNS: readonly Column<FrostStation>[] = [
  {
    head: "Station",
    kind: "name",
    cell: ({ place, years }) => (
      <>
        {place} <span className="soft small">{years}</span>
      </>
    ),
  },
  {
    head: "First of autumn, 10 · 50 · 90 %",
    cell: ({ frost }) => inWords(frost.firstAutumnP10, frost.firstAutumnP50, frost.firstAutumnP90),
  },
  {
    head: "Last of spring, 10 · 50 · 90 %",
    cell: ({ frost }) => inWords(frost.lastSpringP10, frost.lastSpringP50, frost.lastSpringP90),
  },
  {
    head: "Source",
    cell: ({ origin, note }) => (
      <>
        <OriginMark origin={origin} /> <span className="soft small">{note}</span>
      </>
    ),
  },
];

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
      <Table
        caption="Frost dates of weather stations"
        isCaptionHidden
        columns={COLUMNS}
        rows={FROST_STATIONS}
        keyOf={({ place }) => place}
      />
    </details>
  </section>
);
