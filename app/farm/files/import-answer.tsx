import { countOf, inWholes } from "#lib/plan/words/numbers";
import type { SheetProblem } from "#lib/sheets/sheet-problem";
import { type Column, Table } from "../../ui/table";
import type { ImportState } from "./import-state";

type Checked = Extract<ImportState, { kind: "checked" }>;
type Props = { answer: ImportState; onTake: (step: "all" | "clean") => void };

/** What was found in the files, or what was written. */
export function ImportAnswer({ answer, onTake }: Props) {
  if (answer.kind === "none") return null;
  if (answer.kind === "unanswered")
    return (
      <p className="notice bad">
        <strong>No answer came from the farm’s computer.</strong> Look whether it is on, then send the same files again:
        what was brought in already is not brought in twice.
      </p>
    );
  if (answer.kind === "taken")
    return (
      <p className="notice good">
        <strong>✓ Brought in.</strong> {answer.title}. <a href="/">See the season</a>; the Saved bar takes it back.
      </p>
    );
  if (answer.kind === "refused")
    return (
      <div className="notice bad">
        <p>
          <strong>Nothing was written.</strong>
        </p>
        <ul>
          {answer.problems.map(({ place, message }) => (
            <li key={`${place}: ${message}`}>
              {place}: {message}
            </li>
          ))}
        </ul>
      </div>
    );
  const { problems, rowCount, cleanRowCount } = answer;
  const isClean = problems.length === 0 && rowCount > 0;
  return (
    <div className={isClean ? "notice good" : "notice bad"}>
      <p>
        <strong>{isClean ? "✓ All clean." : `${countOf(problems.length, "problem")}.`}</strong> Nothing has been written
        yet.{rowCount > 0 && ` ${rowsInWords(answer)}.`}
      </p>
      {isClean && (
        <p className="actions">
          <button type="button" className="main" onClick={() => onTake("all")}>
            Bring in all {countOf(rowCount, "row")}
          </button>
        </p>
      )}
      {!isClean && cleanRowCount > 0 && (
        <p className="actions">
          <button type="button" onClick={() => onTake("clean")}>
            Take the {countOf(cleanRowCount, "clean row")}, leave the rest
          </button>
        </p>
      )}
      {problems.length > 0 && (
        <Table
          caption="What to mend"
          columns={COLUMNS}
          rows={problems}
          keyOf={({ file, line, column, message }) => `${file} ${line} ${column} ${message}`}
        />
      )}
    </div>
  );
}

const rowsInWords = ({ rowCount, cleanRowCount, perSheet }: Checked): string => {
  const sheets = perSheet.map(
    ({ sheet, rowCount: rows, cleanRowCount: clean }) => `${sheet} ${inWholes(clean)} of ${inWholes(rows)}`,
  );
  return `${countOf(cleanRowCount, "clean row")} of ${inWholes(rowCount)}${sheets.length > 0 ? `: ${sheets.join(", ")}` : ""}`;
};

const COLUMNS: readonly Column<SheetProblem>[] = [
  { head: "File", cell: ({ file }) => file },
  { head: "Line", kind: "number", cell: ({ line }) => line },
  { head: "Column", cell: ({ column }) => column ?? "whole row" },
  { head: "What is wrong", phone: "first", cell: ({ message }) => message },
];
