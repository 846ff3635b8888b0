import type { Metadata } from "next";
import { TREATMENT_WORDS, type Treatment } from "#lib/domain/words";
import { firstCutsOnRecord } from "#lib/plan/learning/first-cuts-on-record";
import { firstCutInLine } from "#lib/sheets/first-cuts-sheet";
import { loadFarm } from "../../../load";
import { FarmTabs } from "../../farm-tabs";
import { KeptFirstCuts } from "./kept-first-cuts";
import { LearnForm } from "./learn-form.client";

export const metadata: Metadata = { title: "Learn from first cuts" };

/** First cuts that the grower wrote down, with the weather of their years, teach a curve when it begins. */
export default function LearnPage() {
  const snapshot = loadFarm();
  const { farm, weather, curves, crops, varieties, firstCuts } = snapshot;
  const nameOf = new Map(
    [...crops, ...varieties.map((row) => ({ ...row, id: -row.id }))].map(({ id, name }) => [id, name]),
  );
  const called = (cropId: number, varietyId: number | null, treatment: Treatment) =>
    [nameOf.get(cropId), varietyId && nameOf.get(-varietyId), TREATMENT_WORDS[treatment]].filter(Boolean).join(", ");
  const choices = curves
    .filter(({ plantingId }) => plantingId === null)
    .map((curve) => ({ ...curve, onRecord: firstCutsOnRecord(snapshot, curve) }))
    .map(({ id, cropId, varietyId, treatment, anchor, onRecord }) => ({
      value: String(id),
      isPlanted: anchor.kind === "days-after-planting",
      onRecord: onRecord.map(firstCutInLine),
      label: called(cropId, varietyId, treatment),
    }))
    .sort((a, b) => a.label.localeCompare(b.label));
  return (
    <>
      <p className="crumb">
        <a href="/farm/weather">Weather</a>
      </p>
      <h1>Learn from first cuts</h1>
      <FarmTabs open="/farm/weather" />
      {weather === null ? (
        <p className="notice">
          First <a href="/farm/weather">bring in the daily highs and lows</a> of the years in which you wrote first cuts
          down.
        </p>
      ) : (
        <>
          <p>
            Three first cuts or more, one a year, say whether a crop follows warmth, and from which day and degree. Each
            is told by what the other years teach, so the errors are honest. Nothing changes before you take it. A crop
            that is planted anew each year needs its planting days too: three plantings or more, of two years or more.
          </p>
          <LearnForm choices={choices} units={farm.units} />
        </>
      )}
      {(weather !== null || firstCuts.length > 0) && (
        <KeptFirstCuts
          kept={firstCuts}
          nameOf={({ cropId, varietyId, treatment }) => called(cropId, varietyId, treatment)}
          manner={farm}
        />
      )}
    </>
  );
}
