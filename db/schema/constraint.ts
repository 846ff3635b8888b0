import { SqliteError } from "better-sqlite3";

/** True when SQLite refused a write because of a constraint of the tables. */
export const isConstraint = (error: unknown): boolean =>
  error instanceof SqliteError && error.code.startsWith("SQLITE_CONSTRAINT");

/** True when SQLite refused a row because another one has the same name or place. */
export const isTwice = (error: unknown): boolean =>
  error instanceof SqliteError && error.code === "SQLITE_CONSTRAINT_UNIQUE";
