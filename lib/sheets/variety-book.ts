import type { VarietyNamed } from "#lib/domain/farm-records";
import { inQuotes } from "#lib/domain/in-quotes";
import { Guesses, nameKey } from "#lib/domain/nearest-name";
import type { Colour } from "#lib/domain/words";
import { lettersOfNames } from "./row-key";
import { type Place, placeInWords } from "./sheet-problem";

/** A variety that was found, in its own spelling, or what is wrong, in which column, and how to mend it. */
export type VarietyReading =
  | { ok: true; variety: VarietyNamed }
  | { ok: false; column: "variety" | "colour"; message: string };

/** `before` is the colour that a row of the varieties sheet changes: rows that still say it mean the same variety. */
type Entry = { readonly variety: VarietyNamed; readonly place: Place | null; readonly before?: Colour };

const keyOf = (crop: string, variety: string) => `${nameKey(crop)}\n${nameKey(variety)}`;

/** What names a variety, without what it says of itself. */
const namesOf = ({ crop, variety, colour }: VarietyNamed): VarietyNamed => ({ crop, variety, colour });

/** The varieties on the farm and those that the sheets bring: each crop and name has one colour. */
export class VarietyBook {
  readonly #entries = new Map<string, Entry>();
  /** The names of each crop's varieties. */
  readonly #namesOf = new Map<string, string[]>();
  readonly #guesses = new Guesses();
  readonly #wrong = new Map<string, Place>();
  readonly #nowCalled = new Map<string, string>();

  constructor(known: readonly VarietyNamed[]) {
    for (const variety of known) this.#put(variety, null);
  }

  /** The variety that a row names. With a colour it may be new; without one it must be known. */
  meet(crop: string, name: string, colour: Colour | null): VarietyReading {
    const entry = this.#find(crop, name);
    if (entry && (colour === null || colour === entry.variety.colour || colour === entry.before))
      return { ok: true, variety: entry.variety };
    if (entry) {
      const where = entry.place ? `on ${placeInWords(entry.place)}` : "on the farm";
      const message = `"${name}" of ${crop} is ${entry.variety.colour} ${where}, not ${colour}: a variety has one colour, mend it or give this variety another name`;
      return { ok: false, column: "colour", message };
    }
    if (colour !== null) return { ok: true, variety: { crop, variety: name, colour } };
    return { ok: false, column: "variety", message: this.#unknown(crop, name) };
  }

  /** Makes a variety of the farm what its row says, found by its old name and its new one. False where another row or variety is in the way. */
  change(variety: VarietyNamed, kept: VarietyNamed, place: Place): boolean {
    const keptKey = keyOf(variety.crop, kept.variety);
    const key = keyOf(variety.crop, variety.variety);
    const old = this.#entries.get(keptKey);
    if (old?.place !== null || (key !== keptKey && this.#entries.has(key))) return false;
    const entry = { variety: namesOf(variety), place, before: kept.colour };
    this.#entries.set(keptKey, entry);
    this.#entries.set(key, entry);
    if (key !== keptKey) this.#namesOf.get(nameKey(variety.crop))?.push(variety.variety);
    return true;
  }

  /** Whether a variety of the crop has the name, on the farm or by a row. */
  has = (crop: string, name: string): boolean => this.#entries.has(keyOf(crop, name));

  /** The name of a variety that is known, or the text itself. */
  named(crop: string, name: string): string {
    return this.#find(crop, name)?.variety.variety ?? name;
  }

  /** The colour that a row means which says none, or the one from before the upload: the variety's own. */
  colourMeant(crop: string, name: string, colour: Colour | null): Colour | null {
    const entry = this.#find(crop, name);
    return entry && (colour === null || colour === entry.before) ? entry.variety.colour : colour;
  }

  /** A row that went out under a name with these letters is called `name` now: other sheets of its upload may say the old one. */
  goneOutAs(letters: string, crop: string, name: string): void {
    if (!this.#nowCalled.has(letters)) this.#nowCalled.set(letters, keyOf(crop, name));
  }

  #find(crop: string, name: string): Entry | undefined {
    return (
      this.#entries.get(keyOf(crop, name)) ?? this.#entries.get(this.#nowCalled.get(lettersOfNames(crop, name)) ?? "")
    );
  }

  /** Enters the variety of a clean row. */
  enter(variety: VarietyNamed, place: Place): void {
    if (!this.#entries.has(keyOf(variety.crop, variety.variety))) this.#put(variety, place);
  }

  #put(variety: VarietyNamed, place: Place | null): void {
    this.#entries.set(keyOf(variety.crop, variety.variety), { variety: namesOf(variety), place });
    const names = this.#namesOf.get(nameKey(variety.crop));
    if (names) names.push(variety.variety);
    else this.#namesOf.set(nameKey(variety.crop), [variety.variety]);
  }

  /** Enters the variety of a row that is wrong, so that what refers to it can say why it is not found. */
  enterWrong(crop: string, name: string, place: Place): void {
    const key = keyOf(crop, name);
    if (!this.#wrong.has(key)) this.#wrong.set(key, place);
  }

  #unknown(crop: string, name: string): string {
    const place = this.#wrong.get(keyOf(crop, name));
    if (place)
      return `variety "${name}" of ${crop} is on ${placeInWords(place)}, which has a problem: mend that row first`;
    const guess = this.#guesses.didYouMean(name, () => this.#namesOf.get(nameKey(crop)) ?? []);
    return `no variety ${inQuotes(name)} of ${crop}: add it with its colour to the varieties sheet, or mend the name${guess}`;
  }
}
