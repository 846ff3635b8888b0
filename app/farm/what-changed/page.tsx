import type { Metadata } from "next";
import type { Farm } from "#lib/domain/records/farm-settings";
import { type FiguresOutcome, figuresTaken } from "#lib/plan/what-if/figures-taken";
import { inWholes } from "#lib/plan/words/numbers";
import { seasonYear } from "../../frame/season-year";
import { loadPlan } from "../../load";
import { FarmTabs } from "../farm-tabs";
import { ChangedCropFold } from "./changed-crop";
import { changedInWords, changedOf } from "./changed-of";
import { ChangedRecipesFold } from "./changed-recipes";
import { MissingCurves } from "./missing-curve-list";
import { SettleButtons } from "./settle-buttons";
import "./what-changed.css";
import { WinterFigures } from "./winter-figures";

export const metadata: Metadata = { title: "What changed" };

/** Built-in figures that changed since the farm took them: old and new, what each crop would do to the season, and who decides. */
export default async function WhatChangedPage() {
  const plan = loadPlan(await seasonYear());
  const changed = changedOf(plan.snapshot);
  const outcome = figuresTaken(plan, changed.crops, changed.recipes);
  return (
    <>
      <h1>Farm: what changed</h1>
      <FarmTabs open="/farm/what-changed" />
      <WinterFigures snapshot={plan.snapshot} seasonYear={plan.seasonYear} />
      {outcome.crops.length === 0 && !outcome.recipes ? (
        <p className="lead">
          Every built-in figure of a crop or recipe that the farm uses stands as the tool has it today. Your own numbers
          are yours: they never change by themselves.
        </p>
      ) : (
        <Changed
          whose={changedInWords(changed)}
          outcome={outcome}
          farm={plan.snapshot.farm}
          seasonYear={plan.seasonYear}
        />
      )}
      <MissingCurves snapshot={plan.snapshot} />
    </>
  );
}

/** So few crops stand open; more are folded, each with what it would do. */
const OPEN_AT_MOST = 3;

type Props = { whose: string; outcome: FiguresOutcome; farm: Farm; seasonYear: number };

function Changed({ whose, outcome: { crops, recipes, shortBefore, shortAfterAll }, farm, seasonYear }: Props) {
  return (
    <>
      <p className="lead">
        The built-in figures of <strong>{whose}</strong> have changed, and none of yours has moved. With all of them
        taken, {seasonYear} is <strong>{inWholes(shortAfterAll)}</strong> stems short; as the farm stands,{" "}
        {inWholes(shortBefore)}.
      </p>
      <p className="soft">
        A figure that you keep becomes your own, and is not asked about again. Either can be undone.
      </p>
      {crops.length + (recipes ? 1 : 0) > 1 && <SettleButtons of="all" name="all of it" isMain />}
      <ul className="changed-crops">
        {recipes && <ChangedRecipesFold outcome={recipes} isOpen={crops.length < OPEN_AT_MOST} />}
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
