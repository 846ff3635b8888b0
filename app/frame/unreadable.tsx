import type { Problem } from "#lib/domain/problem";
import { farmCopies } from "../copies";
import { CopyRows } from "../farm/copies/copy-rows";
import { ProblemList } from "../ui/problem-list";

/** The farm's file holds rows that no plan may trust: all of them, by name, and the way out. */
export const Unreadable = ({ problems }: { problems: readonly Problem[] }) => (
  <>
    <h1>The farm’s records cannot be read</h1>
    <p>
      Some rows were changed outside this tool, or the file is damaged. Nothing was written. Mend the rows below with
      any SQLite editor and load the page again, or restore a copy.
    </p>
    <ProblemList title="Bad rows" problems={problems} />
    <section aria-labelledby="copies">
      <h2 id="copies">Copies</h2>
      <CopyRows copies={farmCopies().copies} />
    </section>
  </>
);
