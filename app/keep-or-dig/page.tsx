import type { Metadata } from "next";
import { revision } from "#db/journal/journal";
import { SeasonHead } from "../frame/season-head";
import { seasonYear } from "../frame/season-year";
import { farmDatabase, loadPlan } from "../load";
import { BeforeKeeping } from "./before-keeping";
import { NoCandidates } from "./no-candidates";
import { Planner } from "./planner.client";
import { atHandOf, bedRows, keptNowIds } from "./planner-data";
import { boardOf } from "./tried-plan";

export const metadata: Metadata = { title: "Keep or dig" };

/** Which beds of tender perennials stay in the ground for the season ahead: the answer in words, then bed by bed. */
export default async function KeepOrDigPage() {
  const year = await seasonYear();
  const { snapshot } = loadPlan(year);
  const rows = bedRows(snapshot, year);
  const kept = keptNowIds(snapshot, year);
  return (
    <>
      <SeasonHead title={`Keep or dig, for ${year}`} seasonYear={year} back="/keep-or-dig" />
      {rows.length === 0 ? (
        <NoCandidates snapshot={snapshot} seasonYear={year} />
      ) : (
        <>
          <p>
            Beds kept in the ground over the winter of {year - 1}–{year} bloom earlier than those dug and replanted.{" "}
            <a href="/keep-or-dig/worksheet">Winter worksheet</a>
          </p>
          <Planner
            key={year}
            data={{
              seasonYear: year,
              revision: revision(farmDatabase()),
              units: snapshot.farm.units,
              rows,
              atHand: atHandOf(snapshot, rows.length),
              keptNowIds: kept,
              board: boardOf(year, kept),
            }}
          />
          <BeforeKeeping />
        </>
      )}
    </>
  );
}
