import { FarmFileRefused } from "./file/farm-file-refused";

/** How long a read waits for another connection's lock, in milliseconds: as long as a write of another server takes, and no page stands still for it. */
export const READ_WAITS_MS = 100;

/** How long a write waits: a second server that writes without pause lets one through within a second. The server answers nobody meanwhile. */
export const WRITE_WAITS_MS = 2000;

/** Whether an error says that another connection holds the file, in SQLite's code or in our words. Source: https://www.sqlite.org/rescode.html#busy */
export const isBusy = (error: unknown): boolean =>
  error instanceof FarmFileRefused
    ? error.state === "locked"
    : error instanceof Error && "code" in error && String(error.code).startsWith("SQLITE_BUSY");
