import { COLOURS, type Colour } from "./words";

/**
 * The colours that a designer would try beside one that is short, the nearest first. Our own judgement, from memory: no published order was found for
 * the words of the trade. A near colour is only ever offered by its name, never given in another's place.
 */
const NEAR: Record<Colour, readonly Colour[]> = {
  white: ["cream", "blush", "silver"],
  cream: ["white", "blush", "peach"],
  blush: ["pink", "peach", "cream"],
  pink: ["blush", "coral", "lavender"],
  coral: ["peach", "pink", "apricot"],
  peach: ["apricot", "blush", "coral"],
  apricot: ["peach", "orange", "coral"],
  orange: ["apricot", "bronze", "coral"],
  yellow: ["cream", "apricot", "orange"],
  red: ["burgundy", "coral", "plum"],
  burgundy: ["plum", "red", "bronze"],
  plum: ["burgundy", "purple", "lavender"],
  lavender: ["purple", "pink", "blue"],
  purple: ["plum", "lavender", "blue"],
  blue: ["lavender", "purple", "silver"],
  bronze: ["orange", "burgundy", "apricot"],
  green: ["silver", "white", "cream"],
  silver: ["green", "white", "lavender"],
};

/** Colours near to any of these, each once and none of these: the nearest of each first, in the order given, then the next. */
export function nearColours(colours: readonly Colour[]): Colour[] {
  const found = new Set<Colour>();
  const ranks = Math.max(...COLOURS.map((colour) => NEAR[colour].length));
  for (let rank = 0; rank < ranks; rank++)
    for (const colour of colours) {
      const near = NEAR[colour][rank];
      if (near && !colours.includes(near)) found.add(near);
    }
  return [...found];
}
