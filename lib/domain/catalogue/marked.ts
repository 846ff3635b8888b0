import { COMMON_PRACTICE, FROM_MEMORY, type Mark, type Origin, type Sourced } from "#lib/domain/sourced";

/**
 * Short ways to write a number of the catalogue with its mark. `source` is an id of `SOURCES`. Where a source gives a range, the
 * cautious end is written. What is taken inside a range, reckoned from it or carried over from another place is our reading, and a curve's note says of what.
 */
const by =
  (mark: Mark) =>
  (source: string): Origin => ({ mark, source });

/** An origin that names its source. */
export const publishedIn = by("published");
export const publishedSecondHandIn = by("published-secondary");
export const ourReadingOf = by("our reading");

/** A number with its origin. */
export const published = (count: number, source: string): Sourced => ({ count, ...publishedIn(source) });
export const secondHand = (count: number, source: string): Sourced => ({ count, ...publishedSecondHandIn(source) });
export const ourReading = (count: number, source: string): Sourced => ({ count, ...ourReadingOf(source) });
export const practice = (count: number): Sourced => ({ count, ...COMMON_PRACTICE });
export const memory = (count: number): Sourced => ({ count, ...FROM_MEMORY });

/**
 * Hold of a crop with no figure of its own: at 35 to 39 F most species keep from a few days to a week before vase life falls
 * (GPN-SUBZERO, trade). Three is our reading of "a few".
 */
export const GENERAL_HOLD_DAYS = ourReading(3, "GPN-SUBZERO");
