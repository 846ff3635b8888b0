"use client";

import type { PointsDone } from "#lib/plan/winter/keep-curve";
import type { SweepPoint, SweptBy } from "#lib/plan/winter/sweep";
import { countOf, inRoundMoney, inWholes } from "#lib/plan/words/numbers";
import { sweptInWords } from "#lib/plan/words/swept-words";
import { type Column, Table } from "../../ui/table";
import type { BedRow } from "../planner-data";
import { AskedWork } from "./asked-work";
import { bedNames } from "./found-words";
import { useWork } from "./use-work.client";

type Found = Extract<SweepPoint["choice"], { keptBedIds: unknown }>;

type Swept = { readonly by: SweptBy; readonly head: string; readonly startWords: string };

const SWEPT: readonly Swept[] = [
  { by: "survival", head: "Survival", startWords: "Try survivals from 30 to 100 %" },
  { by: "first cut", head: "First cut of kept beds", startWords: "Try first cuts two weeks early to four late" },
  { by: "stems", head: "Stems of kept beds", startWords: "Try 40 to 115 % of the stems" },
];

function columnsOf({ by, head }: Swept, rows: readonly BedRow[]): readonly Column<SweepPoint>[] {
  const found = (
    name: string,
    cell: (choice: Found) => string,
    as: Pick<Column<SweepPoint>, "unit" | "kind"> = { kind: "number" },
  ): Column<SweepPoint> => ({
    head: name,
    ...as,
    cell: ({ choice }) => "keptBedIds" in choice && cell(choice),
  });
  return [
    { head, kind: "name", cell: ({ at }) => sweptInWords(by, at) },
    found("Beds kept", ({ keptBedIds }) => inWholes(keptBedIds.length)),
    found("Which", ({ keptBedIds }) => bedNames(rows, keptBedIds), {}),
    found("Net cost", ({ totalCents }) => inRoundMoney(totalCents)),
    found("Focal short", ({ focalShortStems }) => inWholes(focalShortStems), { kind: "number", unit: "stems" }),
  ];
}

type Props = { seasonYear: number; rows: readonly BedRow[] };

/** The best choice again for other numbers of kept beds: how far it hangs on what nobody has published. */
export const KeptSweeps = (props: Props) => (
  <section aria-labelledby="sweep" className="card kept-sweeps">
    <h2 id="sweep">If the numbers were others…</h2>
    <p>
      No published figure was found for how many clumps live in the ground, when those bloom, or how much. See how far
      the best choice hangs on each of yours; the same is supposed for every kept bed.
    </p>
    {SWEPT.map((swept) => (
      <Sweep key={swept.by} swept={swept} {...props} />
    ))}
  </section>
);

function Sweep({ swept, seasonYear, rows }: Props & { swept: Swept }) {
  const work = useWork<PointsDone, readonly SweepPoint[]>("/keep-or-dig/choose");
  return (
    <AskedWork
      work={work}
      start={() => work.start({ question: "sweep", seasonYear, by: swept.by })}
      startWords={swept.startWords}
      stopWords="Stop with those that are done"
      makingReady="Choosing the beds anew for each…"
      inWords={({ doneCount, ofCount }) => `${doneCount} of ${countOf(ofCount, "choice")} made…`}
      failedWords="Not tried"
    >
      {work.answer?.length === 0 && <p className="notice">Stopped before the first was done.</p>}
      {work.answer && work.answer.length > 0 && (
        <Table
          caption={`The best choice at each: ${swept.head.toLowerCase()}`}
          columns={columnsOf(swept, rows)}
          rows={work.answer}
          keyOf={({ at }) => at}
          insteadOf={({ choice }) =>
            "keptBedIds" in choice ? null : { from: 1, words: "nothing keeps within what is at hand" }
          }
        />
      )}
    </AskedWork>
  );
}
