import type { Crop } from "#lib/domain/records/crop";
import { type BloomCurve, stemsPerPlant } from "#lib/domain/records/curve";
import type { Manner } from "#lib/domain/records/form";
import type { Variety } from "#lib/domain/records/variety";
import { TREATMENT_WORDS, TREATMENTS } from "#lib/domain/words";
import { firstCutInWords } from "#lib/plan/words/clock-words";
import { learnedInWords } from "#lib/plan/words/learned-words";
import { countOf, inTenths } from "#lib/plan/words/numbers";
import { CurveForm } from "../../beds/curves/curve-form";
import { CurveGrounds } from "../../beds/curves/curve-grounds";

type Props = { crop: Crop; curves: readonly BloomCurve[]; varieties: readonly Variety[]; manner: Manner };

/** The bloom curves of a crop, with their origins and a form each, and a form for every way of growing that has none. */
export function CurveList({ crop, curves, varieties, manner }: Props) {
  const missing = TREATMENTS.filter(
    (treatment) => !curves.some((curve) => curve.treatment === treatment && curve.varietyId === null),
  );
  return (
    <section aria-labelledby="curves">
      <h2 id="curves">Bloom curves</h2>
      {curves.map((curve) => {
        if (curve.plantingId !== null) return null;
        const variety = varieties.find(({ id }) => id === curve.varietyId) ?? null;
        return (
          <article key={curve.id} className="card stack" aria-label={`Curve ${TREATMENT_WORDS[curve.treatment]}`}>
            <h3>
              {TREATMENT_WORDS[curve.treatment]}
              {variety && `, only ${variety.name}`}
            </h3>
            <p>
              First cut {firstCutInWords(curve)}, give or take {inTenths(curve.firstCutSpreadDays)} days;{" "}
              {inTenths(stemsPerPlant(curve))} stems per plant over {curve.stemsPerPlantByWeek.length} weeks.
            </p>
            {curve.learned.length > 0 && <p>{learnedInWords(curve)}</p>}
            <CurveGrounds curve={curve} units={manner.units} />
            <details>
              <summary>Change this curve</summary>
              <CurveForm crop={crop} variety={variety} treatment={curve.treatment} curve={curve} manner={manner} />
            </details>
          </article>
        );
      })}
      <OwnCurves count={curves.filter(({ plantingId }) => plantingId !== null).length} />
      {missing.map((treatment) => (
        <details key={treatment}>
          <summary>Add a curve: {TREATMENT_WORDS[treatment]}</summary>
          <CurveForm crop={crop} variety={null} treatment={treatment} curve={null} manner={manner} />
        </details>
      ))}
    </section>
  );
}

const OwnCurves = ({ count }: { count: number }) =>
  count === 0 ? null : (
    <p>
      {countOf(count, "planting has", "plantings have")} a curve of {count === 1 ? "its" : "their"} own, on the page of
      the <a href="/beds">bed</a>.
    </p>
  );
