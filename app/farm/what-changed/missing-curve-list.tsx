import { CATALOGUE } from "#lib/domain/catalogue/crops";
import { type MissingCurve, missingCurves } from "#lib/domain/missing-curves";
import { stemsPerPlant } from "#lib/domain/records/curve";
import type { Snapshot } from "#lib/domain/snapshot";
import { TREATMENT_WORDS } from "#lib/domain/words";
import { firstCutInWords } from "#lib/plan/words/clock-words";
import { countOf, inTenths } from "#lib/plan/words/numbers";
import { Form } from "../../ui/form.client";
import { OriginMark } from "../../ui/origin-mark";
import { type Column, Table } from "../../ui/table";
import { addMissingCurves } from "./missing-curve-actions";

const COLUMNS: readonly Column<MissingCurve>[] = [
  { head: "Crop", kind: "name", cell: ({ crop }) => crop.name },
  { head: "Grown", cell: ({ curve }) => TREATMENT_WORDS[curve.treatment] },
  {
    head: "First cut",
    cell: ({ curve }) => (
      <>
        {firstCutInWords(curve)} <OriginMark origin={curve.timingOrigin} />
      </>
    ),
  },
  {
    head: "Stems a plant",
    cell: ({ curve }) => (
      <>
        {inTenths(stemsPerPlant(curve))} <OriginMark origin={curve.yieldOrigin} />
      </>
    ),
  },
  {
    head: "Add",
    cell: ({ crop, curve }) => (
      <Form
        action={addMissingCurves}
        submit="Add"
        label={`Add the bloom curves of ${crop.name} that the farm lacks, ${TREATMENT_WORDS[curve.treatment]} among them`}
        hidden={{ of: crop.id }}
        isQuiet
      />
    ),
  },
];

/** Ways to grow a crop of which the built-in list knows the bloom and the farm does not. Nothing when it has them all. */
export function MissingCurves({ snapshot }: { snapshot: Snapshot }) {
  const missing = missingCurves(snapshot, CATALOGUE);
  if (missing.length === 0) return null;
  return (
    <section className="stack" aria-labelledby="missing-curves">
      <h2 id="missing-curves">Ways to grow that your farm has no bloom curve for</h2>
      <p>
        The built-in list has {countOf(missing.length, "curve")} that the farm lacks. To add one moves no figure that
        you have: it tells how a planting that is grown so would bloom.
      </p>
      <Table
        caption="Built-in bloom curves that the farm lacks"
        isCaptionHidden
        columns={COLUMNS}
        rows={missing}
        keyOf={({ crop, curve }) => `${crop.id} ${curve.treatment}`}
      />
      {missing.length > 1 && <Form action={addMissingCurves} submit="Add them all" hidden={{ of: "all" }} isQuiet />}
    </section>
  );
}
