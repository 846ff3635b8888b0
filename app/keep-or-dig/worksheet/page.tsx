import type { Metadata } from "next";
import { z } from "zod";
import { type Day, inFull, toDayNumber } from "#lib/domain/day";
import { daySchema } from "#lib/domain/day-schema";
import { bedsKeptNow } from "#lib/plan/winter/kept-beds";
import { countOf } from "#lib/plan/words/numbers";
import { isWinterWork, workInWords } from "#lib/plan/words/task-words";
import { WINTER_CAUTIONS } from "#lib/plan/words/winter-cautions";
import { today } from "../../clock";
import { SeasonHead } from "../../frame/season-head";
import { seasonYear } from "../../frame/season-year";
import { loadFarm } from "../../load";
import { byMonth } from "../../ui/by-month";
import { PrintButton } from "../../ui/print-button.client";
import { NoCandidates } from "../no-candidates";
import { WinterCautionList } from "../winter-caution-list";
import { CameThrough } from "./came-through";
import { worksheetOf } from "./load-worksheet";
import { WorkDay } from "./work-day";
import { WorkTotals } from "./work-totals";

export const metadata: Metadata = { title: "Winter worksheet" };

const query = z.object({
  day: z
    .union([z.literal("all"), daySchema])
    .optional()
    .catch(undefined),
});

/** So much work has its rows on one page; of more the next day's are there, and of the others the sums. */
const MOST_TASKS = 600;

/** The winter's work from today to spring, day after day, as the farm has its beds now. */
export default async function WorksheetPage({ searchParams }: { searchParams: Promise<Record<string, unknown>> }) {
  const { day: chosen } = query.parse(await searchParams);
  const year = await seasonYear();
  const snapshot = loadFarm();
  const { farm } = snapshot;
  const sheet = worksheetOf(snapshot, year, today());
  const days = [...new Set(sheet.tasks.map(({ day }) => day))];
  const shown = chosen && chosen !== "all" && days.includes(chosen) ? [chosen] : days;
  const isAlone = shown.length < days.length;
  const isLong = sheet.tasks.length > MOST_TASKS && !isAlone && chosen !== "all";
  const [next] = days;
  const workOf = (day: Day) => (
    <WorkDay
      key={day}
      title={inFull(day)}
      day={day}
      tasks={sheet.tasks.filter((task) => task.day === day)}
      units={farm.units}
      isOpen={isAlone || day === next}
      isAlone={isAlone}
      isElsewhere={isLong && day !== next}
    />
  );
  if (sheet.beds.length === 0)
    return (
      <>
        <h1>Winter worksheet</h1>
        <NoCandidates snapshot={snapshot} seasonYear={year} />
      </>
    );
  return (
    <>
      <p className="crumb no-print">
        <a href="/keep-or-dig">Keep or dig</a>
      </p>
      <section className="page" aria-labelledby="worksheet">
        <SeasonHead
          id="worksheet"
          title={`Winter worksheet, ${year - 1}–${year}`}
          seasonYear={year}
          back="/keep-or-dig/worksheet"
        />
        <p className="only-print">{farm.name}</p>
        <div className="actions">
          <PrintButton />
          <a className="button" href="/keep-or-dig/worksheet/calendar">
            Calendar file
          </a>
          <a className="button" href="/keep-or-dig/worksheet/csv">
            CSV
          </a>
          {isAlone && (
            <a className="button" href="/keep-or-dig/worksheet">
              All {countOf(days.length, "day")}
            </a>
          )}
          {isLong && (
            <a className="button" href="/keep-or-dig/worksheet?day=all">
              All {countOf(days.length, "day")} on one page, to print
            </a>
          )}
        </div>
        {isWinterWork(sheet) && (
          <>
            <p className="lead">
              Wet soil first, then cold: a clump rots in standing water long before frost reaches it. Lift what does not
              drain; crown the leaves and lay the tarp so that water runs off.
            </p>
            <p>{workInWords(sheet, farm.winter.workHoursPerDay)}</p>
            <p className="soft">
              Days hang on your median first frost and on your last ones of spring: move them with the weather. Two
              weeks from frost to digging is published (University of Minnesota Extension); the other spans are common
              practice.
            </p>
          </>
        )}
        <WorkTotals sheet={sheet} units={farm.units} />
        {isWinterWork(sheet) && (
          <details className="notice prints-open">
            <summary>
              <span>
                <strong>Take care:</strong> wet ground, heavy clumps, stakes at eye height, wet tarps and hot ones,
                clean blades, what a store may take
              </span>
            </summary>
            <WinterCautionList cautions={WINTER_CAUTIONS} />
          </details>
        )}
      </section>
      <div className="work-days">
        {isLong
          ? byMonth(shown, (day) => toDayNumber(day)).map(({ month, rows }, index) => (
              <details key={month} className="fold" open={index === 0}>
                <summary>
                  {month}: {countOf(rows.length, "day")}
                </summary>
                {rows.map(workOf)}
              </details>
            ))
          : shown.map(workOf)}
      </div>
      <CameThrough beds={bedsKeptNow(snapshot, year)} snapshot={snapshot} seasonYear={year} />
    </>
  );
}
