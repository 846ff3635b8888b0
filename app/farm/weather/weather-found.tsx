import type { ChangedDay } from "#lib/domain/weather-news";
import type { Units } from "#lib/domain/words";
import { countOf } from "#lib/plan/words/numbers";
import { dayOfYearInWords, degreesInWords, newDaysInWords, UNIT_WORDS } from "#lib/plan/words/weather-words";
import type { WeatherSheet } from "#lib/sheets/weather-sheet";
import { Form } from "../../ui/form.client";
import { type Column, Table } from "../../ui/table";
import { type ReadAgainstKept, saveWeather } from "./weather-actions";

type Props = {
  sheet: WeatherSheet;
  years: string;
  against: ReadAgainstKept | null;
  units: Units;
  isTooLong: boolean;
};

/** What was found in a weather file, and the buttons that take it. */
export function WeatherFound({ sheet, years, against, units, isTooLong }: Props) {
  const { recordedDayCount, missingDayCount, unit } = sheet;
  return (
    <>
      {recordedDayCount > 0 && (
        <p>
          {countOf(recordedDayCount, "day")} read in {UNIT_WORDS[unit]}, {countOf(missingDayCount, "day")} missing
          between the first and the last.
        </p>
      )}
      <NotTaken sheet={sheet} />
      {isTooLong && <p className="notice bad">That is more than goes through at once: part the file by years.</p>}
      {recordedDayCount > 0 && !isTooLong && against === null && (
        <p className="notice bad">
          <strong>No answer came from the farm’s computer.</strong> Look whether it is on, then choose the file again.
        </p>
      )}
      {against && <News against={against} years={years} units={units} />}
    </>
  );
}

const MOST_SHOWN = 8;

function NotTaken({ sheet: { problems } }: { sheet: WeatherSheet }) {
  if (problems.length === 0) return null;
  return (
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
  );
}

/** What the file would bring to the days that are kept. */
function News({ against, years, units }: { against: ReadAgainstKept; years: string; units: Units }) {
  const { newDayCount, lastNewOn, sameDayCount, changedDayCount, firstChanged } = against;
  if (newDayCount + changedDayCount === 0)
    return (
      <p className="notice good">
        <strong>✓ All kept already.</strong> {countOf(sameDayCount, "day says", "days say")} what the farm has.
      </p>
    );
  return (
    <>
      <p className="lead">
        <strong>{newDaysInWords(newDayCount, lastNewOn)}</strong>
        {sameDayCount > 0 && `, ${countOf(sameDayCount, "day")} kept already`}
        {changedDayCount > 0 && `, and ${countOf(changedDayCount, "day")} of which the file says something else`}.
      </p>
      {newDayCount > 0 && (
        <Form
          action={saveWeather}
          submit={`Take ${countOf(newDayCount, "new day", "new days")}`}
          label="Take new days of weather"
          hidden={{ years, changes: "no" }}
        />
      )}
      {changedDayCount > 0 && (
        <>
          <Table
            caption={
              changedDayCount > firstChanged.length
                ? `The first ${firstChanged.length} of the days that would change`
                : "The days that would change"
            }
            columns={changedColumns(units)}
            rows={firstChanged}
            keyOf={({ kept }) => kept.date}
            isNarrow
          />
          <Form
            action={saveWeather}
            submit={`Take all, and change ${countOf(changedDayCount, "day")}`}
            label="Take all days of the file"
            hidden={{ years, changes: "yes" }}
            isQuiet
          />
        </>
      )}
    </>
  );
}

const changedColumns = (units: Units): readonly Column<ChangedDay>[] => [
  { head: "Day", kind: "name", cell: ({ kept }) => dayOfYearInWords(kept.date) },
  { head: "Kept: high, low", cell: ({ kept }) => highAndLow(kept, units) },
  { head: "In the file", cell: ({ read }) => highAndLow(read, units) },
];

const highAndLow = ({ highC, lowC }: ChangedDay["kept"], units: Units): string =>
  `${degreesInWords(highC, units)}, ${degreesInWords(lowC, units)}`;
