import { describe, expect, test } from "vitest";
import { demoSnapshot } from "#demo/demo-snapshot";
import { stemsShort } from "#lib/plan/road/gaps";
import { winterBeds, withKeptBeds } from "#lib/plan/winter/beds";
import { inWords } from "#lib/plan/words/numbers";
import { rankedGaps, restsOnInWords, staysShortInWords } from "#lib/plan/words/season-lead";
import { provenPlan } from "../../proven-plan";

const demo = demoSnapshot();
const stands = provenPlan(demo, 2027);
const ranked = rankedGaps(stands.gaps, "focal");

describe("what Season says first", () => {
  test("a count in a sentence is a word up to twelve", () => {
    expect([inWords(1), inWords(6), inWords(12), inWords(13), inWords(1200)]).toEqual([
      "one",
      "six",
      "twelve",
      "13",
      "1,200",
    ]);
  });

  test("gaps are ranked by size, none lost: on the demo farm 15, from 120 stems to one, 836 in all", () => {
    const sizes = ranked.map(({ shortStems }) => shortStems);
    expect([sizes[0], sizes.at(-1), sizes.length, stemsShort(ranked)]).toEqual([120, 1, 15, 836]);
    expect(sizes).toEqual(sizes.toSorted((a, b) => b - a));
  });

  test("what stays short names the four largest and sums the rest; nothing short says nothing", () => {
    expect(staysShortInWords([])).toBe("");
    expect(staysShortInWords(ranked.slice(0, 1))).toBe(
      "120 stay short: 120 coral, peach, pink or apricot for Sedgeley wedding.",
    );
    expect(staysShortInWords(ranked)).toMatch(
      /^836 stay short: 120 .+; 101 .+; 90 .+; 76 .+; 449 in 11 smaller gaps\.$/,
    );
  });

  test("a choice rests on the survival of its clumps and its first cut", () => {
    const kept = winterBeds(demo, 2027).filter(({ bed }) => bed.name === "Long Field 2");
    const tried = provenPlan(
      withKeptBeds(
        demo,
        2027,
        kept.map(({ bed }) => bed.id),
      ),
      2027,
    );
    expect(restsOnInWords(kept, tried)).toMatch(/^75 % of the clumps survive the winter, first cut \d June$/);
    expect(restsOnInWords(kept, stands)).toMatch(/first cut \d+ August$/);
  });
});
