import { inShort, monthDayInShort } from "#lib/domain/day";
import type { FrostDates } from "#lib/domain/records/farm-settings";
import { LEAST_RECORDED_YEARS } from "#lib/domain/weather";
import type { FrostRecord, FrostYear } from "#lib/plan/learning/frost-record";
import { countOf } from "#lib/plan/words/numbers";
import { Form } from "../../ui/form.client";
import { type Column, Table } from "../../ui/table";
import { takeRecordedFrost } from "./weather-actions";

const COLUMNS: readonly Column<FrostYear>[] = [
  { head: "Year", kind: "name", cell: ({ year }) => year },
  { head: "Last of spring", cell: ({ lastSpring }) => (lastSpring ? inShort(lastSpring) : "none") },
  { head: "First of autumn", cell: ({ firstAutumn }) => (firstAutumn ? inShort(firstAutumn) : "none") },
];

/** What the recorded weather says of frost, beside the dates that the farm reckons with. */
export function RecordedFrost({ record, reckoned }: { record: FrostRecord; reckoned: FrostDates }) {
  const { years, leftOut, dates } = record;
  return (
    <section aria-labelledby="frost">
      <h2 id="frost">Frost by your record</h2>
      {dates ? (
        <Found dates={dates} reckoned={reckoned} yearCount={years.length} />
      ) : (
        <p>
          {countOf(years.length, "year is", "years are")} whole enough to tell its frosts by; {LEAST_RECORDED_YEARS} are
          needed to say what one year in ten does.
        </p>
      )}
      <details className="fold">
        <summary>Year by year, at 32 °F (0 °C) in the air</summary>
        <Table
          caption="Frosts by year"
          isCaptionHidden
          columns={COLUMNS}
          rows={years}
          keyOf={({ year }) => year}
          isNarrow
        />
        {leftOut.length > 0 && (
          <p className="small">
            Left out, since a frost may hide in their missing days:{" "}
            {leftOut.map(({ year, missingDayCount }) => `${year} (${missingDayCount})`).join(", ")}.
          </p>
        )}
      </details>
    </section>
  );
}

function Found({ dates, reckoned, yearCount }: { dates: FrostDates; reckoned: FrostDates; yearCount: number }) {
  const isTaken = Object.entries(dates).every(([name, day]) => Reflect.get(reckoned, name) === day);
  return (
    <>
      <p>
        First frost of autumn: <strong>{monthDayInShort(dates.firstAutumnP50)}</strong> in the middle of{" "}
        {countOf(yearCount, "year")}, one year in ten by {monthDayInShort(dates.firstAutumnP10)}, nine in ten by{" "}
        {monthDayInShort(dates.firstAutumnP90)}. Last of spring: {monthDayInShort(dates.lastSpringP50)}, one year in ten
        after {monthDayInShort(dates.lastSpringP10)}.
      </p>
      {isTaken ? (
        <p className="good-word">✓ The farm reckons with these dates.</p>
      ) : (
        <>
          <p className="soft">
            The farm reckons with {monthDayInShort(reckoned.firstAutumnP50)} in autumn and{" "}
            {monthDayInShort(reckoned.lastSpringP50)} in spring.
          </p>
          <Form
            action={takeRecordedFrost}
            submit="Use the recorded dates"
            label="Frost dates from your weather"
            hidden={Object.fromEntries(Object.entries(dates).map(([name, day]) => [`frost.${name}`, day]))}
          />
        </>
      )}
    </>
  );
}
