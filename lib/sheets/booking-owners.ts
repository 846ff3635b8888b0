import type { BookingRecord } from "#lib/domain/farm-records";
import { Guesses, nameKey } from "#lib/domain/nearest-name";
import { KEY_HEADING, type KeptRows } from "./known-farm";
import { lettersOfKey, lettersOfNames } from "./row-key";
import { placeInWords } from "./sheet-problem";
import type { Say, SheetRow } from "./sheet-rows";

type Named = { readonly client: string; readonly eventOn: string };

/** A booking that lines may belong to: of the farm, of the upload, or of both. `id` tells bookings apart; `farmId` is null when it is new; `named` is what it is called in the one or the other. */
type Owner = {
  readonly named: Named;
  readonly id: string;
  readonly farmId: number | null;
  readonly row: SheetRow<BookingRecord> | null;
};

/**
 * The bookings that lines of an upload can name: those of the farm by client and day, those of the upload by the client and day of their
 * row, and where that row gives a booking of the farm another name or day, by both.
 */
export class BookingOwners {
  readonly #byIdentity = new Map<string, Owner>();
  readonly #daysOf = new Map<string, string[]>();
  readonly #byLetters = new Map<string, Owner>();
  readonly #guesses = new Guesses();

  constructor(rows: readonly SheetRow<BookingRecord>[], kept: KeptRows["bookings"]) {
    for (const { id, row } of kept) this.#enter(row, { named: row, id: `farm ${id}`, farmId: id, row: null });
    const byId = new Map(kept.map((one) => [one.id, one]));
    for (const row of rows) {
      const named = row.record ?? { client: row.textIn("client"), eventOn: row.textIn("event_on") };
      const before = row.kept && byId.get(row.kept.id);
      const owner: Owner = before
        ? { named, id: `farm ${before.id}`, farmId: before.id, row }
        : { named, id: `new ${keyOf(named)}`, farmId: null, row };
      const letters = lettersOfKey(row.textIn(KEY_HEADING));
      if (letters !== null && !this.#byLetters.has(letters)) this.#byLetters.set(letters, owner);
      const earlier = this.#byIdentity.get(keyOf(named));
      if (!earlier?.row?.record) this.#enter(named, owner);
      if (before && keyOf(before.row) !== keyOf(named)) this.#byIdentity.set(keyOf(before.row), owner);
    }
  }

  /** What tells the booking of a line from others; the line's own client and day where there is none. */
  idOf = (line: Named): string => this.find(line)?.id ?? keyOf(line);

  /** By the client and day that it has, or had when its row went out. */
  find = (line: Named): Owner | undefined =>
    this.#byIdentity.get(keyOf(line)) ?? this.#byLetters.get(lettersOfNames(line.client, line.eventOn));

  /** The line under the client and day that its booking has after the upload. */
  renamed<Line extends Named>(line: Line): Line {
    const owner = this.find(line);
    const named = owner && (owner.row === null ? owner.named : owner.row.record);
    return named ? { ...line, client: named.client, eventOn: named.eventOn } : line;
  }

  /** Says when the booking of a line is nowhere, or wrong by itself. */
  check({ client, eventOn }: Named, say: Say): void {
    const owner = this.find({ client, eventOn });
    if (owner && (owner.row === null || owner.row.record)) return;
    say(
      "client",
      owner?.row
        ? `the booking of "${client}" on ${eventOn} is on ${placeInWords(owner.row.place)}, which has a problem: mend that row first`
        : `no booking of "${client}" on ${eventOn}: add it to the bookings sheet, or mend the client or the day${this.#guess(client, eventOn)}`,
    );
  }

  #enter(named: Named, owner: Owner): void {
    this.#byIdentity.set(keyOf(named), owner);
    const client = named.client.trim();
    const days = this.#daysOf.get(client);
    if (days) days.push(named.eventOn.trim());
    else this.#daysOf.set(client, [named.eventOn.trim()]);
  }

  #guess(client: string, eventOn: string): string {
    const near = this.#guesses.nearest(client, () => [...this.#daysOf.keys()]);
    const days = near === undefined ? [] : (this.#daysOf.get(near) ?? []);
    return near === undefined
      ? ""
      : `; did you mean "${near}" on ${this.#guesses.nearest(eventOn, () => days) ?? days[0]}?`;
  }
}

const keyOf = ({ client, eventOn }: Named): string => `${nameKey(client)}\n${eventOn.trim()}`;
