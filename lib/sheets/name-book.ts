import { inQuotes } from "#lib/domain/in-quotes";
import { anyOf } from "#lib/domain/listed";
import { Guesses, nameKey } from "#lib/domain/nearest-name";
import { sameWord } from "#lib/domain/same-word";
import { CROP_WORDS, PIECE_NOUNS, PIECE_WORDS } from "#lib/domain/trade-words";
import { lettersOfNames } from "./row-key";
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
  readonly #others: OtherNames | undefined;
  readonly #byWords = new Map<string, readonly string[]>();
  readonly #nowCalled = new Map<string, string>();

  /**
   * @param word   what the names are names of: "bed"
   * @param home   where a new one is added: "the beds sheet"
   * @param known  the names that the farm has
   * @param others how the trade writes them otherwise; left out, names are found as they are written alone
   */
  constructor(word: string, home: string, known: readonly string[], others?: OtherNames) {
    this.#word = word;
    this.#home = home;
    this.#others = others;
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
      this.#byWords.clear();
      if (key) this.#entries.set(key, entry ? { ...entry, place } : { name, isOnFarm: false, place, isRight });
      return null;
    }
    return `${this.#word} "${name}" stands on ${placeInWords(entry.place)} already: keep one of the two rows, or name one of them otherwise`;
  }

  /** What a row calls the thing of the farm that it stands for: found by its old name and its new one, in the spelling of the row. */
  rename(kept: string, name: string, place: Place): void {
    this.#byWords.clear();
    for (const key of [nameKey(kept), nameKey(name)])
      this.#entries.set(key, { name, isOnFarm: true, place, isRight: true });
  }

  /** A row that went out under a name with these letters is called `name` now: other sheets of its upload may say the old one. */
  goneOutAs(letters: string, name: string): void {
    if (!this.#nowCalled.has(letters)) this.#nowCalled.set(letters, name);
  }

  /** The name meant by `text`, or the text itself where none is found. */
  named = (text: string): string => {
    const found = this.find(text);
    return found.ok ? found.name : text;
  };

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
    const now = this.#nowCalled.get(lettersOfNames(text));
    const renamed = now === undefined ? undefined : this.#entries.get(nameKey(now));
    if (renamed?.isRight) return { ok: true, name: renamed.name };
    const meant = this.#othersMeant(text);
    if (meant.length === 1) return { ok: true, name: meant[0] };
    if (meant.length > 1)
      return { ok: false, message: `${inQuotes(text)} may be ${anyOf(meant)}: write the one that is meant` };
    const message =
      this.#messages.get(key) ??
      `no ${this.#word} called ${inQuotes(text)}: add it to ${this.#home} or mend the name${this.#guesses.didYouMean(text, () => this.#names())}`;
    this.#messages.set(key, message);
    return { ok: false, message };
  }

  /** Right names that the trade would write so: those of the very words, else those that have them all, when one says what the thing is. */
  #othersMeant(text: string): readonly string[] {
    if (!this.#others || text.length > MOST_LETTERS_OF_A_NAME) return [];
    const { words, nouns } = this.#others;
    const wanted = sameWord(text, words);
    const same = this.#namesByWords(words).get(wanted);
    const parts = wanted.split(" ");
    if (same || this.#byWords.size > MOST_NAMES_LOOKED_THROUGH || !parts.some((part) => nouns.includes(part)))
      return same ?? [];
    return [...this.#byWords].flatMap(([of, names]) => {
      const all = of.split(" ");
      return parts.every((part) => all.includes(part)) ? names : [];
    });
  }

  /** The right names by their words as they are compared; made anew after a row has brought one. */
  #namesByWords(words: OtherNames["words"]): ReadonlyMap<string, readonly string[]> {
    if (this.#byWords.size > 0) return this.#byWords;
    for (const { name, isRight } of this.#entries.values()) {
      if (!isRight || name.length > MOST_LETTERS_OF_A_NAME) continue;
      const key = sameWord(name, words);
      this.#byWords.set(key, [...(this.#byWords.get(key) ?? []), name]);
    }
    return this.#byWords;
  }

  #names(): string[] {
    return [...this.#entries.values()].map(({ name }) => name);
  }
}

/** Longer ones are nobody's way to write a name. */
const MOST_LETTERS_OF_A_NAME = 200;

/** Among more names than any farm has recipes, only the very words are looked for. */
const MOST_NAMES_LOOKED_THROUGH = 200;

/** Other words in the names of one kind of thing, and those of its words that may stand for the whole name. */
type OtherNames = { readonly words: Readonly<Record<string, string>>; readonly nouns: readonly string[] };

/** The farm's recipes, found in the trade's words too: "bridesmaids" is its attendant bouquet if it has one such recipe. */
export const recipeBook = (known: readonly string[], home = "the recipes sheet"): NameBook =>
  new NameBook("recipe", home, known, { words: PIECE_WORDS, nouns: PIECE_NOUNS });

/** The farm's crops, found by one or several and by their short names too: "snaps". */
export const cropBook = (known: readonly string[], home = "the crops sheet"): NameBook =>
  new NameBook("crop", home, known, { words: CROP_WORDS, nouns: [] });
