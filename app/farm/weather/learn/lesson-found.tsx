import { monthDayInShort } from "#lib/domain/day";
import type { BloomCurve } from "#lib/domain/records/curve";
import type { Units } from "#lib/domain/words";
import { monthDayAt } from "#lib/plan/learning/bloom-season";
import type { KnownPoint } from "#lib/plan/learning/known-point";
import type { PlantedPoint, ToldPlanting } from "#lib/plan/learning/planted-point";
import { lessonInWords, plantedLessonInWords } from "#lib/plan/words/lesson-words";
import { Form } from "../../../ui/form.client";
import { type Column, Table } from "../../../ui/table";
import { adoptLesson } from "./learn-actions";
import type { Lesson } from "./lesson";

type Props = { lesson: Lesson | null; asked: { curve: string; dates: string }; units: Units };

/** What first cuts teach: the proposal with its errors, year by year, and the buttons that take it. */
export function LessonFound({ lesson, asked, units }: Props) {
  if (lesson === null)
    return (
      <p className="notice bad">
        <strong>No answer came from the farm’s computer.</strong> Look whether it is on, then ask again.
      </p>
    );
  if (!lesson.ok)
    return (
      <div className="notice bad">
        <p>
          <strong>Nothing learned:</strong> {lesson.because}.
        </p>
        <LeftOut lines={lesson.leftOut} />
      </div>
    );
  const { byClock, byMean, needsClimate, leftOut } = lesson;
  return (
    <>
      <p className="lead">
        {"planted" in lesson ? plantedLessonInWords(lesson.planted, units) : lessonInWords(lesson.point, units)}
      </p>
      {needsClimate && (
        <p className="notice">
          A clock of warmth needs the usual year of your place: choose <a href="/farm">a climate</a> first, then look
          again.
        </p>
      )}
      <div className="row">
        {byClock && (
          <Form
            action={adoptLesson}
            submit={`Let warmth tell it: ${knownCut(byClock)} in a usual year`}
            label="Take the clock of warmth"
            hidden={{ ...asked, choice: "clock" }}
          />
        )}
        <Form
          action={adoptLesson}
          submit={`Take the mean ${"planted" in lesson ? "of them" : "day"}, ${knownCut(byMean)}`}
          label="Take the mean day"
          hidden={{ ...asked, choice: "mean" }}
          isQuiet={byClock !== null}
        />
      </div>
      {"planted" in lesson ? <PlantedTable point={lesson.planted} /> : <YearTable point={lesson.point} />}
      {leftOut.length > 0 && (
        <div className="small">
          <p>Left out:</p>
          <LeftOut lines={leftOut} />
        </div>
      )}
    </>
  );
}

/** "5 Jun", or "62 days after planting" */
const knownCut = ({ anchor }: BloomCurve): string =>
  anchor.kind === "day-of-year" ? monthDayInShort(anchor.firstCut) : `${anchor.days} days after planting`;

const YearTable = ({ point }: { point: KnownPoint }) => (
  <Table
    caption="Each year as the others tell it"
    columns={COLUMNS.filter(({ head }) => point.clock !== null || head !== "By warmth")}
    rows={point.told}
    keyOf={({ year }) => year}
    isNarrow
  />
);

type Told = KnownPoint["told"][number];

const dayAt = (index: number): string => monthDayInShort(monthDayAt(index));

/** "5 Jun, 2 days late" */
function told(index: number, recordedIndex: number): string {
  const days = Math.round(index) - recordedIndex;
  const off =
    days === 0
      ? "to the day"
      : `${Math.abs(days)} ${Math.abs(days) === 1 ? "day" : "days"} ${days > 0 ? "late" : "early"}`;
  return `${dayAt(index)}, ${off}`;
}

const COLUMNS: readonly Column<Told>[] = [
  { head: "Year", kind: "name", cell: ({ year }) => year },
  { head: "First cut", cell: ({ recordedIndex }) => dayAt(recordedIndex) },
  {
    head: "By warmth",
    cell: ({ byClockIndex, recordedIndex }) => byClockIndex !== null && told(byClockIndex, recordedIndex),
  },
  { head: "By the mean day", cell: ({ byMeanIndex, recordedIndex }) => told(byMeanIndex, recordedIndex) },
];

const PlantedTable = ({ point }: { point: PlantedPoint }) => (
  <Table
    caption="Each planting as the other years tell it"
    columns={PLANTED_COLUMNS.filter(({ head }) => point.clock !== null || head !== "By warmth")}
    rows={point.told}
    keyOf={(row) => point.told.indexOf(row)}
    isNarrow
  />
);

const PLANTED_COLUMNS: readonly Column<ToldPlanting>[] = [
  { head: "Planted", kind: "name", cell: ({ year, plantedIndex }) => `${dayAt(plantedIndex)}, season ${year}` },
  { head: "First cut", cell: ({ recordedIndex }) => dayAt(recordedIndex) },
  {
    head: "By warmth",
    cell: ({ byClockIndex, recordedIndex }) => byClockIndex !== null && told(byClockIndex, recordedIndex),
  },
  { head: "By the mean days", cell: ({ byMeanIndex, recordedIndex }) => told(byMeanIndex, recordedIndex) },
];

const LeftOut = ({ lines }: { lines: readonly string[] }) => (
  <ul>
    {lines.slice(0, 12).map((line) => (
      <li key={line}>{line}</li>
    ))}
    {lines.length > 12 && <li>and {lines.length - 12} more</li>}
  </ul>
);
