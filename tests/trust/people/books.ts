import { closeFarm, type FarmDatabase, openFarm } from "#db/client";
import type { HiredRole } from "#lib/domain/people";
import { faultsOfRecords } from "../sound-records";
import type { Crew } from "./crew";
import type { Paper } from "./paper";
import { A_COUNT } from "./trespass";

/** The rows that each may write by what they do on such a day. */
const THEIR_TABLES: Readonly<Record<HiredRole, readonly string[]>> = {
  helper: ["cut", "tally", "cooler_move"],
  designer: ["booking", "promise"],
};

type Kept = { id: number; place: string; stems: number; by: string | null; isApart: number; madeBy: string | null };

/** In what the farm's own books, read when the server is gone, are not what the paper says: sums, counts, and who made which change. */
export function faultsOfBooks(file: string, paper: Paper, crew: Crew, ownWork: readonly string[]): string[] {
  const database = openFarm(file);
  try {
    return [
      ...faultsOfRecords(database),
      ...faultsOfCounts(database, paper),
      ...faultsOfHistory(database, crew, ownWork),
    ];
  } finally {
    closeFarm(database);
  }
}

function faultsOfCounts({ $client }: FarmDatabase, paper: Paper): string[] {
  const faults: string[] = [];
  const place = "cut_on || ' bed ' || bed_id || ' variety ' || variety_id";
  const sums = $client
    .prepare<[], { place: string; stems: number }>(
      `SELECT ${place} AS place, sum(stems_cut) AS stems FROM cut GROUP BY 1`,
    )
    .all();
  const kept = $client
    .prepare<[], Kept & { key: string }>(
      `SELECT substr(key, 7) AS key, tally.id, ${place} AS place, stems_cut AS stems, counted_by AS "by", is_apart AS isApart, made_by AS madeBy
       FROM tally JOIN save_key ON key GLOB 'tally *' AND json_extract(result_json, '$.result.tallyId') = tally.id JOIN change ON change.id = change_id`,
    )
    .all();
  const rowCount = $client.prepare<[], number>("SELECT count(*) FROM tally").pluck().get();
  const counts = [...paper.rows.values()].flatMap((row) => row.counts);
  if (rowCount !== counts.length) faults.push(`${rowCount} counts are kept, and ${counts.length} were made`);
  for (const { key, place, stems, by, isApart } of counts) {
    const found = kept.filter((one) => one.key === key);
    const [one] = found;
    const isSo =
      found.length === 1 &&
      one.place === place &&
      one.stems === stems &&
      one.isApart === Number(isApart) &&
      one.by === by &&
      one.madeBy === by;
    if (!isSo)
      faults.push(`the count ${key}, ${stems} stems of ${place} by ${by}, is kept as ${JSON.stringify(found)}`);
  }
  for (const [place, { stems }] of paper.rows) {
    const found = sums.find((sum) => sum.place === place)?.stems ?? 0;
    if (found !== stems) faults.push(`${found} stems are recorded of ${place}, and ${stems} were cut`);
  }
  if (kept.some(({ key }) => key === A_COUNT.key)) faults.push("a count that nobody may send was taken");
  return faults;
}

type Touched = { id: number; madeBy: string | null; tables: string };

/** Every change of the day has somebody's name, and nobody wrote rows that are not theirs. */
function faultsOfHistory({ $client }: FarmDatabase, crew: Crew, ownWork: readonly string[]): string[] {
  const began = $client.prepare<[], number>("SELECT min(id) FROM change WHERE made_by IS NOT NULL").pluck().get() ?? 0;
  const changes = $client
    .prepare<[number], Touched>(
      `SELECT change.id, made_by AS madeBy, group_concat(DISTINCT table_name) AS tables
       FROM change LEFT JOIN change_row ON change_id = change.id WHERE change.id >= ? GROUP BY change.id`,
    )
    .all(began);
  const faults = changes.flatMap(({ id, madeBy, tables }) => {
    if (madeBy === "owner") return [];
    const role = crew.members.find(({ name }) => name === madeBy)?.role;
    if (!role) return [`change ${id} is nobody's: ${madeBy}`];
    const others = (tables ?? "").split(",").filter((table) => table !== "" && !THEIR_TABLES[role].includes(table));
    return others.length === 0 ? [] : [`change ${id} of ${madeBy}, a ${role}, wrote ${others.join(", ")}`];
  });
  for (const name of new Set(ownWork))
    if (!changes.some(({ madeBy }) => madeBy === name)) faults.push(`the history does not know what ${name} did`);
  return faults;
}
