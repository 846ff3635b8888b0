import type { Metadata } from "next";
import { mondayOf } from "#lib/domain/day";
import { replay } from "#lib/plan/road/replay";
import { winterBeds } from "#lib/plan/winter/beds";
import { keepingTime } from "#lib/plan/winter/keeping-time";
import { notSampledInWords, sampledInWords, tooFewYearsInWords } from "#lib/plan/words/replay-words";
import { today } from "../clock";
import { SeasonLine } from "../frame/season-head";
import { seasonYear } from "../frame/season-year";
import { farmRevision, loadPlan } from "../load";
import { Patterns } from "../look/patterns";
import { bedBlooms } from "./bed-blooms";
import { BeforeKeeping } from "./before-keeping";
import { NoCandidates } from "./no-candidates";
import { NotAsked } from "./not-asked";
import { Planner } from "./planner.client";
import { atHandOf, bedRows, keptNowIds } from "./planner-data";
import { StillToCome } from "./still-to-come";
import { boardOf } from "./tried-plan";

export const metadata: Metadata = { title: "Keep or dig" };

/** Which beds of tender perennials stay in the ground for the season ahead: the answer in words, then bed by bed. */
export default async function KeepOrDigPage() {
  const year = await seasonYear();
  const { snapshot } = loadPlan(year);
  const rows = bedRows(snapshot, year);
  const kept = keptNowIds(snapshot, year);
  const beds = winterBeds(snapshot, year);
  return (
    <>
      <SeasonLine farm={snapshot.farm} seasonYear={year} back="/keep-or-dig" />
      {rows.length === 0 ? (
        <>
          <h1>Keep or dig</h1>
          <NoCandidates snapshot={snapshot} seasonYear={year} />
        </>
      ) : (
        <>
          <Patterns />
          <Planner
            key={year}
            data={{
              seasonYear: year,
              revision: farmRevision(),
              units: snapshot.farm.units,
              rows,
              atHand: atHandOf(snapshot, rows.length),
              keptNowIds: kept,
              board: boardOf(year, kept),
              blooms: bedBlooms(snapshot, year, beds),
              sampled:
                sampledInWords(replay(snapshot, year), tooFewYearsInWords(snapshot)) +
                notSampledInWords(snapshot, year),
              thisMonday: mondayOf(today()),
              isOver: keepingTime(snapshot, beds, year, today()) === "over",
            }}
          />
          <StillToCome snapshot={snapshot} seasonYear={year} />
          <NotAsked snapshot={snapshot} seasonYear={year} />
          <BeforeKeeping />
        </>
      )}
    </>
  );
}
