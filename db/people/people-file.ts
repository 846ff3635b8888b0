import { readFileSync, statSync } from "node:fs";
import { writeOverFile } from "#db/file/write-file";
import { type PeopleKept, peopleSchema } from "#lib/domain/people";

const NOBODY: PeopleKept = { ownerPassword: null, people: [], sessions: [], invitations: [], calendarHash: null };

/** The people's file is there and cannot be read as what it should be: nobody is let in. The message says what mends it. */
export class PeopleUnreadable extends Error {
  constructor(file: string) {
    super(
      `${file} cannot be read as the people of a farm. Move it away and set the password anew with npm run password: the farm's records are not touched, and everybody joins again`,
    );
  }
}

/**
 * The file that keeps the people of a farm, beside the farm's own and apart from it: no copy of the farm carries a password or a session that is
 * alive. Written whole, private to the account; read again when another program, `npm run password`, has written it.
 */
export class PeopleFile {
  readonly #file: string;
  #mark = "";
  #kept = NOBODY;

  /** @param farmFile  the farm's own file */
  constructor(farmFile: string) {
    this.#file = `${farmFile}.people.json`;
  }

  /** @throws PeopleUnreadable */
  read(): PeopleKept {
    const now = markOf(this.#file);
    if (now === this.#mark) return this.#kept;
    this.#kept = now === "" ? NOBODY : this.#parsed();
    this.#mark = now;
    return this.#kept;
  }

  #parsed(): PeopleKept {
    try {
      return peopleSchema.parse(JSON.parse(readFileSync(this.#file, "utf8")));
    } catch {
      throw new PeopleUnreadable(this.#file);
    }
  }

  /** Writes what `change` makes of what is kept. */
  write(change: (kept: PeopleKept) => PeopleKept): void {
    writeOverFile(this.#file, Buffer.from(`${JSON.stringify(change(this.read()), null, 1)}\n`));
    this.#mark = "unread";
  }
}

/** Another one for each writing: a file that is written whole is a new one each time. */
function markOf(file: string): string {
  const found = statSync(file, { throwIfNoEntry: false });
  return found ? `${found.ino} ${found.mtimeMs} ${found.size}` : "";
}
