import { describe, expect, test } from "vitest";
import { changeSchema, whatIfSchema } from "#lib/domain/what-if";
import { changeInWords } from "#lib/plan/words/what-if-words";
import { planting } from "../../small-farm";
import { dahliaFarm, FITTING } from "../what-if/farm";

describe("changes from outside", () => {
  test.each(FITTING)("$kind parses to itself", (change) => {
    expect(changeSchema.parse(JSON.parse(JSON.stringify(change)))).toEqual(change);
  });

  test("a planting that was kept before its age and its sowing were asked for reads as it was reckoned then", () => {
    const change = { kind: "planting-added", planting: planting({ id: 1 }) };
    const { id: _, sown: _sown, ageSeasons: _age, daysLate: _late, yieldFactor: _factor, ...former } = change.planting;
    expect(changeSchema.parse({ ...change, planting: former })).toEqual({
      kind: "planting-added",
      planting: { ...former, sown: false, ageSeasons: null, daysLate: null, yieldFactor: null },
    });
  });

  test("a what-if with nonsense in it is refused, with every place", () => {
    const parsed = whatIfSchema.safeParse({
      id: 1,
      name: " ",
      seasonYear: 2027,
      changes: [
        { kind: "yield-scaled", factor: 9, cropId: null },
        { kind: "frost-moved", firstFrost: "02-30" },
        { kind: "planting-moved", plantingId: 1, bedId: null, plantedOn: null },
        { kind: "rain" },
      ],
    });
    const places = parsed.error?.issues.map(({ path }) => path.slice(0, 2).join("."));
    expect(places).toEqual(["name", "changes.0", "changes.1", "changes.2", "changes.3"]);
  });
});

describe("changes in words", () => {
  test("as a grower says them", () => {
    expect(FITTING.map((change) => changeInWords(change, dahliaFarm()))).toEqual([
      "Keep bed East in the ground",
      "Dig bed West and replant it in spring",
      "First frost on 20 Sep",
      "Every crop 10 days late",
      "Dahlia at 50 % of the usual yield",
      "Take a booking: C. Invented, 12 Jun",
      "Move the booking of A. Invented, 21 Aug to 28 Aug",
      "Without the booking of B. Invented, 18 Sep",
      "Count the booking of A. Invented, 21 Aug as held",
      "Plant 70 plants of Dahlia Maple Row in bed West on 20 May, in the field",
      "Move Dahlia Maple Row in bed West to bed East, planted on 30 May",
      "Without Yarrow Hill in bed East",
      "15.7 cubic yards of leaves at hand",
    ]);
  });

  test("what is gone is called so", () => {
    expect(changeInWords({ kind: "bed-kept", bedId: 99 }, dahliaFarm())).toBe(
      "Keep a bed no longer on the farm in the ground",
    );
    expect(changeInWords({ kind: "season-shifted", days: -1, cropId: 99 }, dahliaFarm())).toBe(
      "A crop no longer on the farm 1 day early",
    );
  });
});
