import { sameWord } from "#lib/domain/same-word";
import { COLOUR_WORDS } from "#lib/domain/trade-words";
import { COLOURS, type Colour } from "#lib/domain/words";
import type { OwnColour } from "#lib/domain/writing";

/** The words of a list of colours as it is typed, without those that part them. */
export const wordsIn = (typed: string): string[] =>
  typed
    .split(/[,/;&+]+|\band\b/i)
    .map((word) => word.trim())
    .filter((word) => word !== "");

/** Our colour that a word means, or nothing where it means none, or could mean two. */
export function colourOf(word: string, ownColours: readonly OwnColour[]): Colour | undefined {
  const key = sameWord(word);
  const own = ownColours.find(({ name }) => sameWord(name) === key)?.colour;
  return own ?? COLOURS.find((colour) => sameWord(colour) === key) ?? MEANT.get(key);
}

const MEANT = new Map(
  Object.entries(COLOUR_WORDS).flatMap(([word, meant]) =>
    typeof meant === "string" ? [[sameWord(word), meant] as const] : [],
  ),
);

/** The colours that a typed list means, as far as its words are known. */
export const coloursIn = (typed: string, ownColours: readonly OwnColour[]): Colour[] =>
  wordsIn(typed).flatMap((word) => colourOf(word, ownColours) ?? []);
