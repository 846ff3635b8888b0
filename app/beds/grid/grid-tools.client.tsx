"use client";

import { useState } from "react";
import { measureIn, toStored } from "#lib/domain/measures";
import { plantsInBed } from "#lib/domain/plants-in-bed";
import { readNumber } from "#lib/domain/read-number";
import type { Units } from "#lib/domain/words";
import type { Writing } from "#lib/domain/writing";
import { type GridRows, MOST_GRID_ROWS, repeatedEvery } from "#lib/sheets/grid";
import type { GridColumn } from "./grid-columns";

type Props = {
  rows: GridRows;
  columns: readonly GridColumn[];
  units: Units;
  writing: Writing;
  bedMetres: Readonly<Record<string, number>>;
  onRows: (rows: GridRows) => void;
};

const START = { days: "14", times: "3", rowCount: "3", distance: "" };

/** Two helps over the last filled row: repeat it every so many days, and count its plants from their spacing in the bed. */
export function GridTools({ rows, columns, units, writing, bedMetres, onRows }: Props) {
  const [typed, setTyped] = useState(START);
  const [problem, setProblem] = useState("");
  const at = (heading: string) => columns.findIndex((column) => column.heading === heading);
  const last = rows.findLastIndex((row) => (row[at("bed")] ?? "").trim() !== "");
  const distanceIn = measureIn(units, "depth");
  const numberIn = (text: string) => {
    const reading = readNumber(text.trim(), writing.decimalMark);
    return reading.ok && reading.value > 0 ? reading.value : null;
  };
  const repeat = () => {
    const everyDays = numberIn(typed.days);
    const times = numberIn(typed.times);
    const room = MOST_GRID_ROWS - rows.length;
    if (last < 0) return setProblem("fill in a row first, its bed and its day");
    if (!everyDays || !times || !Number.isInteger(everyDays) || !Number.isInteger(times) || times > room)
      return setProblem(`write whole days, and from 1 to ${room} times`);
    const added = repeatedEvery(rows[last], { dayColumn: at("planted_on"), everyDays, times }, writing);
    if (!added) return setProblem("write the day of the last row first, for example 2027-05-20");
    setProblem("");
    onRows([...rows.slice(0, last + 1), ...added, ...rows.slice(last + 1)]);
  };
  const count = () => {
    const lengthMetres = last < 0 ? undefined : bedMetres[rows[last][at("bed")].trim().toLowerCase()];
    const rowCount = numberIn(typed.rowCount);
    const distance = numberIn(typed.distance);
    if (lengthMetres === undefined) return setProblem("name a bed of the farm in the last row first");
    if (!rowCount || !distance) return setProblem("write how many rows, and how far apart the plants stand");
    const plants = plantsInBed({ lengthMetres, rowCount, distanceMetres: toStored(distanceIn, distance) });
    setProblem("");
    onRows(rows.with(last, rows[last].with(at("plants"), String(plants))));
  };
  const input = (name: keyof typeof START, label: string) => (
    <input
      aria-label={label}
      inputMode="decimal"
      className="grid-number"
      value={typed[name]}
      onChange={({ target }) => setTyped({ ...typed, [name]: target.value })}
    />
  );
  return (
    <fieldset className="grid-tools">
      <legend>With the last row that is filled in</legend>
      <p className="row">
        Repeat it every {input("days", "Days between")} days, {input("times", "How many times")} times
        <button type="button" onClick={repeat}>
          Repeat
        </button>
      </p>
      <p className="row">
        Fill its bed with {input("rowCount", "Rows in the bed")} rows, a plant every{" "}
        {input("distance", `Distance, ${distanceIn.word}`)} {distanceIn.word}
        <button type="button" onClick={count}>
          Count the plants
        </button>
      </p>
      <p role="status">{problem && <span className="problem">{problem}</span>}</p>
    </fieldset>
  );
}
