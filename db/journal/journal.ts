import { desc, eq } from "drizzle-orm";
import { READ_WAITS_MS, WRITE_WAITS_MS } from "#db/busy";
import type { FarmDatabase } from "#db/client";
import { refusingFile } from "#db/file/farm-file-refused";
import { refuseUnlessInPlace } from "#db/file/file-place";
import { isConstraint } from "#db/schema/constraint";
import { change } from "#db/schema/journal";
import { putRowsBack, UndoRefused } from "./put-rows-back";
import { landed, type Saving, settleSaving, takeSaving } from "./saving";

/**
 * What is kept to be undone: the latest so many changes, and of those no more than so many rows as they were, except that so many changes are
 * kept whatever their size. An import of a large farm writes some ten thousand rows.
 */
export const KEPT = { changes: 200, rows: 100_000, changesWhateverTheirSize: 20 } as const;

/** One change to the farm's records. `madeAt` is UTC, "YYYY-MM-DD hh:mm:ss"; `undoesChangeId` names the change it took back, `madeBy` who made it. */
export type JournalChange = typeof change.$inferSelect;

/** What a change did. `changeId` is null when no row was touched: then no change was made, and none is kept. */
export type Recorded<T> = { readonly changeId: number | null; readonly result: T };

/**
 * Runs `work` as one change: all of its writes or, when it throws, none of them. `title` says in words what was done ("added bed D4"); it may
 * be told from the result. Throws RangeError inside another change or transaction; `work` must be synchronous.
 */
export const recordChange = <T>(
  database: FarmDatabase,
  title: string | ((result: T) => string),
  work: () => T,
): Recorded<T> => record(database, title, null, work);

/** The outcome of an undo: the new change that took the old one back, or in words why it cannot be. */
export type Undone =
  | { readonly ok: true; readonly changeId: number | null }
  | { readonly ok: false; readonly message: string };

/**
 * Takes a change back: every row becomes what it was before. Refused, with nothing touched, when one of its rows has been changed since or
 * something new depends on it. An undo is itself a change, so that it can be undone too.
 */
export const undoChange = (database: FarmDatabase, changeId: number): Undone =>
  attemptUndo(database, changeId, () => {});

/**
 * What a save of this key has written already, in words; null when nothing. Asked before its content is read again, which the farm may take only
 * once. Throws SaveRefused when the key was of another content.
 */
export function landedBefore(database: FarmDatabase, save: Saving): string | null {
  const before = landed(database.$client, save);
  if (before === null) return null;
  const made = database.select().from(change).where(eq(change.id, before.changeId)).get();
  return made?.title ?? "saved before";
}

/** Why a change cannot be taken back as the records stand, or null when it can. Writes nothing. */
export function undoRefusal(database: FarmDatabase, changeId: number): string | null {
  const tried = attemptUndo(database, changeId, () => {
    throw new OnlyTried();
  });
  return tried.ok ? null : tried.message;
}

/** Thrown at the end of an undo that is only tried, so that all of it is rolled back. */
class OnlyTried extends Error {}

function attemptUndo(database: FarmDatabase, changeId: number, atEnd: () => void): Undone {
  const undone = database.select().from(change).where(eq(change.id, changeId)).get();
  if (!undone) return { ok: false, message: "This change is no longer kept, so it cannot be undone." };
  try {
    const { changeId: undoId } = record(database, titleOfUndo(undone.title), changeId, (openId) => {
      putRowsBack(database.$client, changeId, openId);
      atEnd();
    });
    return { ok: true, changeId: undoId };
  } catch (error) {
    if (error instanceof OnlyTried) return { ok: true, changeId: null };
    if (error instanceof UndoRefused) return { ok: false, message: error.message };
    if (isConstraint(error))
      return {
        ok: false,
        message: `Cannot undo “${undone.title}”: what was written since stands in its way. Undo that first.`,
      };
    throw error;
  }
}

/** The last `count` changes, newest first. */
export const latestChanges = (database: FarmDatabase, count: number): JournalChange[] =>
  database.select().from(change).orderBy(desc(change.id)).limit(count).all();

/** A change that is kept, and not taken back; null when it is neither. */
export function standingChange(database: FarmDatabase, changeId: number): JournalChange | null {
  const found = database.select().from(change).where(eq(change.id, changeId)).get();
  const isTakenBack = database
    .select()
    .from(change)
    .where(eq(change.undoesChangeId, changeId))
    .all()
    .some(({ id }) => standingChange(database, id) !== null);
  return found && !isTakenBack ? found : null;
}

/** Forgets every change: the farm as it stands becomes the beginning, with nothing to undo. `revision` does not move. */
export const forgetChanges = (database: FarmDatabase): void => {
  database.delete(change).run();
};

/** The number of the newest change ever made, kept or not; 0 when there was none. It only grows, and each write and each undo moves it. */
export function revision(database: FarmDatabase): number {
  const newest = "SELECT seq FROM sqlite_sequence WHERE name = 'change'";
  return database.$client.prepare<[], number>(newest).pluck().get() ?? 0;
}

/** A full disk, a lock that does not go, a disk that fails: in words, and with every row as it was. */
const record = <T>(
  database: FarmDatabase,
  title: string | ((result: T) => string),
  undoesChangeId: number | null,
  work: (changeId: number) => T,
): Recorded<T> => refusingFile(database.$client.name, () => recordInOne(database, title, undoesChangeId, work));

function recordInOne<T>(
  database: FarmDatabase,
  title: string | ((result: T) => string),
  undoesChangeId: number | null,
  work: (changeId: number) => T,
): Recorded<T> {
  const sqlite = database.$client;
  if (sqlite.inTransaction) throw new RangeError("a change cannot be made inside another one");
  const save = takeSaving(sqlite);
  sqlite.pragma(`busy_timeout = ${WRITE_WAITS_MS}`);
  try {
    sqlite.exec("BEGIN IMMEDIATE");
    // Now nobody can put another file there: a restore does so only while it holds the lock.
    refuseUnlessInPlace(sqlite);
    const before = save && landed(sqlite, save);
    if (before) {
      sqlite.exec("ROLLBACK");
      return { changeId: before.changeId, result: before.result as T };
    }
    const id = sqlite
      .prepare<[number | null], number>("INSERT INTO change (title, undoes_change_id) VALUES ('', ?) RETURNING id")
      .pluck()
      .get(undoesChangeId) as number;
    sqlite.prepare("INSERT INTO open_change VALUES (?)").run(id);
    const result = work(id);
    if (result instanceof Promise) throw new RangeError("the work of a change must not wait for anything");
    sqlite.exec("DELETE FROM open_change");
    const isTouched = sqlite.prepare("SELECT 1 FROM change_row WHERE change_id = ? LIMIT 1").get(id) !== undefined;
    if (isTouched) {
      if (save) settleSaving(sqlite, save, id, result);
      const words = typeof title === "string" ? title : title(result);
      const named = save?.by ? { title: words, madeBy: save.by } : { title: words };
      database.update(change).set(named).where(eq(change.id, id)).run();
      letGo(sqlite, KEPT);
    }
    // With nothing touched, a rollback leaves the very same records and does not use up a number.
    sqlite.exec(isTouched ? "COMMIT" : "ROLLBACK");
    // A file that was taken away between the two has the write, but nobody will ever see it again.
    refuseUnlessInPlace(sqlite);
    return { changeId: isTouched ? id : null, result };
  } catch (error) {
    if (sqlite.inTransaction) sqlite.exec("ROLLBACK");
    throw error;
  } finally {
    sqlite.pragma(`busy_timeout = ${READ_WAITS_MS}`);
  }
}

/** Forgets the changes that are past what is kept; their rows go with them. */
export function letGo(sqlite: FarmDatabase["$client"], kept: { [Of in keyof typeof KEPT]: number }): void {
  const beyond = "id NOT IN (SELECT id FROM change ORDER BY id DESC LIMIT ?)";
  sqlite.prepare(`DELETE FROM change WHERE ${beyond}`).run(kept.changes);
  // Rows are numbered as they are written, so that the oldest too many are found without counting.
  const isOfOldRows = "id IN (SELECT change_id FROM change_row WHERE id <= (SELECT max(id) FROM change_row) - ?)";
  sqlite.prepare(`DELETE FROM change WHERE ${isOfOldRows} AND ${beyond}`).run(kept.rows, kept.changesWhateverTheirSize);
}

const TOOK_BACK = "took back: ";
const PUT_BACK = "put back: ";

/** "took back: added bed D4", and when that is undone in turn, "put back: added bed D4". */
function titleOfUndo(title: string): string {
  const bare = title.replace(TOOK_BACK, "").replace(PUT_BACK, "");
  return title.startsWith(TOOK_BACK) ? PUT_BACK + bare : TOOK_BACK + bare;
}
