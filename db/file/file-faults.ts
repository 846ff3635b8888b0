import type { Database } from "better-sqlite3";

/** Faults of a row, not of the file: those are told by name when the farm is read. */
const OF_A_ROW = /^(CHECK constraint failed|NULL value in|NUMERIC value in|TEXT value in|non-unique entry)/;

const FAULTS_TOLD = 20;

/** What SQLite's own check finds wrong with the file; nothing when it is whole. Source: https://www.sqlite.org/pragma.html#pragma_integrity_check */
export const faultsOf = (sqlite: Database): string[] =>
  sqlite
    .prepare<[], string>(`PRAGMA integrity_check(${FAULTS_TOLD})`)
    .pluck()
    .all()
    .filter((fault) => fault !== "ok" && !OF_A_ROW.test(fault));
