import type { ClipboardEvent } from "react";
import { useId } from "react";
import type { GridRows } from "#lib/sheets/grid";
import type { SheetProblem } from "#lib/sheets/sheet-problem";
import type { GridColumn } from "./grid-columns";

type Props = {
  title: string;
  columns: readonly GridColumn[];
  rows: GridRows;
  problems: readonly SheetProblem[];
  onType: (row: number, column: number, text: string) => void;
  onPaste: (event: ClipboardEvent, row: number, column: number) => void;
};

/** The header stands on line 1 of what is sent. */
const FIRST_LINE = 2;

/** Cells to type into, with what is wrong marked in its cell. */
export function GridTable({ title, columns, rows, problems, onType, onPaste }: Props) {
  const id = useId();
  const messageAt = (row: number, heading: string) =>
    problems.find(({ line, column }) => line === row + FIRST_LINE && column === heading)?.message;
  return (
    <div className="grid-scroll">
      <table className="grid-table">
        <caption className="visually-hidden">{title}</caption>
        <thead>
          <tr>
            <th scope="col">Row</th>
            {columns.map(({ heading, label }) => (
              <th key={heading} scope="col">
                {label}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {rows.map((row, index) => (
            // biome-ignore lint/suspicious/noArrayIndexKey: a row is known by its place
            <tr key={index}>
              <th scope="row">{index + 1}</th>
              {columns.map(({ heading, label, choices }, column) => {
                const message = messageAt(index, heading);
                return (
                  <td key={heading}>
                    <input
                      aria-label={`${label}, row ${index + 1}`}
                      aria-invalid={message ? true : undefined}
                      title={message}
                      autoComplete="off"
                      list={choices && `${id}-${heading}`}
                      value={row[column]}
                      onChange={({ target }) => onType(index, column, target.value)}
                      onPaste={(event) => onPaste(event, index, column)}
                    />
                  </td>
                );
              })}
            </tr>
          ))}
        </tbody>
      </table>
      {columns.map(
        ({ heading, choices }) =>
          choices && (
            <datalist key={heading} id={`${id}-${heading}`}>
              {choices.map((choice) => (
                <option key={choice} value={choice} />
              ))}
            </datalist>
          ),
      )}
    </div>
  );
}
