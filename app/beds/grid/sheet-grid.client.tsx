"use client";

import { strToU8 } from "fflate";
import { type ClipboardEvent, useEffect, useId, useState, useTransition } from "react";
import type { Units } from "#lib/domain/words";
import type { Writing } from "#lib/domain/writing";
import { csvText } from "#lib/sheets/csv-text";
import { type GridRows, pastedInto } from "#lib/sheets/grid";
import { bringIn } from "../../farm/files/actions";
import { ImportAnswer } from "../../farm/files/import-answer";
import type { ImportState } from "../../farm/files/import-state";
import { packed } from "../../farm/files/upload";
import { forgetTyping, keepTyping, typedBefore } from "../../ui/kept-typing.client";
import { SAVE_KEY, SaveKeys } from "../../ui/sending";
import type { GridColumn, GridOf } from "./grid-columns";
import { GridTable } from "./grid-table";
import { GridTools } from "./grid-tools.client";
import { keptGrid } from "./kept-grid";

type Props = {
  grid: GridOf;
  units: Units;
  writing: Writing;
  /** What a new row begins with in its column of the season. */
  season?: string;
  /** The length of each bed by its name in small letters, for plants from spacing. */
  bedMetres?: Readonly<Record<string, number>>;
};

/** A grid of one sheet: typed or pasted, kept by this browser until it is written, checked and written as files are. */
export function SheetGrid({ grid, units, writing, season = "", bedMetres }: Props) {
  const { sheet, title, columns } = grid;
  const id = useId();
  const place = `grid of ${sheet}`;
  const empty = columns.map(({ heading }) => (heading === "season" ? season : ""));
  const [rows, setRows] = useState<GridRows>([empty, empty, empty]);
  const [spilt, setSpilt] = useState<readonly string[]>([]);
  const [answer, setAnswer] = useState<ImportState>({ kind: "none" });
  const [isPending, startSending] = useTransition();
  const [keys] = useState(() => new SaveKeys());
  useEffect(() => {
    const kept = keptGrid(typedBefore(place)?.rows?.[0] ?? "", columns.length);
    if (kept) setRows(kept);
  }, [place, columns.length]);
  const put = (next: GridRows) => {
    setRows(next);
    setAnswer({ kind: "none" });
    keepTyping(place, { rows: [JSON.stringify(next)] });
  };
  const type = (row: number, column: number, text: string) => put(rows.with(row, rows[row].with(column, text)));
  const paste = (event: ClipboardEvent, row: number, column: number) => {
    const text = event.clipboardData.getData("text");
    if (!/[\t\n]/.test(text.trim())) return;
    event.preventDefault();
    const headings = columns.map(({ heading }) => heading);
    const laid = pastedInto(rows, { row, column }, text, headings);
    put(laid.rows);
    setSpilt(laid.spilt);
  };
  const send = (step: "check" | "all" | "clean") => {
    const text = csvText([
      columns.map(({ heading }) => heading),
      ...rows.map((row) => cellsSent(row, columns, season)),
    ]);
    const form = new FormData();
    form.set("step", step);
    form.set("sending", "0");
    form.set("files", new Blob([packed([{ name: `${sheet}.csv`, bytes: strToU8(text) }])]));
    if (step !== "check") form.set(SAVE_KEY, keys.keyOf(text));
    startSending(async () => {
      const answered = await bringIn({ kind: "none" }, form).catch(() => null);
      if (step !== "check") keys.settle(text, answered !== null);
      setAnswer(answered ?? { kind: "unanswered", sending: 0 });
      if (answered?.kind !== "taken") return;
      setRows([empty, empty, empty]);
      setSpilt([]);
      forgetTyping(place);
    });
  };
  const problems = answer.kind === "checked" ? answer.problems : [];
  const isEmpty = rows.every((row) => cellsSent(row, columns, season).every((cell) => cell === ""));
  return (
    <section aria-labelledby={`${id}-title`} className="sheet-grid">
      <h2 id={`${id}-title`}>{title}</h2>
      <GridTable title={title} columns={columns} rows={rows} problems={problems} onType={type} onPaste={paste} />
      {spilt.length > 0 && (
        <p className="problem" role="status">
          No place for: {spilt.join("; ")}. Paste further left, or add it by hand.
        </p>
      )}
      <div className="actions">
        <button type="button" onClick={() => put([...rows, empty])}>
          Add a row
        </button>
        <button type="button" className="main" disabled={isEmpty || isPending} onClick={() => send("check")}>
          {isPending ? "Reading…" : "Check, write nothing"}
        </button>
        {!isEmpty && (
          <button type="button" className="quiet" onClick={() => put([empty, empty, empty])}>
            Empty the grid
          </button>
        )}
      </div>
      {bedMetres && (
        <GridTools rows={rows} columns={columns} units={units} writing={writing} bedMetres={bedMetres} onRows={put} />
      )}
      <div aria-live="polite">{!isPending && <ImportAnswer answer={answer} onTake={send} />}</div>
    </section>
  );
}

/** A row as it is sent: a bare number gets the unit of its column; a row with nothing but the season that it began with is empty. */
function cellsSent(row: readonly string[], columns: readonly GridColumn[], season: string): string[] {
  const isUntouched = row.every(
    (cell, index) => cell.trim() === "" || (columns[index].heading === "season" && cell === season),
  );
  if (isUntouched) return row.map(() => "");
  return row.map((cell, index) => {
    const { bareUnit } = columns[index];
    return bareUnit && /^[\d.,]+$/.test(cell.trim()) ? `${cell.trim()} ${bareUnit}` : cell;
  });
}
