import { expect, test, vi } from "vitest";
import { clearPast, moveStems, saveCoolerStock } from "../../app/farm/cooler/cooler-actions";
import { farmDatabase } from "../../app/load";
import { type FormState, FRESH } from "../../app/ui/form-state";
import { kept } from "../db/kept-farm";
import { farmForActions } from "./farm-for-actions";
import { formOf } from "./form-of";

/** The cooler's own actions on a real farm, on a day; only the framework’s cache and cookies are stood in for. */
vi.mock("next/cache", () => ({ revalidatePath: () => {} }));
vi.mock("next/headers", () => ({ cookies: async () => ({ get: () => undefined, set: () => {} }) }));

farmForActions("2026-11-25");

const told = ({ outcome, problems }: FormState) => [outcome, ...problems.map(({ message }) => message)];

test("stems leave the cooler with a tap, never more than stand there, and what is past its days is thrown away at once", async () => {
  const lot = { varietyId: "1", cutOn: "2026-11-24", bookingId: "" };
  expect((await saveCoolerStock(FRESH, formOf({ ...lot, stemCount: "20", stockId: "" }))).outcome).toBe("saved");
  const out = (stemCount: string) => moveStems(FRESH, formOf({ ...lot, stemCount, kind: "thrown away" }));
  expect((await out("15")).outcome).toBe("saved");
  expect(told(await out("6"))).toEqual(["refused", "only 5 are left of this lot"]);
  expect((await out("some")).problems.map(({ place }) => place)).toEqual(["stemCount"]);
  expect((await out("5")).outcome).toBe("saved");
  expect(told(await out("1"))).toEqual(["refused", "none are left of this lot"]);
  const old = { ...lot, cutOn: "2026-11-15" };
  expect((await saveCoolerStock(FRESH, formOf({ ...old, stemCount: "8", stockId: "" }))).outcome).toBe("saved");
  expect((await clearPast(FRESH, formOf({}))).outcome).toBe("saved");
  expect(kept(farmDatabase()).coolerMoves.map(({ stemCount }) => stemCount)).toEqual([15, 5, 8]);
  expect(told(await clearPast(FRESH, formOf({})))).toEqual(["refused", "nothing is past its days any more"]);
});
