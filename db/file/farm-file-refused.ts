import { inspect } from "node:util";
import { SqliteError } from "better-sqlite3";

/** Why a farm's file cannot be used as it stands. */
export type FileState =
  | "missing"
  | "moved"
  | "empty"
  | "other-program"
  | "newer"
  | "damaged"
  | "two-versions"
  | "locked"
  | "read-only"
  | "disk-full"
  | "disk-failing";

type Words = { readonly title: string; readonly what: string; readonly mend: readonly string[] };

const RESTORE = "Put a copy back: Farm, Copies, or npm run restore -- FILE.";

/** Each state in the grower's words: what it is, and what mends it. None of them has written anything. */
const WORDS: Readonly<Record<FileState, Words>> = {
  missing: {
    title: "There is no farm’s file at this place",
    what: "It was moved, renamed or deleted, the disk it lies on is not there, or there never was one.",
    mend: [
      "Bring the disk or the file back and load the page again.",
      "If the name is not the one you meant, stop the tool and give the whole name of the file in FARM_FILE.",
      RESTORE,
    ],
  },
  moved: {
    title: "The farm’s file was taken away while the tool ran",
    what: "The file that was open is no longer at its place: it was deleted, or another one was put there. What was being saved at that moment is not in the file that lies there now.",
    mend: ["Load the page again: it shows the file that lies there now.", RESTORE],
  },
  empty: {
    title: "The farm’s file is empty",
    what: "The file is there but holds nothing, not even an empty farm. A copy that was cut short leaves such a file.",
    mend: [RESTORE, "To start anew, move the empty file away."],
  },
  "other-program": {
    title: "This is not a farm’s file",
    what: "The file was made by another program, or its beginning is damaged. It was left as it is: nothing of ours was written into it.",
    mend: ["Give the name of your farm’s file in FARM_FILE.", RESTORE],
  },
  newer: {
    title: "The farm’s file is newer than this tool",
    what: "A newer version of the tool has written this file. This version does not know all that is in it and leaves it alone.",
    mend: ["Start the newer version of the tool.", `Or go back to an earlier copy. ${RESTORE}`],
  },
  damaged: {
    title: "The farm’s file is damaged",
    what: "SQLite’s own check of the file found faults. It was left as it is.",
    mend: [RESTORE, "Keep the damaged file: what is readable in it may still be worth something."],
  },
  "two-versions": {
    title: "There are two versions of the farm",
    what: "A copy was put back beside the -wal file of an older run of the tool. Both with and without that side file there is a whole farm, and only you can say which one you want. Nothing was changed.",
    mend: [
      "Stop the tool. To keep the copy that was put back, move the -wal file away.",
      "To keep what was there before, look into the two versions named below and put one back with npm run restore -- FILE.",
    ],
  },
  locked: {
    title: "Another program holds the farm’s file",
    what: "The file is locked by another program, or an older version of the tool still has it open.",
    mend: ["Close the other program and load the page again."],
  },
  "read-only": {
    title: "The farm’s file cannot be written",
    what: "The file, its folder or its disk may only be read, or may not be opened at all.",
    mend: ["Allow your user to write the file and the folder it lies in, and load the page again."],
  },
  "disk-full": {
    title: "The disk is full",
    what: "There is no room left to write. Your records are as they were before the last save.",
    mend: ["Make room on the disk and try again."],
  },
  "disk-failing": {
    title: "The disk does not answer as it should",
    what: "The system refused to read or write the farm’s file.",
    mend: ["Look after the disk, or the connection to it, first.", RESTORE],
  },
};

const MARK = Symbol.for("farm file refused");

/** A farm's file that is not opened, or not written, as it stands; `message` is a sentence for the grower, `detail` what was found. */
export class FarmFileRefused extends Error {
  readonly state: FileState;
  readonly file: string;
  readonly detail: string;

  constructor(state: FileState, file: string, detail = "") {
    super(`${WORDS[state].title} (${file}). ${WORDS[state].what}${detail && ` ${detail}`}`);
    // It tells of the farm's file and not of the program: where it is logged, one line says it all.
    this.stack = this.message;
    Object.defineProperty(this, inspect.custom, { value: () => this.message });
    Object.defineProperty(this, MARK, { value: true });
    this.state = state;
    this.file = file;
    this.detail = detail;
  }

  /** Next makes several bundles, each with a class of its own, and the open farm of one serves them all: an error is known by its mark. */
  static override [Symbol.hasInstance](value: unknown): boolean {
    return value instanceof Error && MARK in value;
  }

  get words(): Words {
    return WORDS[this.state];
  }
}

/** Runs `work`, and says in words what SQLite says in codes. What is no matter of the file goes on as it was. */
export function refusingFile<T>(file: string, work: () => T): T {
  try {
    return work();
  } catch (error) {
    const state = stateOf(error);
    throw state === null ? error : new FarmFileRefused(state, file, error instanceof Error ? error.message : "");
  }
}

/** Runs work that takes its time, and says in words what SQLite or the system says in codes, as {@link refusingFile} does. */
export async function refusingFileLater<T>(file: string, work: () => Promise<T>): Promise<T> {
  try {
    return await work();
  } catch (error) {
    return refusingFile(file, () => {
      throw error;
    });
  }
}

/**
 * The state that a result code of SQLite or of the system tells of; null for those that speak of a row or a statement.
 * Source: https://www.sqlite.org/rescode.html
 */
function stateOf(error: unknown): FileState | null {
  if (!(error instanceof Error) || !("code" in error)) return null;
  const name = error instanceof SqliteError ? /^SQLITE_([A-Z]+)/.exec(error.code)?.[1] : error.code;
  const states: Readonly<Record<string, FileState>> = {
    EACCES: "read-only",
    EPERM: "read-only",
    EROFS: "read-only",
    ENOSPC: "disk-full",
    EDQUOT: "disk-full",
    EIO: "disk-failing",
    BUSY: "locked",
    LOCKED: "locked",
    READONLY: "read-only",
    CANTOPEN: "read-only",
    PERM: "read-only",
    CORRUPT: "damaged",
    NOTADB: "damaged",
    FULL: "disk-full",
    IOERR: "disk-failing",
  };
  return states[String(name)] ?? null;
}
