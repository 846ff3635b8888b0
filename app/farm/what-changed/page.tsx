import type { Metadata } from "next";
import type { Farm } from "#lib/domain/records/farm-settings";
import { seasonYear } from "../../frame/season-year";
import { loadFarm } from "../../load";
import { FarmTabs } from "../farm-tabs";
import { ChangedCropFold } from "./changed-crop";
import { changedInWords, changedOf } from "./changed-of";
import { ChangedRecipesFold } from "./changed-recipes";
import { Effects } from "./effects.client";
import { MissingCurves } from "./missing-curve-list";
import { SettleButtons } from "./settle-buttons";
import "./what-changed.css";
import { WinterFigures } from "./winter-figures";

export const metadata: Metadata = { title: "What changed" };

/** Built-in figures that changed since the farm took them: old and new, what each crop would do to the season, and who decides. */
export default async function WhatChangedPage() {
  const year = await seasonYear();
  const snapshot = loadFarm();
  const changed = changedOf(snapshot);
  return (
    <>
      <h1>Farm: what changed</h1>
      <FarmTabs open="/farm/what-changed" />
      <WinterFigures snapshot={snapshot} seasonYear={year} />
      {changed.crops.length === 0 && changed.recipes.length === 0 ? (
        <p className="lead">
          Every built-in figure of a crop or recipe that the farm uses stands as the tool has it today. Your own numbers
          are yours: they never change by themselves.
        </p>
      ) : (
        <Changed changed={changed} farm={snapshot.farm} seasonYear={year} />
      )}
      <MissingCurves snapshot={snapshot} />
    </>
  );
}

/** So few crops stand open; more are folded, each with what it would do. */
const OPEN_AT_MOST = 3;

type Props = { changed: ReturnType<typeof changedOf>; farm: Farm; seasonYear: number };

const Changed = ({ changed, farm, seasonYear }: Props) => (
  <Effects
    seasonYear={seasonYear}
    lead={
      <>
        The built-in figures of <strong>{changedInWords(changed)}</strong> have changed, and none of yours has moved.
      </>
    }
  >
    <p className="soft">A figure that you keep becomes your own, and is not asked about again. Either can be undone.</p>
    {changed.crops.length + Math.min(1, changed.recipes.length) > 1 && (
      <SettleButtons of="all" name="all of it" isMain />
    )}
    <ul className="changed-crops">
      {changed.recipes.length > 0 && (
        <ChangedRecipesFold changed={changed.recipes} isOpen={changed.crops.length < OPEN_AT_MOST} />
      )}
      {changed.crops.map((crop) => (
        <ChangedCropFold key={crop.crop.id} changed={crop} farm={farm} isOpen={changed.crops.length <= OPEN_AT_MOST} />
      ))}
    </ul>
  </Effects>
);
