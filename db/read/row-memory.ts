import { type WeatherYear, weatherOfYears } from "#lib/domain/records/weather-day";
import type { Snapshot } from "#lib/domain/snapshot";
import type { DailyWeather } from "#lib/domain/weather";

/** What a row said when it was read last, and what it was parsed to. */
type Remembered = { readonly said: string; readonly parsed: unknown };
type List = { readonly rows: ReadonlyMap<number, Remembered>; readonly parsed: readonly unknown[] };

/**
 * The rows of a farm as they were read last. A row that says the same again is not parsed again: it stays the same object, and a list of which every
 * row stayed is the same list, so that whoever planned with them sees at once what a write has touched. Only what was parsed is remembered. Tables that
 * the journal knows to be as they were are not read at all.
 */
export class RowMemory {
  /** The last change of the farm as it was read last without a problem, and on which connection; null when the whole of it is to be read. */
  #readAt: { readonly revision: number; readonly database: object } | null = null;
  readonly #lists = new Map<string, List>();
  #snapshot: Snapshot | null = null;
  #weather: { readonly years: readonly WeatherYear[]; readonly days: DailyWeather | null } = { years: [], days: null };

  /** The last change that is known of what this connection reads; null when nothing of it is sure. */
  knownUpTo = (database: object): number | null => (this.#readAt?.database === database ? this.#readAt.revision : null);

  /** Notes that the whole farm was read without a problem, up to this change. */
  noteRead(database: object, revision: number): void {
    this.#readAt = { revision, database };
  }

  /** Somebody else may have written, past the journal of this connection, or a row could not be read: every table is read again. */
  doubt(): void {
    this.#readAt = null;
  }

  /** A list as it was read last; undefined when it never was. */
  list = (name: string): readonly unknown[] | undefined => this.#lists.get(name)?.parsed;

  /** The row as it was parsed when it last said the same. */
  find(name: string, id: number, said: string): unknown {
    const known = this.#lists.get(name)?.rows.get(id);
    return known?.said === said ? known.parsed : undefined;
  }

  /** The snapshot of these lists: the very one before when every list of it stayed, so that a write of something else makes no new farm. */
  snapshot(read: Snapshot): Snapshot {
    const before = this.#snapshot;
    const isSame = before !== null && Object.entries(read).every(([name, list]) => Reflect.get(before, name) === list);
    this.#snapshot = isSame ? before : read;
    return this.#snapshot;
  }

  /** The recorded days of these years: the very ones before when the list stayed. */
  weather(years: readonly WeatherYear[]): DailyWeather | null {
    if (this.#weather.years !== years) this.#weather = { years, days: weatherOfYears(years) };
    return this.#weather.days;
  }

  /** Remembers a list in place of what it was. Returns the list to use: the one before when nothing of it changed. */
  keep(name: string, rows: ReadonlyMap<number, Remembered>): readonly unknown[] {
    const parsed = [...rows.values()].map((row) => row.parsed);
    const before = this.#lists.get(name)?.parsed;
    const isSame = before?.length === parsed.length && before.every((row, index) => row === parsed[index]);
    const list = isSame ? before : parsed;
    this.#lists.set(name, { rows, parsed: list });
    return list;
  }
}
