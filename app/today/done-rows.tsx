import type { KeptTally } from "#lib/domain/tally";
import { placeKey } from "#lib/plan/road/cut-lots";
import type { RowCut } from "#lib/plan/road/day-to-cut";
import { rowCutInWords } from "#lib/plan/words/cut-words";
import { countersInWords, overfullInWords } from "#lib/plan/words/field-words";
import { countOf } from "#lib/plan/words/numbers";
import { DoneRow } from "./done-row.client";

type Props = {
  readonly rows: readonly RowCut[];
  /** Of the day, those that are in the record. */
  readonly tallies: readonly KeptTally[];
  /** What was expected to stand on the day, before grading, by bed and variety. */
  readonly stemsReady: ReadonlyMap<string, number>;
};

/** What was recorded, each row with who counted it, its correction and its way back. */
export function DoneRows({ rows, tallies, stemsReady }: Props) {
  if (rows.length === 0) return null;
  const doubts = rows.map((row) => doubtOf(row, tallies, stemsReady));
  return (
    <>
      {rows.map((row, index) =>
        doubts[index] === null ? null : (
          <p key={row.cuts[0].id} className="notice bad">
            <b>{nameOf(row)}:</b> {doubts[index]} {countersInWords(ofRow(row, tallies))}. Correct it below if so.
          </p>
        ),
      )}
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
            <Done key={row.cuts[0].id} row={row} counted={ofRow(row, tallies)} />
          ))}
        </ul>
      </details>
    </>
  );
}

function Done({ row, counted }: { row: RowCut; counted: readonly KeptTally[] }) {
  const { cutOn, bedId, varietyId } = row.cuts[0];
  const isShared = new Set(counted.map(({ countedBy }) => countedBy)).size > 1;
  const isCorrected = counted.length > 0 && sumOf(counted) !== row.stemsCut;
  return (
    <li>
      <span>
        <b>{row.place}</b> {row.crop.name} {row.variety.name}: {rowCutInWords(row)}
        {(isShared || isCorrected) && (
          <small>
            {" "}
            ({isCorrected ? "corrected; counted: " : ""}
            {countersInWords(counted)})
          </small>
        )}
      </span>
      <DoneRow
        key={row.stemsCut}
        {...{ cutOn, bedId, varietyId }}
        stemsCut={row.stemsCut}
        cutIds={row.cuts.map(({ id }) => id)}
        name={nameOf(row)}
      />
    </li>
  );
}

const nameOf = ({ place, crop, variety }: RowCut): string => `${place}, ${crop.name} ${variety.name}`;

const sumOf = (tallies: readonly KeptTally[]): number => tallies.reduce((sum, { stemsCut }) => sum + stemsCut, 0);

const ofRow = (row: RowCut, tallies: readonly KeptTally[]): KeptTally[] =>
  tallies.filter((tally) => placeKey(tally) === placeKey(row.cuts[0]));

/** Said as long as nobody has corrected what the counts add up to. */
function doubtOf(row: RowCut, tallies: readonly KeptTally[], stemsReady: Props["stemsReady"]): string | null {
  const counted = ofRow(row, tallies);
  if (sumOf(counted) !== row.stemsCut) return null;
  return overfullInWords(counted.length, row.stemsCut, stemsReady.get(placeKey(row.cuts[0])) ?? 0);
}
