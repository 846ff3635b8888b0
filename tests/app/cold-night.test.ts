import { expect, test, vi } from "vitest";
import { farmDatabase } from "../../app/load";
import { saveColdNight } from "../../app/today/frost-actions";
import { FRESH } from "../../app/ui/form-state";
import { kept } from "../db/kept-farm";
import { farmForActions } from "./farm-for-actions";
import { formOf } from "./form-of";

/** The forecast of the next cold night, typed in on a real farm; only the framework’s cache and cookies are stood in for. */
vi.mock("next/cache", () => ({ revalidatePath: () => {} }));
vi.mock("next/headers", () => ({ cookies: async () => ({ get: () => undefined, set: () => {} }) }));

farmForActions("2027-09-24");

const save = (coldNightOn: string, coldNightLowC: string) =>
  saveColdNight(FRESH, formOf({ coldNightOn, coldNightLowC }));
const keptNight = () => {
  const { coldNightOn, coldNightLowC } = kept(farmDatabase()).farm;
  return [coldNightOn, coldNightLowC];
};

test("an empty forecast is refused with what is missing while none is kept, and takes the kept one out", async () => {
  const empty = await save("", "");
  expect(empty.outcome).toBe("refused");
  expect(empty.problems).toEqual([
    { place: "coldNightOn", message: "write the morning that is forecast cold" },
    { place: "coldNightLowC", message: "write its forecast low" },
  ]);
  expect((await save("2027-09-26", "")).problems.map(({ place }) => place)).toEqual(["coldNightLowC"]);
  expect(keptNight()).toEqual([null, null]);
  expect((await save("2027-09-26", "30")).outcome).toBe("saved");
  expect(keptNight()[0]).toBe("2027-09-26");
  expect((await save("", "")).outcome).toBe("saved");
  expect(keptNight()).toEqual([null, null]);
});
