import type { Metadata } from "next";
import { talliesOn } from "#db/read/tallies";
import { addDays, type Day, inFull, toDayNumber, yearOf } from "#lib/domain/day";
import { daySchema } from "#lib/domain/day-schema";
import { strainsBetween } from "#lib/plan/road/capacity";
import { dayToCut } from "#lib/plan/road/day-to-cut";
import { stemsOnDay } from "#lib/plan/road/stems-on-day";
import { cutSumInWords } from "#lib/plan/words/cut-words";
import { pickText } from "#lib/plan/words/pick-text";
import { CountsDue } from "../bookings/final-count/counts-due";
import { ToReview } from "../bookings/review/to-review";
import { ArrivalsDue } from "../buying/placed/arrivals";
import { now as moment, today } from "../clock";
import { FieldList } from "../field/field-list.client";
import { listedBeds } from "../field/listed-beds";
import { Cautions } from "../frame/cautions";
import { farmDatabase, loadFarm, loadPlan, whileHeld } from "../load";
import { mayOpen } from "../people/allowed";
import { IfMay } from "../people/if-may";
import { roleNow } from "../people/who";
import { BucketCare } from "../picking/bucket-care";
import { loadLines } from "../picking/load-lines";
import { SeasonHeatLine } from "../season/season-heat-line";
import { StrainList } from "../season/strain-list";
import { ShareButton } from "../ui/share-button.client";
import { BedsToWalk } from "./beds-to-walk";
import { Bench } from "./bench";
import { CutRows } from "./cut-rows";
import { DoneRows } from "./done-rows";
import { EventsOfDay } from "./events-of-day";
import { FrostCame } from "./frost-came";
import { FrostWatch } from "./frost-watch";
import { LateCounts } from "./late-counts";
import { Moved } from "./moved";
import { NotRecorded } from "./not-recorded";
import { Soon } from "./soon";

export const metadata: Metadata = { title: "Today" };

/** Days behind today that can still be recorded here without looking for them. */
const DAYS_BACK = 14;

/** Days from today on of which it is said what is too much for hands and room. */
const DAYS_AHEAD = 6;

/** What to cut today, bed by bed, each row recorded with a tap; or the same for a day that has passed. */
export default async function TodayPage({ searchParams }: { searchParams: Promise<Record<string, unknown>> }) {
  const now = today();
  const day = dayOf((await searchParams).day, now);
  const snapshot = loadFarm();
  const lines = loadLines({ day }) ?? [];
  const { open, done } = dayToCut(snapshot, lines, day);
  const tallies = whileHeld(() => talliesOn(farmDatabase(), day), []);
  const stemsReady = stemsOnDay(loadPlan(yearOf(day)).forecast.plantings, day);
  const crops = [...new Set([...open, ...done].map(({ crop }) => crop))];
  return (
    <>
      {day !== now && (
        <p className="crumb no-print">
          <a href="/today">Today</a>
        </p>
      )}
      <section className="day-board" aria-labelledby="day">
        <h1 id="day">{inFull(day)}</h1>
        <p>{cutSumInWords(open, done, day === now)}</p>
        <p className="row no-print">
          {open.length > 0 && (
            <>
              <a className="button" href={`/picking/print?day=${day}`}>
                Print the list
              </a>
              <a className="button" href={`/picking/labels?day=${day}`}>
                Bucket labels
              </a>
              <ShareButton
                className="button"
                title="Pick list"
                text={pickText(inFull(day), open)}
                label="Share the list"
              />
            </>
          )}
          <a className="button" href="/picking">
            All picking days
          </a>
        </p>
      </section>
      {day === now && <EventsOfDay snapshot={snapshot} today={now} />}
      {day === now && <ArrivalsDue snapshot={snapshot} today={now} />}
      <Cautions crops={crops} />
      <FieldList madeAt={moment()} farmDay={now} beds={listedBeds(open)}>
        <CutRows rows={open} beds={snapshot.beds} day={day} isPast={day !== now} />
      </FieldList>
      <LateCounts snapshot={snapshot} rows={done} late={tallies.filter(({ isApart }) => isApart)} />
      <DoneRows rows={done} tallies={tallies.filter(({ isApart }) => !isApart)} stemsReady={stemsReady} />
      <Bench lines={lines} farm={snapshot.farm} />
      {day === now && (
        <>
          <StrainList
            strains={strainsBetween(loadPlan(yearOf(now)), toDayNumber(now), toDayNumber(now) + DAYS_AHEAD)}
            title="More than hands and room this week"
          />
          {mayOpen(roleNow(), "/buying") && (
            <>
              <FrostWatch plan={loadPlan(yearOf(now))} today={toDayNumber(now)} />
              <Moved />
              <Soon now={now} />
            </>
          )}
          <IfMay call="today/frost-actions.ts#noteFrost">
            <FrostCame plan={loadPlan(yearOf(now))} today={now} />
          </IfMay>
          {mayOpen(roleNow(), "/beds/buds") && <BedsToWalk snapshot={snapshot} today={now} />}
          {mayOpen(roleNow(), "/bookings") && <CountsDue snapshot={snapshot} today={now} />}
          <ToReview now={now} />
          <SeasonHeatLine snapshot={snapshot} seasonYear={yearOf(now)} />
          <NotRecorded from={addDays(now, -DAYS_BACK)} today={now} />
        </>
      )}
      {crops.length > 0 && <BucketCare />}
    </>
  );
}

/** The day asked for, if it has passed; today otherwise. */
function dayOf(asked: unknown, now: Day): Day {
  const read = daySchema.safeParse(asked);
  return read.success && read.data < now && toDayNumber(now) - toDayNumber(read.data) < 366 && yearOf(read.data) > 1990
    ? read.data
    : now;
}
