import { monthDayInShort } from "#lib/domain/day";
import type { Crop } from "#lib/domain/records/crop";
import { type BloomCurve, stemsPerPlant } from "#lib/domain/records/curve";
import type { Manner } from "#lib/domain/records/form";
import type { Variety } from "#lib/domain/records/variety";
import { TREATMENT_WORDS, TREATMENTS } from "#lib/domain/words";
import { clockInWords } from "#lib/plan/words/clock-words";
import { inTenths } from "#lib/plan/words/numbers";
import { CurveForm } from "../../beds/curves/curve-form";
import { OriginMark } from "../../ui/origin-mark";

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
        const variety = varieties.find(({ id }) => id === curve.varietyId) ?? null;
        return (
          <article key={curve.id} className="card stack" aria-label={`Curve ${TREATMENT_WORDS[curve.treatment]}`}>
            <h3>
              {TREATMENT_WORDS[curve.treatment]}
              {variety && `, only ${variety.name}`}
            </h3>
            <p>
              First cut {anchorInWords(curve)}, give or take {inTenths(curve.firstCutSpreadDays)} days;{" "}
              {inTenths(stemsPerPlant(curve))} stems per plant over {curve.stemsPerPlantByWeek.length} weeks.
              <br />
              Timing <OriginMark origin={curve.timingOrigin} />
              <br />
              Yield <OriginMark origin={curve.yieldOrigin} />
            </p>
            <ClockLine curve={curve} units={manner.units} />
            {curve.note && <p className="small soft">{curve.note}</p>}
            <details>
              <summary>Change this curve</summary>
              <CurveForm crop={crop} variety={variety} treatment={curve.treatment} curve={curve} manner={manner} />
            </details>
          </article>
        );
      })}
      {missing.map((treatment) => (
        <details key={treatment}>
          <summary>Add a curve: {TREATMENT_WORDS[treatment]}</summary>
          <CurveForm crop={crop} variety={null} treatment={treatment} curve={null} manner={manner} />
        </details>
      ))}
    </section>
  );
}

function ClockLine({ curve, units }: { curve: BloomCurve; units: Manner["units"] }) {
  const words = clockInWords(curve, units);
  if (words === null) return null;
  return (
    <p>
      {words}
      <br />
      Base temperature <OriginMark origin={curve.heatOrigin} />
    </p>
  );
}

const anchorInWords = ({ anchor }: BloomCurve): string =>
  anchor.kind === "day-of-year" ? `on ${monthDayInShort(anchor.firstCut)}` : `${anchor.days} days after planting`;
