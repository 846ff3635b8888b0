/** Ties that are told apart in black on white; beyond them the letter tells. */
const TIE_COUNT = 6;

const LETTERS = "abcdefghijklmnopqrstuvwxyz";

/** "a" to "z", then "a2" and on. */
export const letter = (index: number): string =>
  LETTERS[index % LETTERS.length] + (index < LETTERS.length ? "" : Math.floor(index / LETTERS.length) + 1);

export const tieLetter = (index: number): string => letter(index).toUpperCase();

/** The pattern of a booking's tie, the same on list, paper and label. */
export const tieClass = (index: number): string => `tie tie-${index % TIE_COUNT}`;

/** The tie of a booking, by its place among the bookings of a list: its pattern and its letter. */
export const Tie = ({ index }: { index: number }) => (
  <span className="tie-mark">
    <i className={tieClass(index)} aria-hidden="true" />
    <b>{tieLetter(index)}</b>
  </span>
);
