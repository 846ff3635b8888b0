import type { Metadata } from "next";
import { headingsOf, SHEET_NAMES } from "#lib/domain/records/sheets";
import { Table } from "../../ui/table";
import { FarmTabs } from "../farm-tabs";
import { FileChoice } from "./file-choice.client";

export const metadata: Metadata = { title: "Files" };

/** The farm as spreadsheets: to take out, and to bring in after every problem was listed. */
export default function FilesPage() {
  return (
    <>
      <h1>Farm: files</h1>
      <FarmTabs open="/farm/files" />
      <section aria-labelledby="import">
        <h2 id="import">Bring in spreadsheets</h2>
        <p>
          A row changes the row of the farm that it came from, by its key, else the one of the same name, or of the same
          name and day; any other is new. What the files do not speak of stays, except that a recipe is replaced whole.
          First everything is read, and you see what would change and what is wrong; nothing is written before you say
          so, and what is written can be undone as one.
        </p>
        <FileChoice />
      </section>
      <section aria-labelledby="out">
        <h2 id="out">Take your records out</h2>
        <p>
          Plain CSV, which comes back in as it went out. Metres, shares from 0 to 1, cents and dates as 2027-06-12. The
          last column is the row’s key: leave it as it is, and empty it in a row that you copy to make a new one.
        </p>
        <p>
          Not in the sheets: what-ifs that you kept, and the history of changes with its undo. A{" "}
          <a href="/farm/copies">copy of the farm</a> holds those too.
        </p>
        <p className="actions">
          <a className="button main" href="/farm/files/all" download>
            All sheets in a zip
          </a>
        </p>
        <Table
          caption="The sheets"
          isCaptionHidden
          columns={[
            {
              head: "Sheet",
              kind: "name",
              cell: (name) => (
                <a className="sheet-link" href={`/farm/files/sheet/${name}.csv`} download>
                  {name}.csv
                </a>
              ),
            },
            { head: "Columns", className: "small sheet-columns", cell: (name) => headingsOf(name).join(", ") },
          ]}
          rows={SHEET_NAMES}
          keyOf={(name) => name}
        />
      </section>
    </>
  );
}
