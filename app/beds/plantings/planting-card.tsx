import { inShort, toDay, toDayNumber } from "#lib/domain/day";
import { TREATMENT_WORDS } from "#lib/domain/words";
import { warmthOf } from "#lib/plan/road/first-cut";
import type { PlantingForecast } from "#lib/plan/road/forecast";
import { alivePlants } from "#lib/plan/road/grown";
import { heatReached } from "#lib/plan/road/heat-reached";
import type { Plan } from "#lib/plan/road/plan";
import { countedShare } from "#lib/plan/road/plants-seen";
import { shareOfLate } from "#lib/plan/road/saleable-share";
import { countOf, inWholes } from "#lib/plan/words/numbers";
import { ownSeasonInWords } from "#lib/plan/words/own-season-words";
import { shownInWords } from "#lib/plan/words/shown-words";
import { gradedInWords, lateInWords, whyInWords } from "#lib/plan/words/why-words";
import { today } from "../../clock";
import { IfMay } from "../../people/if-may";
import { ColourWord } from "../../ui/colour-words";
import { Form } from "../../ui/form.client";
import { BloomFigures } from "../curves/bloom-figures";
import { CurveForm } from "../curves/curve-form";
import { PlantsLost } from "../losses/plants-lost";
import { KeepSwitch } from "./keep-switch";
import { deletePlanting } from "./planting-actions";
import type { PlantingChoices } from "./planting-choices";
import { PlantingForm } from "./planting-form";

/** One planting: what it will give, keep or dig, its bloom, and the forms to change any of it. */
export function PlantingCard({ row, plan, choices }: { row: PlantingForecast; plan: Plan; choices: PlantingChoices }) {
  const { planting, crop, variety, curve } = row;
  const { farm } = plan.snapshot;
  return (
    <section className="card" aria-labelledby={`planting-${planting.id}`}>
      <h3 id={`planting-${planting.id}`}>
        {crop.name} {variety.name}, <ColourWord colour={variety.colour} />
      </h3>
      <p>
        {TREATMENT_WORDS[planting.treatment]}, planted {inShort(planting.plantedOn)} {planting.plantedOn.slice(0, 4)};{" "}
        {countOf(planting.plantCount, "plant")}, about {inWholes(alivePlants(planting, farm, countedShare(row.seen)))}{" "}
        alive at the first cut.{" "}
        {planting.flags.map((flag) => (
          <span key={flag} className="tag">
            {flag}
          </span>
        ))}
      </p>
      {curve ? <Outcome row={row} /> : <NoCurve row={row} />}
      <Why row={row} plan={plan} />
      <IfMay call="beds/plantings/planting-actions.ts#keepOrDig">
        <KeepSwitch row={row} plan={plan} />
      </IfMay>
      <BloomFigures row={row} plan={plan} />
      <IfMay call="beds/losses/loss-actions.ts#noteLoss">
        <PlantsLost row={row} snapshot={plan.snapshot} today={today()} />
      </IfMay>
      <IfMay call="beds/plantings/planting-actions.ts#savePlanting">
        <details>
          <summary>Change this planting</summary>
          <PlantingForm
            row={row}
            bedId={planting.bedId}
            seasonYear={planting.seasonYear}
            farm={farm}
            choices={choices}
          />
          <Form
            action={deletePlanting}
            submit="Remove this planting"
            hidden={{ plantingId: planting.id }}
            beside={<span className="hint">Undo it in the bar above, if need be.</span>}
            isQuiet
          />
        </details>
        <details>
          <summary>{curve ? "Change the bloom curve" : "Add a bloom curve"}</summary>
          <CurveForm
            crop={crop}
            variety={variety}
            plantingId={planting.id}
            treatment={planting.treatment}
            curve={curve}
            manner={plan.snapshot.farm}
          />
        </details>
      </IfMay>
    </section>
  );
}

const Outcome = ({ row: { cutDays, cutStems, lostInFieldStems, lostToFrostStems } }: { row: PlantingForecast }) => (
  <p>
    {cutDays.length === 0 ? (
      <strong>Nothing can be cut.</strong>
    ) : (
      <>
        Cut from <strong>{inShort(toDay(cutDays[0]))}</strong> to {inShort(toDay(cutDays[cutDays.length - 1]))}: about{" "}
        <strong>{inWholes(cutStems.reduce((sum, stems) => sum + stems, 0))} stems</strong>.
      </>
    )}
    {lostInFieldStems > 0 && ` ${countOf(lostInFieldStems, "stem")} lost waiting in the field.`}
    {lostToFrostStems > 0 && ` ${countOf(lostToFrostStems, "stem")} lost to frost.`}
  </p>
);

/** Why it blooms when it does, and what is not known of it. */
function Why({ row, plan: { snapshot } }: { row: PlantingForecast; plan: Plan }) {
  const { farm, weather } = snapshot;
  const season = warmthOf(farm, weather);
  const reached = heatReached(row, season, toDayNumber(today()));
  const late = row.curve && lateInWords(shareOfLate(row.curve, row.planting, season));
  const said = ownSeasonInWords(row.planting);
  const seen = snapshot.shown?.get(row.planting.id);
  const shown = row.bare && seen ? shownInWords(seen) : null;
  const isAgeAsked = row.curve !== null && row.curve.shareByAge.length > 1 && row.planting.ageSeasons === null;
  return (
    <>
      <p>
        {whyInWords(row, reached, farm.units)} {late} {gradedInWords(row)}
        {said && ` By your own word it is ${said}, this season only.`}
        {shown && ` The season has shown it ${shown}, and the plan reckons with that.`}
      </p>
      {isAgeAsked && (
        <p className="hint">
          Its age is not told, so it is taken as grown. Young plants give less: say the season of its life under “Change
          this planting”.
        </p>
      )}
    </>
  );
}

const NoCurve = ({ row: { crop, planting } }: { row: PlantingForecast }) => (
  <p className="short-word">
    {crop.name} has no bloom curve for “{TREATMENT_WORDS[planting.treatment]}”: it is forecast at 0 stems. Add a curve
    below, or change how it is grown.
  </p>
);
