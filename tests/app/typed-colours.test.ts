import { expect, test } from "vitest";
import { COLOUR_WORDS } from "#lib/domain/trade-words";
import { COLOURS } from "#lib/domain/words";
import type { OwnColour } from "#lib/domain/writing";
import { readEnquiry } from "../../app/enquiry/asked-enquiry";
import { coloursIn, isColourBegun, wordsIn } from "../../app/ui/typed-colours";
import { farm } from "../small-farm";

const OWN: readonly OwnColour[] = [{ name: "Antique Rose", colour: "pink" }];

test("a list is parted by commas, strokes and “and”; a word that stands twice is one", () => {
  expect(wordsIn("blush, ivory and dusty rose / blush;; ")).toEqual(["blush", "ivory", "dusty rose"]);
});

test("our words, words of the trade and the farm's own mean a colour, each colour once; one that could be two means none", () => {
  expect(coloursIn("blush, ivory, cream, antique roses", OWN)).toEqual(["blush", "cream", "pink"]);
  expect(coloursIn("mauve, blsh, antique rose", [])).toEqual([]);
});

test("the swatches are those of the colours that are asked for, whatever word means them", () => {
  const manner = farm({ ownColours: [...OWN] });
  const words = Object.entries(COLOUR_WORDS).flatMap(([word, meant]) => (typeof meant === "string" ? [word] : []));
  for (const colours of [...COLOURS, ...words, "antique rose", "ivory & plum"]) {
    const read = readEnquiry({ stemCount: "9", colours, role: "focal", eventOn: "2027-06-19" }, manner);
    expect(read.ok && read.parsed.colours, colours).toEqual(coloursIn(colours, OWN));
  }
});

test("the first letters of a colour are no slip yet, whosever word it is; a whole word and another are", () => {
  for (const typed of ["bl", "cream, bl", "dusty r", "antique ro"]) expect(isColourBegun(typed, OWN)).toBe(true);
  for (const typed of ["", "blsh", "plum", "antique rose"]) expect(isColourBegun(typed, OWN)).toBe(false);
});
