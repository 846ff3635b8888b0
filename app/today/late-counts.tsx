import type { KeptTally } from "#lib/domain/tally";
import { placeKey } from "#lib/plan/road/cut-lots";
import type { RowCut } from "#lib/plan/road/day-to-cut";
import { countersInWords } from "#lib/plan/words/field-words";
import { countOf, inWholes } from "#lib/plan/words/numbers";
import { WallClock } from "../field/wall-clock.client";
import { Form } from "../ui/form.client";
import { settleCount } from "./today-actions";

type Props = { readonly rows: readonly RowCut[]; readonly late: readonly KeptTally[] };

/** Counts that came from a phone after the record had been corrected: both are shown, and somebody who knows says which holds. */
export function LateCounts({ rows, late }: Props) {
  if (late.length === 0) return null;
  return (
    <section aria-labelledby="late-counts">
      <h2 id="late-counts">Counted before it was corrected</h2>
      {late.map((tally) => {
        const row = rows.find(({ cuts }) => placeKey(cuts[0]) === placeKey(tally));
        if (!row) return null;
        const name = `${row.place}, ${row.crop.name} ${row.variety.name}`;
        return (
          <div key={tally.id} className="notice bad">
            <p>
              <b>{name}:</b> the record was corrected to {countOf(row.stemsCut, "stem")}. A phone has now sent{" "}
              {countersInWords([tally])}, counted <WallClock moment={tally.countedAt} />, before it knew of that.
            </p>
            <div className="row">
              <Form
                action={settleCount}
                submit={`Add them: ${inWholes(row.stemsCut + tally.stemsCut)}`}
                label={`Add the late count of ${name}`}
                hidden={{ id: tally.id, add: "yes" }}
                isQuiet
              />
              <Form
                action={settleCount}
                submit={`Leave it at ${inWholes(row.stemsCut)}`}
                label={`Leave out the late count of ${name}`}
                hidden={{ id: tally.id, add: "no" }}
                isQuiet
              />
            </div>
          </div>
        );
      })}
    </section>
  );
}
