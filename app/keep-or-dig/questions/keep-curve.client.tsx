"use client";

import { lazy, Suspense } from "react";
import type { CurvePoint } from "#lib/plan/winter/keep-curve";
import type { PointsDone } from "../../threads/jobs";
import { countOf, inRoundMoney, inWholes } from "../../ui/numbers";
import { AskedWork } from "./asked-work";
import { useWork } from "./use-work.client";

/** The chart comes with its library, which only those who ask for the curve need. */
const CostChart = lazy(() => import("./cost-chart.client").then(({ CostChart: chart }) => ({ default: chart })));

type Chosen = NonNullable<CurvePoint["chosen"]>;
type FoundPoint = CurvePoint & { readonly chosen: Chosen };

/** How the cost falls as beds are kept one more at a time. */
export function KeepCurve({ seasonYear }: { seasonYear: number }) {
  const work = useWork<PointsDone, readonly CurvePoint[]>("/keep-or-dig/choose");
  const found = (work.answer ?? []).filter((point): point is FoundPoint => point.chosen !== null);
  return (
    <section aria-labelledby="curve">
      <h2 id="curve">Cost by number of beds kept</h2>
      <p>The cheapest choice of no bed, of at most one, of at most two, and so on: each proved.</p>
      <AskedWork
        work={work}
        start={() => work.start({ question: "curve", seasonYear })}
        startWords="Draw the curve"
        stopWords="Stop with the points that are done"
        makingReady="Laying out both futures of every bed…"
        inWords={({ doneCount, ofCount }) => `${doneCount} of ${countOf(ofCount, "point")} proved…`}
        failedWords="Not drawn"
      >
        {work.answer && found.length === 0 && (
          <p className="notice">No point is done: it was stopped too soon, or nothing keeps within what is at hand.</p>
        )}
        {found.length > 0 && (
          <>
            <Suspense fallback={<p className="soft">Loading the picture…</p>}>
              <CostChart points={found.map(({ atMostCount, chosen }) => ({ atMostCount, cents: chosen.totalCents }))} />
            </Suspense>
            <CurveTable points={found} />
          </>
        )}
      </AskedWork>
    </section>
  );
}

function CurveTable({ points }: { points: readonly FoundPoint[] }) {
  const bestCount = points[points.length - 1].chosen.keptBedIds.length;
  const shown = points.filter(({ atMostCount }) => atMostCount <= bestCount);
  return (
    <>
      <table className="cards-on-phone">
        <caption>The same numbers as a table</caption>
        <thead>
          <tr>
            <th scope="col">Beds at most</th>
            <th scope="col" className="number">
              Weighed
            </th>
            <th scope="col" className="number">
              One more bed saves
            </th>
            <th scope="col" className="number">
              Of it buy-in
            </th>
            <th scope="col" className="number">
              Of it the winter
            </th>
            <th scope="col" className="number">
              Focal short, stems
            </th>
          </tr>
        </thead>
        <tbody>
          {shown.map(({ atMostCount, chosen }, index) => (
            <tr key={atMostCount}>
              <th scope="row">{atMostCount === 0 ? "none" : countOf(atMostCount, "bed")}</th>
              <td className="number" data-label="Weighed">
                {inRoundMoney(chosen.totalCents)}
              </td>
              <td className="number" data-label="One more bed saves">
                {index === 0 ? "" : inRoundMoney(shown[index - 1].chosen.totalCents - chosen.totalCents)}
              </td>
              <td className="number" data-label="Of it buy-in">
                {inRoundMoney(chosen.buyInCents)}
              </td>
              <td className="number" data-label="Of it the winter">
                {inRoundMoney(chosen.winterCents)}
              </td>
              <td className="number" data-label="Focal short, stems">
                {inWholes(chosen.focalShortStems)}
              </td>
            </tr>
          ))}
        </tbody>
      </table>
      {points.length > shown.length && (
        <p>More than {countOf(bestCount, "bed")} saves nothing: the cheapest choice of more is the same one.</p>
      )}
    </>
  );
}
