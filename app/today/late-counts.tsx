import { ById, type Snapshot } from "#lib/domain/snapshot";
import type { KeptTally } from "#lib/domain/tally";
import { placeKey } from "#lib/plan/road/cut-lots";
import type { RowCut } from "#lib/plan/road/day-to-cut";
import { countersInWords, recordNowInWords } from "#lib/plan/words/field-words";
import { inWholes } from "#lib/plan/words/numbers";
import { WallClock } from "../field/wall-clock.client";
import { Form } from "../ui/form.client";
import { settleCount } from "./today-actions";

type Props = { readonly snapshot: Snapshot; readonly rows: readonly RowCut[]; readonly late: readonly KeptTally[] };

/** Counts that came from a phone after the record had been corrected, or taken back: both are shown, and somebody who knows says which holds. */
export function LateCounts({ snapshot, rows, late }: Props) {
  if (late.length === 0) return null;
  return (
    <section aria-labelledby="late-counts">
      <h2 id="late-counts">Counted before it was corrected</h2>
      {late.map((tally) => {
        const stemsNow = rows.find(({ cuts }) => placeKey(cuts[0]) === placeKey(tally))?.stemsCut ?? null;
        const name = nameOf(snapshot, tally);
        return (
          <div key={tally.id} className="notice bad">
            <p>
              <b>{name}:</b> {recordNowInWords(stemsNow)} A phone has now sent {countersInWords([tally])}, counted{" "}
              <WallClock moment={tally.countedAt} />, before it knew of that.
            </p>
            <div className="row">
              <Form
                action={settleCount}
                submit={`Add them: ${inWholes((stemsNow ?? 0) + tally.stemsCut)}`}
                label={`Add the late count of ${name}`}
                hidden={{ id: tally.id, add: "yes" }}
                isQuiet
              />
              <Form
                action={settleCount}
                submit={stemsNow === null ? "Leave them out" : `Leave it at ${inWholes(stemsNow)}`}
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

/** "Long Field 2, Dahlia Oatcake" */
function nameOf({ beds, varieties, crops }: Snapshot, { bedId, varietyId }: KeptTally): string {
  const variety = new ById("variety", varieties).get(varietyId);
  return `${new ById("bed", beds).get(bedId).name}, ${new ById("crop", crops).get(variety.cropId).name} ${variety.name}`;
}
