"use client";

import type { PointsDone } from "#lib/plan/winter/keep-curve";
import type { SurvivalPoint } from "#lib/plan/winter/survival-sweep";
import { countOf, inPercent, inRoundMoney, inWholes } from "#lib/plan/words/numbers";
import { type Column, Table } from "../../ui/table";
import type { BedRow } from "../planner-data";
import { AskedWork } from "./asked-work";
import { bedNames } from "./found-words";
import { useWork } from "./use-work.client";

type Found = Extract<SurvivalPoint["choice"], { keptBedIds: unknown }>;

function columnsOf(rows: readonly BedRow[]): readonly Column<SurvivalPoint>[] {
  const found = (
    head: string,
    cell: (choice: Found) => string,
    as: Pick<Column<SurvivalPoint>, "unit" | "kind"> = { kind: "number" },
  ): Column<SurvivalPoint> => ({
    head,
    ...as,
    cell: ({ choice }) => "keptBedIds" in choice && cell(choice),
  });
  return [
    { head: "Survival", kind: "name", cell: ({ survivalShare }) => inPercent(survivalShare) },
    found("Beds kept", ({ keptBedIds }) => inWholes(keptBedIds.length)),
    found("Which", ({ keptBedIds }) => bedNames(rows, keptBedIds), {}),
    found("Weighed", ({ totalCents }) => inRoundMoney(totalCents)),
    found("Focal short", ({ focalShortStems }) => inWholes(focalShortStems), { kind: "number", unit: "stems" }),
  ];
}

/** The best choice again for other winter survivals: how far it hangs on a number nobody has published. */
export function SurvivalSweep({ seasonYear, rows }: { seasonYear: number; rows: readonly BedRow[] }) {
  const work = useWork<PointsDone, readonly SurvivalPoint[]>("/keep-or-dig/choose");
  return (
    <section aria-labelledby="sweep" className="card">
      <h2 id="sweep">If winter survival were…</h2>
      <p>
        No published figure was found for clumps left in the ground, so see how far the best choice hangs on yours. The
        same survival is supposed for every bed.
      </p>
      <AskedWork
        work={work}
        start={() => work.start({ question: "sweep", seasonYear })}
        startWords="Try survivals from 30 to 100 %"
        stopWords="Stop with those that are done"
        makingReady="Choosing the beds anew for each…"
        inWords={({ doneCount, ofCount }) => `${doneCount} of ${countOf(ofCount, "survival")} done…`}
        failedWords="Not tried"
      >
        {work.answer?.length === 0 && <p className="notice">Stopped before the first was done.</p>}
        {work.answer && work.answer.length > 0 && (
          <Table
            caption="The best choice at each survival"
            columns={columnsOf(rows)}
            rows={work.answer}
            keyOf={({ survivalShare }) => survivalShare}
            insteadOf={({ choice }) =>
              "keptBedIds" in choice ? null : { from: 1, words: "nothing keeps within what is at hand" }
            }
          />
        )}
      </AskedWork>
    </section>
  );
}
