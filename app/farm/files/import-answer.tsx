import { allOf } from "#lib/domain/listed";
import { countOf, inWholes } from "#lib/plan/words/numbers";
import type { SheetProblem } from "#lib/sheets/sheet-problem";
import { type Column, Table } from "../../ui/table";
import type { ImportState } from "./import-state";
import { WouldChange } from "./would-change";

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
  const changeCount = answer.perSheet.reduce((sum, sheet) => sum + sheet.newCount + sheet.changedCount, 0);
  const isNothing = isClean && changeCount === 0;
  return (
    <div className={isClean ? "notice good" : "notice bad"}>
      <p>
        <strong>
          {isNothing ? "✓ Nothing to change:" : isClean ? "✓ All clean." : `${countOf(problems.length, "problem")}.`}
        </strong>{" "}
        {isNothing
          ? `the farm says all ${countOf(rowCount, "row")} already.`
          : `Nothing has been written yet. ${countOf(cleanRowCount, "clean row")} of ${inWholes(rowCount)}.`}
      </p>
      {isClean && !isNothing && (
        <p className="actions">
          <button type="button" className="main" onClick={() => onTake("all")}>
            {changeWords(answer)}
          </button>
        </p>
      )}
      {!isClean && changeCount > 0 && (
        <p className="actions">
          <button type="button" onClick={() => onTake("clean")}>
            {changeWords(answer)}, leave what has a problem
          </button>
        </p>
      )}
      {problems.length > 0 && (
        <Table
          caption="What to mend"
          columns={PROBLEM_COLUMNS}
          rows={problems}
          keyOf={({ file, line, column, message }) => `${file} ${line} ${column} ${message}`}
        />
      )}
      {rowCount > 0 && !isNothing && <WouldChange perSheet={answer.perSheet} />}
    </div>
  );
}

/** "Add 3 rows and change 2" */
function changeWords({ perSheet }: Checked): string {
  const newCount = perSheet.reduce((sum, sheet) => sum + sheet.newCount, 0);
  const changedCount = perSheet.reduce((sum, sheet) => sum + sheet.changedCount, 0);
  const parts = [
    ...(newCount > 0 ? [`add ${countOf(newCount, "row")}`] : []),
    ...(changedCount > 0 ? [`change ${newCount > 0 ? inWholes(changedCount) : countOf(changedCount, "row")}`] : []),
  ];
  const words = allOf(parts);
  return words.charAt(0).toUpperCase() + words.slice(1);
}

const PROBLEM_COLUMNS: readonly Column<SheetProblem>[] = [
  { head: "File", cell: ({ file }) => file },
  { head: "Line", kind: "number", cell: ({ line }) => line },
  { head: "Column", cell: ({ column }) => column ?? "whole row" },
  { head: "What is wrong", phone: "first", cell: ({ message }) => message },
];
