/** A name as it is compared: letter case, accents typed in two ways, and the number of spaces make no difference. */
export const nameKey = (name: string): string => name.normalize("NFC").trim().replace(/\s+/g, " ").toLowerCase();

/**
 * The name that `text` was most likely meant to be, or undefined when none is near: at most one slip (a letter lost, added, changed,
 * or two swapped) for each three letters, and one at least. The first of several equally near.
 */
export function nearestName(text: string, names: Iterable<string>): string | undefined {
  const wanted = nameKey(text);
  const allowed = Math.max(1, Math.floor(wanted.length / 3));
  let nearest: string | undefined;
  let fewest = allowed + 1;
  for (const name of names) {
    const key = nameKey(name);
    if (Math.abs(key.length - wanted.length) >= fewest) continue;
    const slips = slipCount(wanted, key, fewest);
    if (slips < fewest) {
      fewest = slips;
      nearest = name;
    }
  }
  return nearest;
}

/** "; did you mean "D8"?", or nothing when no name is near. */
export function didYouMean(text: string, names: Iterable<string>): string {
  const nearest = nearestName(text, names);
  return nearest === undefined ? "" : `; did you mean "${nearest}"?`;
}

/**
 * Slips between two words (optimal string alignment distance), or `fewest` when there are that many or more.
 * Source: https://en.wikipedia.org/wiki/Damerau%E2%80%93Levenshtein_distance#Optimal_string_alignment_distance
 */
function slipCount(a: string, b: string, fewest: number): number {
  let twoBack: number[] = [];
  let last = Array.from({ length: b.length + 1 }, (_, index) => index);
  for (let i = 1; i <= a.length; i++) {
    const row = [i];
    let least = i;
    for (let j = 1; j <= b.length; j++) {
      const changed = (last[j - 1] ?? 0) + (a[i - 1] === b[j - 1] ? 0 : 1);
      let slips = Math.min(changed, (last[j] ?? 0) + 1, (row[j - 1] ?? 0) + 1);
      if (i > 1 && j > 1 && a[i - 1] === b[j - 2] && a[i - 2] === b[j - 1])
        slips = Math.min(slips, (twoBack[j - 2] ?? 0) + 1);
      row.push(slips);
      if (slips < least) least = slips;
    }
    // Two rows back can still be reached by a swap, so one slip more than the row's least is what is sure.
    if (least > fewest) return fewest;
    twoBack = last;
    last = row;
  }
  return Math.min(last[b.length] ?? 0, fewest);
}

/** Pairs of letters that the guesses of one book may compare: beyond that a whole file of unknown names would keep the grower waiting. */
export const MOST_LETTER_PAIRS = 20_000_000;

/** No name is so long that a slip in it is worth a guess. */
const MOST_LETTERS_GUESSED = 200;

/** Guesses at names, until so many letters were compared; later ones are left out. */
export class Guesses {
  #letterPairCount = 0;

  /** {@link nearestName} among `names`, or undefined when the guesses are used up. */
  nearest(text: string, names: () => readonly string[]): string | undefined {
    if (this.#letterPairCount >= MOST_LETTER_PAIRS || text.length > MOST_LETTERS_GUESSED) return undefined;
    const near = names().filter((name) => name.length <= MOST_LETTERS_GUESSED);
    // One more each, since a name is put into its key before any letter is compared.
    this.#letterPairCount += near.reduce((sum, name) => sum + (text.length + 1) * (name.length + 1), 1);
    return nearestName(text, near);
  }

  /** {@link didYouMean} among `names`, or nothing when the guesses are used up. */
  didYouMean(text: string, names: () => readonly string[]): string {
    const nearest = this.nearest(text, names);
    return nearest === undefined ? "" : `; did you mean "${nearest}"?`;
  }
}
