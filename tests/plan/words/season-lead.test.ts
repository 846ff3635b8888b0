import { describe, expect, test } from "vitest";
import { demoSnapshot } from "#demo/demo-snapshot";
import { stemsShort } from "#lib/plan/road/gaps";
import { winterBeds, withKeptBeds } from "#lib/plan/winter/beds";
import { coloursInWords } from "#lib/plan/words/colour-words";
import { inWords } from "#lib/plan/words/numbers";
import { rankedGaps, restsOnInWords, staysShortInWords, winteringInWords } from "#lib/plan/words/season-lead";
import { provenPlan } from "../../proven-plan";
import { day } from "../../small-farm";

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

  const sizes = ranked.map(({ shortStems }) => shortStems);

  test("gaps are ranked by size, none lost: on the demo farm they are the focal needs that are short, the largest first", () => {
    const { needs, shortStems } = stands.match;
    const short = needs.flatMap(({ role }, index) => (role === "focal" ? shortStems[index] : 0)).filter(Boolean);
    expect(sizes).toEqual(short.toSorted((a, b) => b - a));
    expect(sizes.length).toBeGreaterThan(4);
  });

  test("what stays short names the four largest and sums the rest; nothing short says nothing", () => {
    expect(staysShortInWords([])).toBe("");
    expect(staysShortInWords(ranked.slice(0, 1))).toBe(
      `${sizes[0]} stay short: ${sizes[0]} ${coloursInWords(ranked[0].need)} for ${ranked[0].need.booking.client}.`,
    );
    const largest = sizes.slice(0, 4).map((stems) => `${stems} .+`);
    const rest = sizes.slice(4).reduce((sum, stems) => sum + stems, 0);
    expect(staysShortInWords(ranked)).toMatch(
      new RegExp(
        `^${stemsShort(ranked)} stay short: ${largest.join("; ")}; ${rest} in ${sizes.length - 4} smaller gaps\\.$`,
      ),
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

  test("beds told one by one rest on all their clumps together and on the earliest first cut", () => {
    const small = { clumpCount: 20, survivalShare: 0.5, keptFirstCut: day("2027-06-12") };
    const large = { clumpCount: 60, survivalShare: 0.9, keptFirstCut: day("2027-06-05") };
    expect(winteringInWords([small, large])).toBe("80 % of the clumps survive the winter, first cut 5 June");
    expect(winteringInWords([{ ...small, keptFirstCut: null }])).toBe("50 % of the clumps survive the winter");
    expect(winteringInWords([])).toBe("");
  });
});
