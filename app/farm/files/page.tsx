import type { Metadata } from "next";
import { headingsOf, SHEET_NAMES, type SheetName } from "#lib/domain/records/sheets";
import { FarmTabs } from "../farm-tabs";
import { FileChoice } from "./file-choice.client";

export const metadata: Metadata = { title: "Files" };

/** The farm as spreadsheets: to take out, and to bring in after every problem was listed. */
export default function FilesPage() {
  return (
    <>
      <h1>Farm: files</h1>
      <FarmTabs open="/farm/files" />
      <div className="cols files-in-and-out">
        <section aria-labelledby="import">
          <h2 id="import">Bring in spreadsheets</h2>
          <p>
            You first see what each row would change, and what is wrong with it. Nothing is written before you say so,
            and one Undo takes all of it back.
          </p>
          <FileChoice />
          <details>
            <summary>Which row changes what</summary>
            <p>
              A row that was taken out here finds its own record again by the last column, its key, whatever else you
              changed in it. A row without a key changes the bed, crop or variety of its name, the booking of its client
              and day, and so on; where there is none, it is new. What the files do not name stays as it is. Only a
              recipe is replaced whole, all its lines at once.
            </p>
          </details>
        </section>
        <section aria-labelledby="out">
          <h2 id="out">Take your records out</h2>
          <p>For a spreadsheet program, to look at, change and bring back, or to keep.</p>
          <p className="actions">
            <a className="button main" href="/farm/files/workbook" download>
              One workbook (XLSX)
            </a>
            <a className="button" href="/farm/files/all" download>
              All sheets as CSV, in a zip
            </a>
          </p>
          <p className="small">
            Lengths are metres, shares 0 to 1, money cents, days as 2027-06-12. Leave a row’s key as it is; empty it in
            a row that you copy to make a new one.
          </p>
          <ul className="leaders sheet-list" aria-label="One sheet as CSV">
            {SHEET_NAMES.map((name) => (
              <li key={name}>
                <a href={`/farm/files/sheet/${name}.csv`} download>
                  {name}.csv
                </a>
                <span className="dots" />
                <span>{HOLDS[name]}</span>
              </li>
            ))}
          </ul>
          <p className="small">
            Not in the sheets: what-ifs that you kept, and the history of changes with its undo. A{" "}
            <a href="/farm/copies">copy of the farm</a> holds those too.
          </p>
          <details>
            <summary>The columns of each sheet</summary>
            <dl className="sheet-columns">
              {SHEET_NAMES.map((name) => (
                <div key={name}>
                  <dt>{name}</dt>
                  <dd>{headingsOf(name).join(", ")}</dd>
                </div>
              ))}
            </dl>
          </details>
        </section>
      </div>
    </>
  );
}

/** What a sheet holds, in a grower's words. */
const HOLDS: Readonly<Record<SheetName, string>> = {
  farm: "the farm’s figures",
  crops: "crops with their days, bunches and prices",
  recipes: "pieces and their stems",
  varieties: "varieties and their colours",
  beds: "beds and their sizes",
  plantings: "what is planted where, season by season",
  cooler: "stems that stand ready",
  curves: "when each crop blooms, and how much",
  bookings: "clients, days and palettes",
  pieces: "the pieces of each booking",
  stems: "stems by name of each booking",
  promises: "what each client was promised",
  orders: "who buys every week",
  cuts: "what was cut",
  reviews: "what became of the stems of past events, role by role",
  purchases: "what was ordered from suppliers, and what of it came",
  moves: "what left the cooler: taken out or thrown away, for whom",
  buds: "what the buds looked like, bed by bed",
  losses: "what winters, voles or hail left of plants, bed by bed",
  firsts: "first cuts of past seasons, to learn from",
  weather: "highs and lows, day by day",
};
