import { expect, test } from "vitest";
import { problemsOf } from "#lib/domain/problem";
import { areaSquareMetres, bedSchema } from "#lib/domain/records/bed";
import { coolerStockSchema } from "#lib/domain/records/cooler-lot";
import { plantingSchema } from "#lib/domain/records/planting";
import { bed, day, planting } from "../small-farm";

const problemsWith = (schema: typeof bedSchema | typeof plantingSchema | typeof coolerStockSchema, given: object) => {
  const parsed = schema.safeParse(given);
  return parsed.success ? [] : problemsOf(parsed.error);
};

test("a bed 15 metres by 1.2 has 18 square metres", () => {
  expect(areaSquareMetres(bed({ id: 1, lengthMetres: 15, widthMetres: 1.2 }))).toBeCloseTo(18, 10);
});

test("a bed is what it was once parsed, its name without spaces round it", () => {
  const sound = bed({ id: 1, flags: ["wet soil"], noEntryFrom: day("2027-06-01"), noEntryUntil: day("2027-06-03") });
  expect(bedSchema.parse(sound)).toEqual(sound);
  expect(bedSchema.parse({ ...sound, name: "  North 1 " }).name).toBe("North 1");
});

test("a spray needs both its days, and entry opens after the spray", () => {
  const halfTold = problemsWith(bedSchema, { ...bed({ id: 1 }), noEntryFrom: "2027-06-01" });
  expect(halfTold).toEqual([
    { place: "noEntryUntil", message: "a spray needs both days: sprayed on, and no entry until" },
  ]);
  const sameDay = { ...bed({ id: 1 }), noEntryFrom: "2027-06-01", noEntryUntil: "2027-06-01" };
  expect(problemsWith(bedSchema, sameDay)).toEqual([
    { place: "noEntryUntil", message: "must come after the day of the spray" },
  ]);
});

test("a bed without a name, length or width has three problems, told at once", () => {
  const bare = { ...bed({ id: 1 }), name: " ", lengthMetres: 0, widthMetres: -1 };
  expect(problemsWith(bedSchema, bare).map(({ place }) => place)).toEqual(["name", "lengthMetres", "widthMetres"]);
});

test("shares of a planting run from 0 to 1 and its plants are whole", () => {
  expect(
    problemsWith(plantingSchema, planting({ id: 1, aliveShare: 0, gradeOutShare: 1, winterSurvivalShare: 0.5 })),
  ).toEqual([]);
  const wrong = {
    ...planting({ id: 1 }),
    aliveShare: 1.1,
    gradeOutShare: -0.1,
    winterSurvivalShare: 2,
    plantCount: 1.5,
  };
  expect(problemsWith(plantingSchema, wrong)).toEqual([
    { place: "plantCount", message: "write whole plants" },
    { place: "aliveShare", message: "a share from 0 to 1" },
    { place: "gradeOutShare", message: "a share from 0 to 1" },
    { place: "winterSurvivalShare", message: "a share from 0 to 1" },
  ]);
});

test("cooler stems are whole, not negative, and cut on a calendar day", () => {
  const wrong = { id: 1, varietyId: 1, cutOn: "2027-02-30", stemCount: -3 };
  expect(problemsWith(coolerStockSchema, wrong).map(({ place }) => place)).toEqual(["cutOn", "stemCount"]);
});
