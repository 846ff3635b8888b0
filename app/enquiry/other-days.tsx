import { type Day, parseDay, withWeekday } from "#lib/domain/day";
import { nearestThatHas } from "#lib/plan/road/enquiry-days";
import { inWholes } from "#lib/plan/words/numbers";
import { ColourWord } from "../ui/colour-words";
import { StateSign } from "../ui/state-sign";
import { type Column, Table } from "../ui/table";
import type { OtherDayView } from "./answer/answer-lines";
import { DayColumns } from "./day-columns";

type Props = {
  title: string;
  /** The days to be shown, in order; those that are not known yet leave their place empty. */
  weekdays: readonly string[];
  days: readonly OtherDayView[];
  /** The stems asked; 0 where none were, and all that is free is shown. */
  stemCount: number;
  asked: OtherDayView | null;
  /** In a sentence which day has it all, when that is known. */
  answer: string;
  /** They are of the question before, and the new are on their way. */
  isStale?: boolean;
  choose: (day: string) => void;
};

/** The same question on the other days: counted out day by day, the nearest as buttons, all as a table. */
export function OtherDays({ title, weekdays, days, stemCount, asked, answer, isStale = false, choose }: Props) {
  const known = [...days, ...(asked ? [asked] : [])];
  const top = stemCount || Math.max(1, ...known.map(({ likelyStems }) => likelyStems));
  const all = [...new Set([...weekdays, ...(asked ? [asked.day] : [])])].sort().map((day) => parseDay(day));
  return (
    <section className="other-days" aria-labelledby="other-days" data-stale={isStale}>
      <h2 id="other-days">{title}</h2>
      <p className="lead days-answer">{answer}</p>
      <DayColumns all={all} known={known} top={top} isAsked={stemCount > 0} asked={asked?.day ?? null} />
      {asked && (
        <DayColumns all={daysBeside(all, asked.day)} known={known} top={top} isAsked asked={asked.day} isForPhone />
      )}
      <ul className="near-days">
        {nearDays(days, stemCount).map((day) => (
          <li key={day.day}>
            <button type="button" className="quiet" onClick={() => choose(day.day)}>
              {withWeekday(day.day)}
            </button>
            <DayState day={day} stemCount={stemCount} />
            <small>{day.booked.length > 0 ? bookedInWords(day.booked) : "nothing booked that week"}</small>
          </li>
        ))}
      </ul>
      <details>
        <summary>Every day as a table</summary>
        <DayTable days={known.toSorted((a, b) => (a.day < b.day ? -1 : 1))} choose={choose} />
      </details>
    </section>
  );
}

/** Days drawn before and after the one that is asked, where there is room for no more. */
const BESIDE_COUNT = 4;

/** As many days round the one asked, more of them after it where few are before. */
function daysBeside(all: readonly Day[], asked: Day): readonly Day[] {
  const first = Math.max(0, Math.min(all.indexOf(asked) - BESIDE_COUNT, all.length - 2 * BESIDE_COUNT - 1));
  return all.slice(first, first + 2 * BESIDE_COUNT + 1);
}

/** Days shown as buttons. */
const NEAR_COUNT = 4;

/** The nearest that has it all, then the nearest with any, in order of the year; without a question those with the most. */
function nearDays(days: readonly OtherDayView[], stemCount: number): OtherDayView[] {
  const some = days.filter(({ likelyStems }) => likelyStems > 0);
  const best = stemCount > 0 ? nearestThatHas(days, stemCount) : null;
  const ranked = stemCount > 0 ? some : some.toSorted((a, b) => b.promisedStems - a.promisedStems);
  const chosen = [...(best ? [best] : []), ...ranked.filter((day) => day !== best)].slice(0, NEAR_COUNT);
  return chosen.sort((a, b) => (a.day < b.day ? -1 : 1));
}

function DayState({ day: { promisedStems, likelyStems }, stemCount }: { day: OtherDayView; stemCount: number }) {
  const isAll = stemCount > 0 && promisedStems >= stemCount;
  if (isAll)
    return (
      <span className="state covered">
        <StateSign of="tick" size={14} />
        all {inWholes(stemCount)}
      </span>
    );
  return (
    <span>
      {inWholes(promisedStems)} promised{likelyStems > promisedStems && `, ${inWholes(likelyStems)} likely`}
    </span>
  );
}

const bookedInWords = ([first, ...more]: readonly string[]): string =>
  `${first}${more.length > 0 ? ` and ${more.length} more` : ""} that week`;

function DayTable({ days, choose }: { days: readonly OtherDayView[]; choose: (day: Day) => void }) {
  const columns: readonly Column<OtherDayView>[] = [
    {
      head: "Day",
      kind: "name",
      cell: ({ day }) => (
        <button type="button" className="quiet" onClick={() => choose(day)}>
          {withWeekday(day)}
        </button>
      ),
    },
    { head: "Can promise", unit: "stems", kind: "number", cell: ({ promisedStems }) => inWholes(promisedStems) },
    { head: "Likely", unit: "stems", kind: "number", cell: ({ likelyStems }) => inWholes(likelyStems) },
    {
      head: "Colours, with spare",
      phone: "none",
      className: "day-colours",
      cell: ({ colours }) =>
        colours.map(({ colour, stems }) => (
          <span key={colour}>
            {inWholes(stems)} <ColourWord colour={colour} />{" "}
          </span>
        )),
    },
    {
      head: "Booked that week",
      phone: "none",
      cell: ({ booked }) => (booked.length > 0 ? bookedInWords(booked) : "·"),
    },
  ];
  return <Table caption="Day by day" isCaptionHidden columns={columns} rows={days} keyOf={({ day }) => day} isNarrow />;
}
