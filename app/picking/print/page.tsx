import type { Metadata } from "next";
import { Fragment } from "react";
import { wallTime } from "#db/journal/wall-time";
import { toDay, withWeekday } from "#lib/domain/day";
import { byPickingDay, type PickDay } from "#lib/plan/road/pick-sheets";
import { now as moment } from "../../clock";
import { Cautions } from "../../frame/cautions";
import { BucketCare } from "../bucket-care";
import { choiceOf } from "../choice";
import { loadLines } from "../load-lines";
import { PaperActions } from "../paper-actions";
import { PickPaper } from "../pick-paper";
import { WeekPaper } from "../week-paper";

export const metadata: Metadata = { title: "Pick list to print" };

/** The pick list as it comes out of the printer: a week's days side by side, else day after day. */
export default async function PrintPage({ searchParams }: { searchParams: Promise<Record<string, unknown>> }) {
  const choice = choiceOf(await searchParams);
  const lines = (choice && loadLines(choice)) ?? [];
  const days = byPickingDay(lines);
  const madeAt = wallTime(moment());
  const isWeek = choice !== null && "week" in choice && days.length > 1;
  return (
    <>
      <h1 className="visually-hidden">Pick list to print</h1>
      <PaperActions choice={choice} />
      {isWeek && <DayLinks days={days} />}
      {lines.length === 0 && <p>Nothing to pick.</p>}
      {lines.length > 0 && (
        <>
          {isWeek ? <WeekPaper days={days} madeAt={madeAt} /> : <PickPaper days={days} madeAt={madeAt} />}
          <BucketCare />
        </>
      )}
      <Cautions crops={[...new Set(lines.map((line) => line.crop))]} open />
    </>
  );
}

/** A day's own sheet says who gets the stems. */
const DayLinks = ({ days }: { days: readonly PickDay[] }) => (
  <p className="no-print">
    A day’s own sheet, with whom each stem is for:{" "}
    {days.map(({ cutDay }, index) => (
      <Fragment key={cutDay}>
        {index > 0 && ", "}
        <a href={`/picking/print?day=${toDay(cutDay)}`}>{withWeekday(toDay(cutDay))}</a>
      </Fragment>
    ))}
    .
  </p>
);
