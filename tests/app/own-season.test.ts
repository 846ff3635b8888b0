import { expect, test, vi } from "vitest";
import { latestChanges, undoChange } from "#db/journal/journal";
import { farmDatabase } from "../../app/load";
import { saySeason } from "../../app/season/own-season-actions";
import { FRESH } from "../../app/ui/form-state";
import { kept } from "../db/kept-farm";
import { farmForActions } from "./farm-for-actions";
import { formOf } from "./form-of";

/** The framework’s cache and cookies, which live inside its server, are stood in for. */
vi.mock("next/cache", () => ({ revalidatePath: () => {} }));
vi.mock("next/headers", () => ({ cookies: async () => ({ get: () => undefined, set: () => {} }) }));

farmForActions();

/** Sends the form as it is typed. */
const say = (cropId: string, daysLate: string, yieldFactor: string) =>
  saySeason(FRESH, formOf({ seasonYear: "2027", cropId, daysLate, yieldFactor }));
const said = () => kept(farmDatabase()).plantings.map((row) => [row.daysLate, row.yieldFactor]);

test("[F15] what is said of a crop stands at its plantings of the season, every other row as it was, and one undo takes it back", async () => {
  const before = kept(farmDatabase());
  expect((await say("", "6", "90")).outcome).toBe("saved");
  const after = kept(farmDatabase());
  expect(said()).toEqual(before.plantings.map(({ seasonYear }) => (seasonYear === 2027 ? [6, 0.9] : [null, null])));
  expect({ ...after, plantings: before.plantings }).toEqual(before);
  const [last] = latestChanges(farmDatabase(), 1);
  expect(last.title).toBe("Every crop: 6 days late, 90 % of its stems, in 2027 only");
  expect(undoChange(farmDatabase(), last.id).ok).toBe(true);
  expect(kept(farmDatabase())).toEqual(before);
});

test("early is a number with a minus, an empty field says nothing, and two empty ones take back what was said", async () => {
  expect((await say("", "-5", "")).outcome).toBe("saved");
  expect(said()).toContainEqual([-5, null]);
  expect((await say("", "", "112,5")).outcome).toBe("refused");
  expect((await say("", "", "112.5")).outcome).toBe("saved");
  expect(said()).toContainEqual([null, 1.125]);
  expect((await say("", "", "")).outcome).toBe("saved");
  expect(
    said()
      .flat()
      .every((one) => one === null),
  ).toBe(true);
});

test("what can hardly be is refused at its field, and a crop that is not planted is named", async () => {
  const problems = async (...typed: Parameters<typeof say>) => (await say(...typed)).problems.map(({ place }) => place);
  expect(await problems("", "a week", "lots")).toEqual(["daysLate", "yieldFactor"]);
  expect(await problems("", "121", "501")).toEqual(["daysLate", "yieldFactor"]);
  expect(await problems("", "2.5", "")).toEqual(["daysLate"]);
  expect(await problems("999", "3", "")).toEqual(["cropId"]);
});
