import { existsSync, type Stats, statSync } from "node:fs";
import { closeFarm, type FarmDatabase, openKeptFarm } from "#db/client";
import { FarmFileRefused, refusingFile } from "./farm-file-refused";
import { faultsOf } from "./file-faults";
import { type FileHeader, readHeader } from "./file-header";
import { isInPlace, writesOfOthers } from "./file-place";
import { writeNewFile } from "./write-file";

type Seen = { readonly database: FarmDatabase; stats: Stats; header: FileHeader; foreignWrites: number };

/**
 * A farm that stays open for the life of a server. Each time it is asked for, it is the file that lies at its place now: one that was put
 * back meanwhile is opened anew with every check, one that is gone or damaged is refused in words (FarmFileRefused), and a later try looks again.
 */
export class KeptOpen {
  readonly file: string;
  #seen: Seen | null = null;
  #turn = 0;

  constructor(file: string) {
    this.file = file;
    // Runs when the process ends by itself or by Ctrl+C or SIGTERM, once the server has answered what it had begun.
    process.on("exit", () => this.close());
  }

  /** Moves when the file was opened anew or written by another connection: what was read before may no longer be so. */
  get turn(): number {
    return this.#turn;
  }

  /** Never asked for inside a transaction of its own: it may read the file's header. */
  database(): FarmDatabase {
    return refusingFile(this.file, () => this.#standing());
  }

  #standing(): FarmDatabase {
    // A file that is gone altogether stays open: nobody else has its content any more, and it can still be put back.
    if (!existsSync(this.file)) throw new FarmFileRefused("missing", this.file);
    const stood = this.#seen?.foreignWrites;
    if (this.#seen && !isSame(this.#seen, this.file)) this.close();
    if (this.#seen === null) this.#seen = look(openKeptFarm(this.file), this.file);
    if (stood !== this.#seen.foreignWrites) this.#turn++;
    return this.#seen.database;
  }

  /** Whether the file is gone from its place while its content is still held open. */
  get isHeldAfterLoss(): boolean {
    return this.#seen !== null && !existsSync(this.file);
  }

  /** Writes the content of a file that was deleted while it was open to its place again. */
  putBack(): void {
    if (!this.#seen || existsSync(this.file)) return;
    writeNewFile(this.file, this.#seen.database.$client.serialize());
    this.close();
  }

  close(): void {
    if (this.#seen) closeFarm(this.#seen.database);
    this.#seen = null;
    this.#turn++;
  }
}

function look(database: FarmDatabase, file: string): Seen {
  try {
    const header = readHeader(file);
    if (!header) throw new FarmFileRefused("other-program", file);
    return { database, stats: statSync(file), header, foreignWrites: writesOfOthers(database.$client) };
  } catch (error) {
    database.$client.close();
    throw error;
  }
}

/**
 * Whether the open file is still the one at its place, written to by nobody but this tool. A copy that was written over it in place has an
 * older counter, other tables, or does not hold together.
 */
function isSame(seen: Seen, file: string): boolean {
  if (!isInPlace(seen.database.$client)) return false;
  const stats = statSync(file);
  if (stats.mtimeMs === seen.stats.mtimeMs && stats.ctimeMs === seen.stats.ctimeMs && stats.size === seen.stats.size)
    return true;
  const header = readHeader(file);
  if (
    !header ||
    header.isWal ||
    header.changeCounter <= seen.header.changeCounter ||
    header.schemaCookie !== seen.header.schemaCookie ||
    header.applicationId !== seen.header.applicationId
  )
    return false;
  const foreign = writesOfOthers(seen.database.$client);
  if (foreign !== seen.foreignWrites && faultsOf(seen.database.$client).length) return false;
  Object.assign(seen, { stats, header, foreignWrites: foreign });
  return true;
}
