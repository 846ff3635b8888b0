import { describe, expect, test } from "vitest";
import { newFarm } from "#lib/domain/new-farm";
import { problemsOf } from "#lib/domain/problem";
import { farmSchema, frostDatesSchema, statusWeightsSchema } from "#lib/domain/records/farm-settings";
import { farm } from "../small-farm";

describe("a farm", () => {
  test("a new farm is a sound one, and so is the one the tests use", () => {
    expect(farmSchema.parse(newFarm("Hill Farm"))).toEqual(newFarm("Hill Farm"));
    expect(farmSchema.parse(farm())).toEqual(farm());
  });

  test("without a name or a picking day it has two problems, told at once", () => {
    const parsed = farmSchema.safeParse({ ...farm(), name: " ", pickingWeekdays: [] });
    expect(parsed.error && problemsOf(parsed.error).map(({ place }) => place)).toEqual(["name", "pickingWeekdays"]);
  });

  test("there is no eighth weekday and no half day of lead", () => {
    const parsed = farmSchema.safeParse({ ...farm(), pickingWeekdays: [1, 8], leadDays: 1.5 });
    expect(parsed.error && problemsOf(parsed.error).map(({ place }) => place)).toEqual([
      "pickingWeekdays[1]",
      "leadDays",
    ]);
  });
});

describe("frost dates", () => {
  const { frost } = farm();

  test("in autumn the early date comes first, in spring the late date is the 10 % one", () => {
    expect(frostDatesSchema.safeParse(frost).success).toBe(true);
  });

  test("the other way round is refused, for each season by itself", () => {
    const autumn = { ...frost, firstAutumnP10: frost.firstAutumnP90, firstAutumnP90: frost.firstAutumnP10 };
    const spring = { ...frost, lastSpringP10: frost.lastSpringP90, lastSpringP90: frost.lastSpringP10 };
    const placesOf = (given: object) =>
      frostDatesSchema.safeParse(given).error?.issues.map(({ path }) => path.join("."));
    expect(placesOf(autumn)).toEqual(["firstAutumnP50"]);
    expect(placesOf(spring)).toEqual(["lastSpringP50"]);
    expect(
      placesOf({ ...autumn, ...spring, firstAutumnP10: autumn.firstAutumnP10, firstAutumnP90: autumn.firstAutumnP90 }),
    ).toEqual(["firstAutumnP50", "lastSpringP50"]);
  });
});

describe("claims", () => {
  test("a confirmed booking weighs more than a held one, and that more than an enquiry", () => {
    expect(farm().statusWeights).toEqual({ confirmed: 1, held: 0.6, enquiry: 0.3 });
  });

  test.each([
    { confirmed: 0.6, held: 0.6, enquiry: 0.3 },
    { confirmed: 1, held: 0.3, enquiry: 0.6 },
    { confirmed: 1, held: 0.6, enquiry: 0 },
    { confirmed: 1.2, held: 0.6, enquiry: 0.3 },
  ])("weights out of order or off the scale are refused: %j", (weights) => {
    expect(statusWeightsSchema.safeParse(weights).success).toBe(false);
  });
});
