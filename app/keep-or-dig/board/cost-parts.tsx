import { memo } from "react";
import { inRoundMoney, inTenths, inWholes } from "#lib/plan/words/numbers";
import { type Column, Table } from "../../ui/table";
import type { BedRow } from "../planner-data";

const part = (head: string, cell: (row: BedRow) => string): Column<BedRow> => ({ head, kind: "number", cell });

const COLUMNS: readonly Column<BedRow>[] = [
  { head: "Bed", kind: "name", cell: ({ name }) => name },
  { head: "Now", cell: ({ now }) => now },
  part("Clumps", ({ clumpCount }) => inWholes(clumpCount)),
  part("Keep: in all", ({ keep }) => inRoundMoney(keep.cents)),
  part("Dig: in all", ({ dig }) => inRoundMoney(dig.cents)),
  part("Keep: hours", ({ keep }) => inTenths(keep.hours)),
  part("Keep: labour", ({ keep }) => inRoundMoney(keep.labourCents)),
  part("Keep: leaves, tarp", ({ keep }) => inRoundMoney(keep.materialCents)),
  part("Keep: plants again", ({ keep }) => inRoundMoney(keep.replacementCents)),
  part("Keep: early crop", ({ keep }) => inRoundMoney(keep.freeBedCents)),
  part("Dig: hours", ({ dig }) => inTenths(dig.hours)),
  part("Dig: labour", ({ dig }) => inRoundMoney(dig.labourCents)),
  part("Dig: store", ({ dig }) => inRoundMoney(dig.materialCents)),
  part("Dig: tubers gained", ({ dig }) => inRoundMoney(dig.replacementCents)),
];

/** What the cost of keeping and of digging each bed is made of. */
export const CostParts = memo(({ rows }: { rows: readonly BedRow[] }) => (
  <details>
    <summary>What the costs are made of</summary>
    <p className="small">
      Keeping: covering hours, leaves and tarp, plants bought again for clumps that die, and the early crop that the bed
      cannot carry. Digging: lifting, dividing and replanting hours, the store, less what the tubers gained are worth.
      Rates and prices are the farm’s, on <a href="/farm#digging">Farm</a>.
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
  </details>
));
