import type { RowCut } from "#lib/plan/road/day-to-cut";
import { rowCutInWords } from "#lib/plan/words/cut-words";
import { countOf } from "#lib/plan/words/numbers";
import { Form } from "../ui/form.client";
import { takeBackCut } from "./today-actions";

/** What was recorded, each row with its way back. */
export function DoneRows({ rows }: { rows: readonly RowCut[] }) {
  if (rows.length === 0) return null;
  return (
    <details className="fold">
      <summary>
        Recorded: {countOf(rows.length, "row")}{" "}
        <small>
          {countOf(
            rows.reduce((sum, { stemsCut }) => sum + stemsCut, 0),
            "stem",
          )}{" "}
          cut
        </small>
      </summary>
      <ul className="done-rows">
        {rows.map((row) => (
          <li key={row.cuts[0].id}>
            <span>
              <b>{row.place}</b> {row.crop.name} {row.variety.name}: {rowCutInWords(row)}
            </span>
            <Form
              action={takeBackCut}
              submit="Take back"
              label={`Take back the record of ${row.place}, ${row.crop.name} ${row.variety.name}`}
              hidden={{ ids: JSON.stringify(row.cuts.map(({ id }) => id)) }}
              isQuiet
            />
          </li>
        ))}
      </ul>
    </details>
  );
}
