import type { Metadata } from "next";
import { toDayNumber, yearOf } from "#lib/domain/day";
import type { Snapshot } from "#lib/domain/snapshot";
import { frostDayOf } from "#lib/plan/road/forecast";
import { today } from "../../../clock";
import { SeasonHeadByAddress } from "../../../frame/season-head";
import { loadFarm } from "../../../load";
import { BareGround } from "../../../look/bare-ground";
import { Empty } from "../../../ui/empty";
import { HowTrueFound } from "./how-true-found.client";
import { lookedBackOn } from "./looked-back-on";

export const metadata: Metadata = { title: "How true was it" };

/** What the forecasts of a season said in winter, in spring and four weeks ahead, beside what was recorded. */
export default async function HowTruePage({ searchParams }: { searchParams: Promise<Record<string, unknown>> }) {
  const year = lookedBackOn(await searchParams);
  const farm = loadFarm();
  const isOver = frostDayOf(farm.farm, year) <= toDayNumber(today());
  return (
    <>
      <p className="crumb">
        <a href="/farm/year-end">Year’s end</a>
      </p>
      <SeasonHeadByAddress title={`How true was ${year}`} seasonYear={year} path="/farm/year-end/how-true" />
      {wasRecorded(farm, year) ? (
        <>
          {!isOver && <p className="notice">{year} is still under way: this is what has come so far.</p>}
          <HowTrueFound seasonYear={year}>
            <WhatItRestsOn />
          </HowTrueFound>
        </>
      ) : (
        <Empty title={`Nothing of ${year} was recorded`}>
          <BareGround />
          <p>
            When cuts are recorded on Today, or a first bloom is noted on the bud walk, the forecasts are shown here
            beside what came.
          </p>
          <p className="actions">
            <a className="button" href="/beds/buds">
              Walk the beds for buds
            </a>
          </p>
        </Empty>
      )}
      <p className="no-print">
        <a href={`/bookings/season?season=${year}`}>What became of the stems of {year}</a>
      </p>
    </>
  );
}

const wasRecorded = ({ cuts, budLooks }: Snapshot, year: number): boolean =>
  cuts.some(({ cutOn }) => yearOf(cutOn) === year) || budLooks.some(({ lookedOn }) => yearOf(lookedOn) === year);

const WhatItRestsOn = () => (
  <details className="fold no-print">
    <summary>What this rests on, and what it cannot know</summary>
    <p>
      Each forecast is worked out again from what was recorded before its day: cuts, buds, losses, frost, sprays and
      weather. What has no day of its own stands as it does today: plantings and their plants, curves that you changed,
      the farm’s figures. What you said of the season yourself is left out. What Year’s end taught counts only in the
      seasons after it, so no season is told by its own lesson.
    </p>
    <p>
      A first cut is known where a first bloom was noted or kept, or where something was cut after a week in which a
      look or a cut of none showed that nothing stood open. Where a variety stands twice in a bed it is known of
      neither.
    </p>
    <p>
      Stems are held against the forecast bed by bed on recorded picking days alone, as far as the list asked: of a list
      that was filled nobody knows what else stood there, and a day that nobody recorded says nothing. So a bed that
      gave more than was asked for shows no error, and thin days weigh more than rich ones.
    </p>
  </details>
);
