import { sameWord } from "#lib/domain/same-word";
import { COLOUR_WORDS } from "#lib/domain/trade-words";
import { COLOURS, type Colour } from "#lib/domain/words";
import type { OwnColour } from "#lib/domain/writing";

/** The words of a list of colours as it is typed, each once, without those that part them. */
export const wordsIn = (typed: string): string[] => {
  const words = typed.split(/[,/;&+]+|\band\b/i).map((word) => word.trim());
  return [...new Set(words)].filter((word) => word !== "");
};

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

/** The colours that a typed list means, each once, as far as its words are known. */
export const coloursIn = (typed: string, ownColours: readonly OwnColour[]): Colour[] => [
  ...new Set(wordsIn(typed).flatMap((word) => colourOf(word, ownColours) ?? [])),
];

/** Whether a list ends in the first letters of a word for a colour: no slip yet, while it is being typed. */
export function isColourBegun(typed: string, ownColours: readonly OwnColour[]): boolean {
  const last = wordsIn(typed).at(-1)?.toLowerCase();
  if (last === undefined) return false;
  const known = [...COLOURS, ...Object.keys(COLOUR_WORDS), ...ownColours.map(({ name }) => name.toLowerCase())];
  return known.some((word) => word.startsWith(last) && word !== last);
}
