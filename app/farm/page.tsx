import type { Metadata } from "next";
import { latestChanges } from "#db/journal/journal";
import { firstFigures } from "#lib/plan/what-if/first-figures";
import { seasonYear } from "../frame/season-year";
import { farmDatabase, loadPlan } from "../load";
import { payingBedCount } from "../season/decision";
import { FarmTabs } from "./farm-tabs";
import {
  OfClaims,
  OfDigging,
  OfEventDays,
  OfFrost,
  OfHands,
  OfKeeping,
  OfTheFarm,
  OfTheStore,
  OfTheWeek,
} from "./figures/figure-blocks";
import { FirstFigures } from "./figures/first-figures";
import { ClimateChoice } from "./settings/climate-choice";
import { FrostStations } from "./settings/frost-stations";
import { StartOwn } from "./settings/start-own";
import { WaysOut } from "./ways-out";
import { changedInWords, changedOf } from "./what-changed/changed-of";

export const metadata: Metadata = { title: "Farm" };

/** The farm's figures, the four that move most first; each is changed where it stands. Sources, stations and history lie behind. */
export default async function FarmPage() {
  const plan = loadPlan(await seasonYear());
  const { snapshot } = plan;
  const { farm } = snapshot;
  const [latest] = latestChanges(farmDatabase(), 1);
  const changed = changedInWords(changedOf(snapshot));
  return (
    <>
      <h1>Set these four first</h1>
      <p className="lead soft">
        {farm.name}
        {farm.zone && `, zone ${farm.zone}`}, in {farm.units === "us" ? "feet and °F" : "metres and °C"}. Everything
        else can wait.
      </p>
      <FarmTabs open="/farm" />
      <FirstFigures farm={farm} moved={firstFigures(plan)} payingBedCount={payingBedCount(plan)} />
      <div className="figure-columns">
        <div className="figure-column">
          <OfTheWeek farm={farm} />
          <OfEventDays farm={farm} />
          <OfTheStore farm={farm} />
          <OfHands farm={farm} />
          <OfFrost farm={farm} />
          <OfClaims farm={farm} />
        </div>
        <div className="figure-column">
          <OfDigging farm={farm} />
          <OfKeeping farm={farm} />
        </div>
        <div className="figure-column">
          <OfTheFarm farm={farm} />
          <WaysOut />
          <StartOwn {...snapshot} />
        </div>
      </div>
      <div>
        <details className="fold">
          <summary>Where the figures come from</summary>
          <p className="note">
            Lost in store, 7.5 %: the middle of a published 5 to 10 %. Depth of leaves, 8 inches: published for straw.
            The other figures of the winter are from memory, and how many bookings come true is our own guess: put in
            yours. What crops are held, bunched and priced by stands with its source on <a href="/farm/crops">Crops</a>.
          </p>
        </details>
        <details className="fold">
          <summary>The climate that bloom follows</summary>
          <ClimateChoice farm={farm} />
        </details>
        <details className="fold">
          <summary>Frost dates of a weather station</summary>
          <FrostStations />
        </details>
        <div className="fold row apart beside-fold">
          <a href="/farm/weather">Your own weather</a>
          <span className="note">ten years of highs and lows tell when your ground freezes</span>
        </div>
        <div className="fold row apart beside-fold">
          <a href="/farm/what-changed">Built-in figures that changed</a>
          <span className="note">{changed === "" ? "none that the farm uses" : `${changed}: take or keep`}</span>
        </div>
        <div className="fold row apart beside-fold">
          <a href="/farm/history">What was changed</a>
          <span className="note">{latest ? `last: ${latest.title}` : "nothing yet"}</span>
        </div>
      </div>
    </>
  );
}
