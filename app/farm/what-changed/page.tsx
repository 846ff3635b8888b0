import type { Metadata } from "next";
import { changedFigures } from "#lib/domain/built-in-figures";
import { CATALOGUE } from "#lib/domain/catalogue/crops";
import type { Farm } from "#lib/domain/records/farm-settings";
import { type FiguresOutcome, figuresTaken } from "#lib/plan/what-if/figures-taken";
import { countOf, inWholes } from "#lib/plan/words/numbers";
import { seasonYear } from "../../frame/season-year";
import { loadPlan } from "../../load";
import { FarmTabs } from "../farm-tabs";
import { ChangedCropFold } from "./changed-crop";
import { SettleButtons } from "./settle-buttons";
import "./what-changed.css";
import { WinterFigures } from "./winter-figures";

export const metadata: Metadata = { title: "What changed" };

/** Built-in figures that changed since the farm took them: old and new, what each crop would do to the season, and who decides. */
export default async function WhatChangedPage() {
  const plan = loadPlan(await seasonYear());
  const outcome = figuresTaken(plan, changedFigures(plan.snapshot, CATALOGUE));
  return (
    <>
      <h1>Farm: what changed</h1>
      <FarmTabs open="/farm/what-changed" />
      <WinterFigures snapshot={plan.snapshot} seasonYear={plan.seasonYear} />
      {outcome.crops.length === 0 ? (
        <p className="lead">
          Every built-in figure of a crop that the farm uses stands as the tool has it today. Your own numbers are
          yours: they never change by themselves.
        </p>
      ) : (
        <Changed outcome={outcome} farm={plan.snapshot.farm} seasonYear={plan.seasonYear} />
      )}
    </>
  );
}

/** So few crops stand open; more are folded, each with what it would do. */
const OPEN_AT_MOST = 3;

type Props = { outcome: FiguresOutcome; farm: Farm; seasonYear: number };

function Changed({ outcome: { crops, shortBefore, shortAfterAll }, farm, seasonYear }: Props) {
  return (
    <>
      <p className="lead">
        The built-in figures of <strong>{countOf(crops.length, "crop")}</strong> have changed, and none of yours has
        moved. With all of them taken, {seasonYear} is <strong>{inWholes(shortAfterAll)}</strong> stems short; as the
        farm stands, {inWholes(shortBefore)}.
      </p>
      <p className="soft">
        A figure that you keep becomes your own, and is not asked about again. Either can be undone.
      </p>
      {crops.length > 1 && <SettleButtons crop="all" name="all crops" isMain />}
      <ul className="changed-crops">
        {crops.map((crop) => (
          <ChangedCropFold
            key={crop.changed.crop.id}
            outcome={crop}
            farm={farm}
            isOpen={crops.length <= OPEN_AT_MOST}
          />
        ))}
      </ul>
    </>
  );
}
