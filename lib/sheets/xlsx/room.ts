/** Thrown where a workbook has more in it than any farm. */
export class TooMuch extends Error {}

/**
 * What a workbook may still take, in letters. A few bytes of it can stand for many: cells name the same long text by its number, and sheets the same
 * part. Each letter counts as often as it is read.
 */
export class Room {
  #usedLetters = 0;
  readonly #mostLetters: number;

  constructor(mostLetters: number) {
    this.#mostLetters = mostLetters;
  }

  get usedLetters(): number {
    return this.#usedLetters;
  }

  /** @throws TooMuch when there is no room for so many */
  take(letters: number): void {
    this.#usedLetters += letters;
    if (this.#usedLetters > this.#mostLetters) throw new TooMuch();
  }
}
