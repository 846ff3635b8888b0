import { inFull } from "#lib/domain/day";
import { FIRST_CUT, type FirstCut } from "#lib/domain/records/first-cut";
import { formFields, type Manner } from "#lib/domain/records/form";
import { countOf } from "#lib/plan/words/numbers";
import { Form } from "../../../ui/form.client";
import { RecordField } from "../../../ui/record-field";
import { deleteFirstCut, saveFirstCut } from "./learn-actions";

type Props = {
  kept: readonly FirstCut[];
  /** What a crop, or a variety of it, under its treatment is called. */
  nameOf: (row: FirstCut) => string;
  manner: Manner;
};

/** The first cuts that were kept, crop by crop, each to change or to take away. */
export function KeptFirstCuts({ kept, nameOf, manner }: Props) {
  const names = [...new Set(kept.map(nameOf))].sort((a, b) => a.localeCompare(b));
  return (
    <section aria-labelledby="kept-first-cuts">
      <h2 id="kept-first-cuts">First cuts that are kept</h2>
      {kept.length === 0 && (
        <p className="hint">
          None yet. What you type above can be kept: next year you add to it, and need not type it again.
        </p>
      )}
      {names.map((name) => (
        <CropRows key={name} name={name} rows={kept.filter((row) => nameOf(row) === name)} manner={manner} />
      ))}
    </section>
  );
}

const CropRows = ({ name, rows, manner }: { name: string; rows: readonly FirstCut[]; manner: Manner }) => (
  <details>
    <summary>
      {name}: {countOf(rows.length, "first cut")}
    </summary>
    <ul className="plain-list">
      {[...rows]
        .sort((a, b) => (a.firstCut < b.firstCut ? -1 : 1))
        .map((row) => (
          <li key={row.id}>
            <KeptRow row={row} name={name} manner={manner} />
          </li>
        ))}
    </ul>
  </details>
);

function KeptRow({ row, name, manner }: { row: FirstCut; name: string; manner: Manner }) {
  const { seasonYear, plantedOn, firstCut } = formFields(FIRST_CUT, row, manner);
  const called = `${name}, season ${row.seasonYear}`;
  return (
    <details>
      <summary>
        {inFull(row.firstCut)}
        {row.plantedOn && `, planted ${inFull(row.plantedOn)}`}
      </summary>
      <Form
        action={saveFirstCut}
        submit="Save this first cut"
        hidden={{ firstCutId: row.id }}
        label={`First cut of ${called}`}
        isQuiet
      >
        <div className="fields">
          <RecordField {...firstCut} />
          <RecordField {...seasonYear} />
          {row.plantedOn !== null && <RecordField {...plantedOn} />}
        </div>
      </Form>
      <Form
        action={deleteFirstCut}
        submit="Take it away"
        hidden={{ firstCutId: row.id }}
        label={`Take away the first cut of ${called}`}
        isQuiet
      />
    </details>
  );
}
