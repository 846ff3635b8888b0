import { inQuotes } from "#lib/domain/in-quotes";
import { Guesses, nameKey } from "#lib/domain/nearest-name";
import { type Place, placeInWords } from "./sheet-problem";

/** A name that was found, in its own spelling, or what is wrong and how to mend it. */
export type NameReading = { ok: true; name: string } | { ok: false; message: string };

type Entry = {
  readonly name: string;
  readonly isOnFarm: boolean;
  readonly place: Place | null;
  readonly isRight: boolean;
};

/**
 * The names of one kind of thing: those on the farm and those that the sheets bring. Letter case and spacing make no difference; what
 * is found comes in the spelling of the row that brought it, or of the farm.
 */
export class NameBook {
  readonly #word: string;
  readonly #home: string;
  readonly #entries = new Map<string, Entry>();
  readonly #guesses = new Guesses();
  readonly #messages = new Map<string, string>();

  /**
   * @param word   what the names are names of: "bed"
   * @param home   where a new one is added: "the beds sheet"
   * @param known  the names that the farm has
   */
  constructor(word: string, home: string, known: readonly string[]) {
    this.#word = word;
    this.#home = home;
    for (const name of known) this.#entries.set(nameKey(name), { name, isOnFarm: true, place: null, isRight: true });
  }

  /** Whether the farm has the name already. */
  isOnFarm = (name: string): boolean => this.#entries.get(nameKey(name))?.isOnFarm === true;

  /**
   * Enters the name of a row; a wrong row's name is entered too, so that what refers to it can say why. Returns what is wrong when
   * an earlier row brought the same name. A name on the farm stays the farm's.
   */
  enter(name: string, place: Place, isRight: boolean): string | null {
    const key = nameKey(name);
    const entry = this.#entries.get(key);
    if (!entry?.place) {
      if (key) this.#entries.set(key, entry ? { ...entry, place } : { name, isOnFarm: false, place, isRight });
      return null;
    }
    return `${this.#word} "${name}" stands on ${placeInWords(entry.place)} already: keep one of the two rows, or name one of them otherwise`;
  }

  /** The name meant by `text`. */
  find(text: string): NameReading {
    const key = nameKey(text);
    const entry = this.#entries.get(key);
    if (entry?.isRight) return { ok: true, name: entry.name };
    if (entry?.place)
      return {
        ok: false,
        message: `${this.#word} "${entry.name}" is on ${placeInWords(entry.place)}, which has a problem: mend that row first`,
      };
    const message =
      this.#messages.get(key) ??
      `no ${this.#word} called ${inQuotes(text)}: add it to ${this.#home} or mend the name${this.#guesses.didYouMean(text, () => this.#names())}`;
    this.#messages.set(key, message);
    return { ok: false, message };
  }

  #names(): string[] {
    return [...this.#entries.values()].map(({ name }) => name);
  }
}
