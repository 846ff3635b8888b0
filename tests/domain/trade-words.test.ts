import { expect, test } from "vitest";
import { choice } from "#lib/domain/records/kinds";
import { sameWord } from "#lib/domain/same-word";
import {
  COLOUR_WORDS,
  CROP_WORDS,
  OTHER_TREATMENTS,
  PIECE_WORDS,
  ROLE_WORDS,
  STATUS_WORDS,
} from "#lib/domain/trade-words";
import { COLOURS, ROLES, STATUSES, TREATMENTS } from "#lib/domain/words";

const LISTS = [
  [COLOURS, COLOUR_WORDS],
  [ROLES, ROLE_WORDS],
  [STATUSES, STATUS_WORDS],
  [TREATMENTS, OTHER_TREATMENTS],
] as const;

test("no other word for one of ours is one of ours, or another word twice", () => {
  for (const [words, others] of LISTS) {
    const keys = [...words, ...Object.keys(others)].map((word) => sameWord(word));
    expect(new Set(keys).size).toBe(keys.length);
  }
});

test("every other word reads as what it stands for, and one that could be two is refused with both", () => {
  const { read } = choice(COLOURS, COLOUR_WORDS);
  for (const [word, meant] of Object.entries(COLOUR_WORDS)) {
    const reading = read(word.toUpperCase());
    if (typeof meant === "string") expect(reading).toEqual({ ok: true, value: meant });
    else
      for (const colour of meant)
        expect(reading).toMatchObject({ ok: false, message: expect.stringContaining(colour) });
  }
});

test("words of pieces and crops lead to a word that leads no further", () => {
  for (const words of [PIECE_WORDS, CROP_WORDS])
    for (const [from, to] of Object.entries(words)) {
      expect(sameWord(from, words)).toBe(sameWord(to, words));
      expect(words[to]).toBeUndefined();
    }
});

test("one and several, hyphens and possessives make no difference", () => {
  expect(sameWord("Bridesmaids’ bouquets")).toBe(sameWord("bridesmaid bouquet"));
  expect(sameWord("kept-in-ground")).toBe(sameWord("Kept in ground"));
  for (const [one, several] of [
    ["arch", "arches"],
    ["peony", "peonies"],
    ["cosmos", "Cosmos"],
    ["bud vase", "bud vases"],
  ])
    expect(sameWord(several)).toBe(sameWord(one));
});
