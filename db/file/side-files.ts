import { copyFileSync, existsSync, mkdtempSync, readFileSync, renameSync, rmSync, statSync } from "node:fs";
import { basename, dirname, join } from "node:path";
import Database from "better-sqlite3";
import { FarmFileRefused } from "./farm-file-refused";
import { faultsOf } from "./file-faults";
import { type FileHeader, firstBytes, parseHeader, readHeader } from "./file-header";

/**
 * Settles what lies beside the farm's file before SQLite sees it. A side file that belongs to another state of the farm (a copy was put
 * back beside it) would be played into the copy and damage it, or hide it: it is moved aside. Where nobody but the grower can tell, the farm is
 * refused and both versions are kept. Source: https://www.sqlite.org/howtocorrupt.html, 1.4 (a journal of another database).
 */
export function settleSideFiles(file: string): void {
  settleJournal(file);
  settleWal(file);
}

/** A rollback journal holds pages as they were before a write that was cut short. */
function settleJournal(file: string): void {
  const journal = `${file}-journal`;
  if (!existsSync(journal)) return;
  const header = readHeader(file);
  if (header && belongs(readJournal(journal), header, file)) return;
  moveAside(journal);
}

type Journal = { readonly pageCount: number; readonly firstPage: Buffer | null };

/** Source: https://www.sqlite.org/fileformat2.html#the_rollback_journal */
const JOURNAL_MAGIC = Buffer.from("d9d505f920a163d7", "hex");

/** What a journal says of the file it was made for; null when it is not hot, and SQLite will pass it by. */
function readJournal(journal: string): Journal | null {
  const bytes = readFileSync(journal);
  if (bytes.length < 28 || !bytes.subarray(0, 8).equals(JOURNAL_MAGIC)) return null;
  const pageCount = bytes.readUInt32BE(16);
  const sectorBytes = bytes.readUInt32BE(20);
  const pageBytes = bytes.readUInt32BE(24);
  // Each record: the page's number, the page, a checksum.
  for (let at = sectorBytes; pageBytes > 0 && at + 8 + pageBytes <= bytes.length; at += 8 + pageBytes)
    if (bytes.readUInt32BE(at) === 1) return { pageCount, firstPage: bytes.subarray(at + 4, at + 4 + pageBytes) };
  return { pageCount, firstPage: null };
}

/** A journal belongs to the file when the file is as it was before that one write, or has its counter one further. */
function belongs(journal: Journal | null, header: FileHeader, file: string): boolean {
  if (journal === null) return true;
  if (journal.firstPage === null) return header.pageCount === journal.pageCount;
  const before = parseHeader(journal.firstPage);
  if (before === null || before.pageBytes !== header.pageBytes) return false;
  if (header.changeCounter === before.changeCounter)
    return firstBytes(file, journal.firstPage.length).equals(journal.firstPage);
  return header.changeCounter === before.changeCounter + 1;
}

/** A -wal file comes from versions of the tool before the rollback journal: mostly it holds the last edits of an old farm. */
function settleWal(file: string): void {
  const wal = `${file}-wal`;
  if (!existsSync(wal) || statSync(wal).size === 0) return;
  const folder = mkdtempSync(join(dirname(file), ".settling-"));
  try {
    const alone = join(folder, "without-side-file.sqlite");
    const both = join(folder, "with-side-file.sqlite");
    copyFileSync(file, alone);
    copyFileSync(file, both);
    copyFileSync(wal, `${both}-wal`);
    const [aloneHolds, bothHold] = [settled(alone), settled(both)];
    // A checkpoint that was cut short leaves a file that is whole only with its side file; a file of another state, one whole only without.
    if (bothHold === null) {
      if (aloneHolds !== null) moveAside(wal);
      return;
    }
    const isPutBack = statSync(file).ctimeMs > statSync(wal).ctimeMs;
    if (!isPutBack || aloneHolds === null || aloneHolds.equals(bothHold)) return;
    const kept = [alone, both].map((version) => {
      const place = `${file}.${basename(version)}`;
      renameSync(version, place);
      return place;
    });
    throw new FarmFileRefused("two-versions", file, `They are kept as ${kept.join(" and ")}.`);
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

/** All that a version holds, its side file played in; null when it is damaged. */
function settled(version: string): Buffer | null {
  try {
    const sqlite = new Database(version);
    try {
      sqlite.pragma("journal_mode = DELETE");
      if (faultsOf(sqlite).length) return null;
      const tables = sqlite.prepare<[], string>("SELECT name FROM sqlite_schema WHERE type = 'table' ORDER BY name");
      const rows = tables
        .pluck()
        .all()
        .map((table) => sqlite.prepare(`SELECT * FROM "${table}"`).raw().all());
      return Buffer.from(JSON.stringify(rows));
    } finally {
      sqlite.close();
    }
  } catch {
    return null;
  }
}

/** Out of SQLite's sight, but kept. */
function moveAside(path: string): void {
  for (let count = 1; ; count++) {
    const aside = `${path}.not-of-this-file-${count}`;
    if (existsSync(aside)) continue;
    renameSync(path, aside);
    return;
  }
}
