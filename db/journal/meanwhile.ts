import type { Database } from "better-sqlite3";
import { type Cell, cellChange, mannerOf } from "./cell-words";
import { wallTime } from "./wall-time";

type Other = {
  readonly title: string;
  readonly made_at: string;
  readonly table_name: string;
  readonly before_json: string | null;
  readonly after_json: string | null;
};

/**
 * What others have written, since `seenRevision`, into rows that the change `changeId` touches: each row in words, with what stood there and
 * what they made of it. Empty when nobody did.
 */
export function changedMeanwhile(sqlite: Database, seenRevision: number, changeId: number): string[] {
  const others = sqlite
    .prepare<[number, number, number], Other>(
      `SELECT DISTINCT title, made_at, table_name, before_json, after_json, theirs.id
        FROM change_row AS theirs JOIN change ON change.id = theirs.change_id
        WHERE theirs.change_id > ? AND theirs.change_id < ? AND EXISTS (
          SELECT 1 FROM change_row AS mine
          WHERE mine.change_id = ? AND mine.table_name = theirs.table_name AND mine.row_id = theirs.row_id)
        ORDER BY theirs.id`,
    )
    .all(seenRevision, changeId, changeId);
  const inItsWords = cellChange(sqlite, mannerOf(sqlite));
  return others.map(
    ({ title, made_at, table_name, before_json, after_json }) =>
      `saved meanwhile, ${wallTime(made_at)}, “${title}”: ${
        table_name === "weather_year"
          ? weatherInWords(before_json, after_json)
          : `${inWords(table_name)} ${difference(before_json, after_json, (column, was, is) => inItsWords(table_name, column, was, is))}`
      }`,
  );
}

/** Hundreds of temperatures are no sentence. */
function weatherInWords(beforeJson: string | null, afterJson: string | null): string {
  const { id }: { id: number } = JSON.parse(afterJson ?? beforeJson ?? "{}");
  return `the weather of ${id} was ${afterJson === null ? "removed" : beforeJson === null ? "added" : "changed"}`;
}

const inWords = (name: string): string => name.replaceAll("_", " ");

function difference(
  beforeJson: string | null,
  afterJson: string | null,
  inItsWords: (column: string, was: Cell, is: Cell) => string,
): string {
  if (beforeJson === null) return "was added";
  if (afterJson === null) return "was removed";
  const before: Record<string, Cell> = JSON.parse(beforeJson);
  const after: Record<string, Cell> = JSON.parse(afterJson);
  return Object.keys(after)
    .filter((column) => before[column] !== after[column])
    .map((column) => inItsWords(column, before[column], after[column]))
    .join(", ");
}
