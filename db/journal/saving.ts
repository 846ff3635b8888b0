import type { Database } from "better-sqlite3";
import type { FarmDatabase } from "#db/client";
import type { Problem } from "#lib/domain/problem";
import { changedMeanwhile } from "./meanwhile";

/**
 * How a save was sent. `key` is the same for every try of one filled form and `fingerprint` the same for the same content; `seenRevision` is the
 * farm's revision when what the form shows was read. Each may be missing: then nothing is asked of it.
 */
export type Saving = {
  readonly key: string | null;
  readonly fingerprint: string;
  readonly seenRevision: number | null;
  /** Who sent it, by name; nobody is named where the farm is served to its owner's machine alone. */
  readonly by?: string | null;
};

/** A save that would write over what somebody else has written since the form was read, or another content under the key of one that landed. */
export class SaveRefused extends Error {
  readonly problems: readonly Problem[];

  constructor(problems: readonly Problem[]) {
    super(problems.map(({ message }) => message).join("\n"));
    this.problems = problems;
  }
}

/** Changes after which the key of a form is forgotten. */
const KEYS_KEPT = 1000;
/** The same for the key of a tally, which a phone without signal may send again days later. */
const TALLY_KEYS_KEPT = 20_000;

/** The key of a tally as it is kept. */
export const tallyKey = (key: string): string => `tally ${key}`;

const underWay = new WeakMap<Database, Saving>();

/**
 * Runs `work` as the saving of one sent form: the first change in it is written once for a key, however often it is tried, and not at all over
 * rows that others have changed since the form was read. Then a SaveRefused is thrown, and nothing is written.
 */
export function saving<T>({ $client }: FarmDatabase, save: Saving, work: () => T): T {
  underWay.set($client, save);
  try {
    return work();
  } finally {
    underWay.delete($client);
  }
}

/** The saving that a change belongs to; null when it was not sent by a form. Each saving is given to one change. */
export function takeSaving(sqlite: Database): Saving | null {
  const save = underWay.get(sqlite) ?? null;
  underWay.delete(sqlite);
  return save;
}

type Landed = { readonly changeId: number; readonly result: unknown };

/** What a save of this key has done already. Refused when it was of another content. Inside the transaction that would save it again. */
export function landed(sqlite: Database, save: Saving): Landed | null {
  const row = sqlite
    .prepare<[string | null], { change_id: number; fingerprint: string; result_json: string }>(
      "SELECT change_id, fingerprint, result_json FROM save_key WHERE key = ?",
    )
    .get(save.key);
  if (!row) return null;
  if (row.fingerprint !== save.fingerprint)
    throw new SaveRefused([
      {
        place: "",
        message:
          "an earlier try of this form was saved after all, though no answer came; what you typed since then was not: look at what stands there now before you save again",
      },
    ]);
  return { changeId: row.change_id, result: JSON.parse(row.result_json) };
}

/** Refuses a change that touches rows which others have changed since; else writes down, in the same transaction, that the save has landed. */
export function settleSaving(sqlite: Database, save: Saving, changeId: number, result: unknown): void {
  if (save.seenRevision !== null) {
    if (!isRemembered(sqlite, save.seenRevision, changeId)) throw new SaveRefused([TOO_OLD]);
    const meanwhile = changedMeanwhile(sqlite, save.seenRevision, changeId);
    if (meanwhile.length) throw new SaveRefused(meanwhile.map((message) => ({ place: "", message })));
  }
  if (save.key === null) return;
  sqlite
    .prepare("INSERT INTO save_key (key, fingerprint, change_id, result_json) VALUES (?, ?, ?, ?)")
    .run(save.key, save.fingerprint, changeId, JSON.stringify(result ?? null));
  sqlite
    .prepare(
      `DELETE FROM save_key WHERE change_id <= (SELECT max(change_id) FROM save_key) - iif(key GLOB 'tally *', ?, ?)`,
    )
    .run(TALLY_KEYS_KEPT, KEYS_KEPT);
}

const TOO_OLD = {
  place: "",
  message:
    "this page was read before changes that are no longer listed, or before a copy was put back: look at what stands there now",
};

/** Whether the journal still has every change since `seenRevision`, which must be one of this farm's own. */
function isRemembered(sqlite: Database, seenRevision: number, changeId: number): boolean {
  const oldest = sqlite.prepare<[], number>("SELECT min(id) FROM change").pluck().get() ?? changeId;
  return seenRevision < changeId && oldest <= seenRevision + 1;
}
