import type { SheetProblem } from "#lib/sheets/sheet-problem";
import { countOf, inWholes } from "../../ui/numbers";
import type { ImportState } from "./import-state";

type Props = { answer: ImportState; onTake: (step: "all" | "clean") => void };

/** What was found in the files, or what was written. */
export function ImportAnswer({ answer, onTake }: Props) {
  if (answer.kind === "none") return null;
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
  const { problems, rowCount, cleanRowCount, perSheet } = answer;
  const isClean = problems.length === 0 && rowCount > 0;
  return (
    <div className={isClean ? "notice good" : "notice bad"}>
      <p>
        <strong>{isClean ? "✓ All clean." : `${countOf(problems.length, "problem")}.`}</strong> Nothing has been written
        yet. {countOf(cleanRowCount, "clean row")} of {inWholes(rowCount)}
        {perSheet.length > 0 && ": "}
        {perSheet
          .map(({ sheet, rowCount: rows, cleanRowCount: clean }) => `${sheet} ${inWholes(clean)} of ${inWholes(rows)}`)
          .join(", ")}
        .
      </p>
      <div className="actions">
        {isClean && (
          <button type="button" className="main" onClick={() => onTake("all")}>
            Bring in all {countOf(rowCount, "row")}
          </button>
        )}
        {!isClean && cleanRowCount > 0 && (
          <button type="button" onClick={() => onTake("clean")}>
            Take the {countOf(cleanRowCount, "clean row")}, leave the rest
          </button>
        )}
      </div>
      {problems.length > 0 && <ProblemTable problems={problems} />}
    </div>
  );
}

const ProblemTable = ({ problems }: { problems: readonly SheetProblem[] }) => (
  <table className="cards-on-phone">
    <caption>What to mend</caption>
    <thead>
      <tr>
        <th scope="col">File</th>
        <th scope="col" className="number">
          Line
        </th>
        <th scope="col">Column</th>
        <th scope="col">What is wrong</th>
      </tr>
    </thead>
    <tbody>
      {problems.map(({ file, line, column, message }) => (
        <tr key={`${file} ${line} ${column} ${message}`}>
          <td data-label="File">{file}</td>
          <td className="number" data-label="Line">
            {line}
          </td>
          <td data-label="Column">{column ?? "whole row"}</td>
          <td>{message}</td>
        </tr>
      ))}
    </tbody>
  </table>
);
