import { describe, expect, test } from "vitest";
import { winterFutures } from "#lib/plan/winter/futures";
import { choiceInWords, type FocalCovered, focalCovered } from "#lib/plan/words/keep-or-dig-words";
import { day } from "../../small-farm";
import { SEASON, winterFarm } from "../winter/farm";

const covered = (given: Partial<FocalCovered> = {}): FocalCovered => ({
  shortStems: 410,
  leftStems: 70,
  first: day("2027-06-01"),
  last: day("2027-07-05"),
  left: [{ monday: day("2027-06-14"), colours: "plum", stems: 70 }],
  ...given,
});

describe("the choice in words", () => {
  test("[K10] beds, stems covered, the span of days, and what remains in which colour and week", () => {
    expect(choiceInWords(["D1", "D4", "D7"], covered())).toBe(
      "Keep beds D1, D4 and D7: 340 of 410 short focal stems of 1 June to 5 July are covered; 70 remain, in plum, week of 14 June.",
    );
  });

  test("[K10] one bed, one stem, one day; several gaps left; none left; none short; none kept", () => {
    const two = [
      { monday: day("2027-06-14"), colours: "plum", stems: 40 },
      { monday: day("2027-06-21"), colours: "blush or cream", stems: 30 },
    ];
    expect(choiceInWords(["D1"], covered({ left: two }))).toBe(
      "Keep bed D1: 340 of 410 short focal stems of 1 June to 5 July are covered; 70 remain: 40 in plum, week of 14 June; 30 in blush or cream, week of 21 June.",
    );
    const one = covered({ shortStems: 1, leftStems: 0, left: [], last: day("2027-06-01") });
    expect(choiceInWords(["D1", "D2"], one)).toBe("Keep beds D1 and D2: 1 of 1 short focal stem of 1 June is covered.");
    expect(choiceInWords([], covered({ shortStems: 0, leftStems: 0, first: null, last: null, left: [] }))).toBe(
      "Keep no bed: with every bed dug no focal stems are short.",
    );
    expect(choiceInWords([], covered({ shortStems: 70 }))).toBe(
      "Keep no bed: the 70 short focal stems of 1 June to 5 July stay short; 70 remain, in plum, week of 14 June.",
    );
    expect(choiceInWords(["D1"], covered({ shortStems: 60 }))).toContain("10 more focal stems go short beside the 60");
  });

  test("[K10] up to twelve beds are named, of more it is said how many", () => {
    const beds = Array.from({ length: 13 }, (_, index) => `S${index + 1}`);
    expect(choiceInWords(beds.slice(1), covered())).toMatch(/^Keep beds S2, S3, .+ and S13: 340 of 410/);
    expect(choiceInWords(beds, covered())).toMatch(/^Keep 13 beds: 340 of 410/);
  });

  test("[K10] of one stem the verb is single: 1 more goes short, 1 stays, 1 is covered, 1 remains", () => {
    const one = (shortStems: number, leftStems: number) =>
      choiceInWords(["D1"], covered({ shortStems, leftStems, left: [] }));
    expect(one(1, 2)).toContain("1 more focal stem goes short beside the 1 short focal stem of");
    expect(one(1, 1)).toContain("the 1 short focal stem of 1 June to 5 July stays short; 1 remains");
    expect(one(1200, 1199)).toContain("1 of 1,200 short focal stems of 1 June to 5 July is covered; 1,199 remain");
  });

  test("[K10] the stems in the words are those of the two matches, on 30 farms", () => {
    for (let seed = 951; seed <= 980; seed++) {
      const { beds, match } = winterFutures(winterFarm(seed, 20, 14), SEASON);
      const dug = match(beds.map(() => false));
      const kept = match(beds.map((_, bed) => bed % 2 === 0));
      const said = focalCovered(dug, kept, 2027);
      const short = ({ needs, shortStems }: typeof dug) =>
        needs.reduce((sum, { role }, need) => (role === "focal" ? sum + shortStems[need] : sum), 0);
      expect(said.shortStems).toBe(short(dug));
      expect(said.leftStems).toBe(short(kept));
      expect(said.left.reduce((sum, { stems }) => sum + stems, 0)).toBe(short(kept));
      expect(said.left.every(({ stems }, index) => index === 0 || said.left[index - 1].stems >= stems)).toBe(true);
    }
  });
});
