import { describe, expect, test } from "vitest";
import { changedRecipes } from "#lib/domain/built-in-recipes";
import { DEFAULT_RECIPES } from "#lib/domain/catalogue/recipes";
import type { Crop } from "#lib/domain/records/crop";
import type { StemLine } from "#lib/domain/records/stem-line";
import type { StemAsk } from "#lib/domain/words";
import { needInWords, reasonInWords } from "#lib/plan/words/gap-words";
import { linesInWords } from "#lib/plan/words/recipe-words";
import { provenPlan } from "../../proven-plan";
import { booking, crop, focal, recipe, snapshot } from "../../small-farm";

const WORN: StemAsk[] = ["small head", "medium head", "out of water"];

/** The farm of 70 stems of one crop that is like this, and a booking that asks these lines of it. */
const asking = (traits: Partial<Crop>, lines: readonly Partial<StemLine>[], given = {}) =>
  provenPlan(
    snapshot({
      crops: [crop({ id: 1, ...traits })],
      bookings: [booking({ id: 1, stemLines: lines.flatMap((line) => focal(10, line)), ...given })],
    }),
    2027,
  );

const covered = (traits: Partial<Crop>, asks: StemAsk[]): number => {
  const { match } = asking(traits, [{ asks }]);
  return match.needs[0].stems - match.shortStems[0];
};

describe("what a line asks of the stem", () => {
  test("[M2] what is worn takes a medium head that holds out of water, and neither a large one nor one that wilts", () => {
    expect(covered({ headSize: "medium", outOfWater: "holds" }, WORN)).toBe(10);
    expect(covered({ headSize: "large", outOfWater: "holds" }, WORN)).toBe(0);
    expect(covered({ headSize: "medium", outOfWater: "wilts" }, WORN)).toBe(0);
  });

  test("[M2] a long stem can be cut short, so nothing asks for a short one, and a short one is not long", () => {
    expect(covered({ stemLength: "long" }, ["long stem"])).toBe(10);
    expect(covered({ stemLength: "short" }, ["long stem"])).toBe(0);
    expect(covered({ stemLength: "short" }, [])).toBe(10);
  });

  test("[M2] what nobody has told of a crop is taken to do", () => {
    expect(covered({}, [...WORN, "long stem"])).toBe(10);
  });

  test("[N2] lines that ask otherwise are two needs, and the order in which they ask makes no difference", () => {
    const turned = [...WORN].reverse();
    const { match } = asking({}, [{ asks: WORN }, { asks: turned }, { asks: [] }]);
    expect(match.needs.map(({ asks, stems }) => [asks, stems])).toEqual([
      [[], 10],
      [WORN, 20],
    ]);
  });

  test("[G1] what blooms in the colours, but not with the stem asked for, is a reason of its own, in words", () => {
    const { gaps } = asking({ stemLength: "short" }, [{ asks: ["long stem"] }]);
    expect(gaps[0].reasons).toEqual([{ reason: "stem", stems: 10 }]);
    expect(gaps[0].couldCover.otherKindStems).toBeGreaterThanOrEqual(10);
    expect(reasonInWords("stem", 10, gaps[0].need)).toBe(
      "10 stems: focal is in bloom in these colours, but not with a long stem",
    );
    expect(needInWords({ ...gaps[0].need, asks: WORN }, String)).toBe(
      "focal, any colour, with a small or medium head and a hold out of water",
    );
  });

  test("[B1] a gap is bought in as a flower that has what is asked, and where none has, nothing is to be had", () => {
    const farm = (outOfWater: Crop["outOfWater"]) =>
      snapshot({
        plantings: [],
        crops: [crop({ id: 1, outOfWater: "wilts", name: "Cheap" }), crop({ id: 2, outOfWater, name: "Lasting" })],
        bookings: [booking({ id: 1, stemLines: focal(10, { asks: ["out of water"] }) })],
      });
    expect(provenPlan(farm("holds"), 2027).buying.map((line) => line.crop.name)).toEqual(["Lasting"]);
    expect(provenPlan(farm("wilts"), 2027).buying).toEqual([]);
  });

  test("[M9] a promise is for the need that asks alike, and one made before anything was asked still holds", () => {
    const promised = (asks: StemAsk[]) => {
      const promise = { ...focal(10)[0], asks, stemCount: 10 };
      const { match } = asking({}, [{ asks: [] }, { asks: WORN }], { status: "confirmed", promises: [promise] });
      return match.needs.map(({ promisedStems }) => promisedStems);
    };
    expect(promised(WORN)).toEqual([0, 10]);
    expect(promised([])).toEqual([10, 0]);
    const { match } = asking({}, [{ asks: WORN }], {
      ...{ status: "confirmed", promises: [{ ...focal(10)[0], stemCount: 10 }] },
    });
    expect(match.needs[0].promisedStems).toBe(10);
  });

  test("the built-in pieces that are worn ask for it, the others for nothing, and an unedited recipe of an old farm is offered the change", () => {
    const asked = DEFAULT_RECIPES.filter(({ lines }) => lines.some(({ asks }) => asks.length > 0));
    expect(asked.map(({ name }) => name)).toEqual(["Boutonniere", "Corsage", "Flower crown"]);
    for (const { lines } of asked) for (const { asks } of lines) expect(asks).toContain("out of water");
    const [built] = asked;
    const old = recipe({ id: 1, ...built, lines: built.lines.map((line) => ({ ...line, asks: [] })) });
    expect(changedRecipes([old], DEFAULT_RECIPES)).toEqual([{ was: old, is: built }]);
    expect(changedRecipes([{ ...old, origin: "own" }], DEFAULT_RECIPES)).toEqual([]);
    expect(linesInWords(built.lines)).toContain("1 secondary (small head, medium head, out of water)");
  });
});
