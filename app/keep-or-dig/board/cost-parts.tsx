import { memo } from "react";
import { inMoney, inTenths, inWholes } from "#lib/plan/words/numbers";
import type { BedWorth } from "../../threads/jobs";
import { type Column, Table } from "../../ui/table";
import type { BedRow } from "../planner-data";
import type { Answered } from "./use-answer.client";

const part = (head: string, cell: (row: BedRow) => string): Column<BedRow> => ({ head, kind: "number", cell });

const COLUMNS: readonly Column<BedRow>[] = [
  { head: "Bed", kind: "name", cell: ({ name }) => name },
  { head: "Now", cell: ({ now }) => now },
  part("Clumps", ({ clumpCount }) => inWholes(clumpCount)),
  part("Keep: in all", ({ keep }) => inMoney(keep.cents)),
  part("Dig: in all", ({ dig }) => inMoney(dig.cents)),
  part("Keep: hours", ({ keep }) => inTenths(keep.hours)),
  part("Keep: labour", ({ keep }) => inMoney(keep.labourCents)),
  part("Keep: leaves, tarp", ({ keep }) => inMoney(keep.materialCents)),
  part("Keep: plants again", ({ keep }) => inMoney(keep.replacementCents)),
  part("Keep: early crop", ({ keep }) => inMoney(keep.freeBedCents)),
  part("Dig: hours", ({ dig }) => inTenths(dig.hours)),
  part("Dig: labour", ({ dig }) => inMoney(dig.labourCents)),
  part("Dig: store", ({ dig }) => inMoney(dig.materialCents)),
  part("Dig: tubers gained", ({ dig }) => inMoney(dig.replacementCents)),
];

/** A bed with what the match costs in either future, which is worked out after the rest. */
type Summed = { readonly row: BedRow; readonly match: BedWorth["matchCents"] | undefined };

const sum = (head: string, cents: (row: BedRow, match: BedWorth["matchCents"]) => number): Column<Summed> => ({
  head,
  kind: "number",
  cell: ({ row, match }) => (match ? inMoney(cents(row, match)) : "…"),
});

const SUMS: readonly Column<Summed>[] = [
  { head: "Bed", kind: "name", cell: ({ row }) => row.name },
  sum("Dug: the bed", ({ dig }) => dig.cents),
  sum("Dug: stems short, poorer fits", (_, { dug }) => dug),
  sum("Kept: the bed", ({ keep }) => keep.cents),
  sum("Kept: stems short, poorer fits", (_, { kept }) => kept),
  sum("Keeping saves", ({ dig, keep }, { dug, kept }) => dig.cents + dug - keep.cents - kept),
];

type Props = { rows: readonly BedRow[]; worths: Answered<readonly BedWorth[] | null> };

/** What the cost of keeping and of digging each bed is made of, and how its worth adds up from it. */
export const CostParts = memo(({ rows, worths: { answer, isStale } }: Props) => {
  const matchOf = new Map(answer?.map(({ bedId, matchCents }) => [bedId, matchCents]));
  return (
    <details className="cost-parts">
      <summary>What the costs are made of, and each bed’s worth added up</summary>
      <p className="small">
        Keeping: hauling, covering and replanting hours, leaves and tarp, tubers for the places of clumps that die, and
        the early crop that the bed cannot carry. Digging: lifting, dividing and replanting hours, the store, less what
        the tubers gained are worth. Rates and prices are the farm’s, on <a href="/farm#digging">Farm</a>.
      </p>
      <div className="scroller">
        <Table
          caption="Cost of each bed, kept and dug, in parts"
          isCaptionHidden
          columns={COLUMNS}
          rows={rows}
          keyOf={({ id }) => id}
        />
      </div>
      <p className="small">
        Keeping a bed saves what digging it costs, with all stems then short at their price and weight and the poorer
        fits of the whole season, less the same with the bed kept, the other beds as ticked.
      </p>
      <div className="scroller" data-stale={isStale}>
        <Table
          caption="What keeping each bed saves, added up"
          isCaptionHidden
          className="bed-sums"
          columns={SUMS}
          rows={rows.map((row) => ({ row, match: matchOf.get(row.id) }))}
          keyOf={({ row }) => row.id}
        />
      </div>
    </details>
  );
});
