"use client";

import { lazy, Suspense } from "react";
import type { CurvePoint, PointsDone } from "#lib/plan/winter/keep-curve";
import { countOf, inRoundMoney, inWholes } from "#lib/plan/words/numbers";
import { type Column, Table } from "../../ui/table";
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
    <section aria-labelledby="curve" className="card">
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

/** `before` is the choice of one bed fewer. */
type CurveRow = FoundPoint & { readonly before: Chosen | null };

const COLUMNS: readonly Column<CurveRow>[] = [
  {
    head: "Beds at most",
    kind: "name",
    cell: ({ atMostCount }) => (atMostCount === 0 ? "none" : countOf(atMostCount, "bed")),
  },
  { head: "Weighed", kind: "number", cell: ({ chosen }) => inRoundMoney(chosen.totalCents) },
  {
    head: "One more bed saves",
    kind: "number",
    cell: ({ chosen, before }) => before && inRoundMoney(before.totalCents - chosen.totalCents),
  },
  { head: "Of it buy-in", kind: "number", cell: ({ chosen }) => inRoundMoney(chosen.buyInCents) },
  { head: "Of it the winter", kind: "number", cell: ({ chosen }) => inRoundMoney(chosen.winterCents) },
  { head: "Focal short", unit: "stems", kind: "number", cell: ({ chosen }) => inWholes(chosen.focalShortStems) },
];

function CurveTable({ points }: { points: readonly FoundPoint[] }) {
  const bestCount = points[points.length - 1].chosen.keptBedIds.length;
  const shown = points.filter(({ atMostCount }) => atMostCount <= bestCount);
  return (
    <>
      <Table
        caption="The same numbers as a table"
        columns={COLUMNS}
        rows={shown.map((point, index) => ({ ...point, before: shown[index - 1]?.chosen ?? null }))}
        keyOf={({ atMostCount }) => atMostCount}
      />
      {points.length > shown.length && (
        <p>More than {countOf(bestCount, "bed")} saves nothing: the cheapest choice of more is the same one.</p>
      )}
    </>
  );
}
