import type { Problem } from "#lib/domain/problem";
import { ProblemList } from "../ui/problem-list";

/** The farm's file holds rows that no plan may trust: all of them, by name, and the way out. */
export const Unreadable = ({ problems }: { problems: readonly Problem[] }) => (
  <>
    <h1>The farm’s records cannot be read</h1>
    <p>
      Some rows were changed outside this tool, or the file is damaged. Nothing was written. Mend the rows below with
      any SQLite editor, or put a copy of the file back, and load the page again.
    </p>
    <ProblemList title="Bad rows" problems={problems} />
  </>
);
