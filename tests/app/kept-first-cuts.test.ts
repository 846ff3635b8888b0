import { expect, test, vi } from "vitest";
import type { BloomCurve } from "#lib/domain/records/curve";
import { firstCutsOnRecord } from "#lib/plan/learning/first-cuts-on-record";
import { firstCutInLine } from "#lib/sheets/first-cuts-sheet";
import { deleteFirstCut, keepTyped, saveFirstCut } from "../../app/farm/weather/learn/learn-actions";
import { farmDatabase } from "../../app/load";
import { type FormState, FRESH } from "../../app/ui/form-state";
import { kept } from "../db/kept-farm";
import { farmForActions } from "./farm-for-actions";
import { formOf } from "./form-of";

vi.mock("next/cache", () => ({ revalidatePath: () => {} }));
vi.mock("next/headers", () => ({ cookies: async () => ({ get: () => undefined, set: () => {} }) }));

farmForActions();

const told = ({ outcome, problems }: FormState) => [outcome, ...problems.map(({ message }) => message)];
const curveOf = (kind: BloomCurve["anchor"]["kind"]): BloomCurve => {
  const found = kept(farmDatabase()).curves.find(({ anchor }) => anchor.kind === kind);
  if (!found) throw new RangeError(`the farm has no curve of ${kind}`);
  return found;
};
const keep = (curve: BloomCurve, dates: string) => keepTyped(FRESH, formOf({ curve: String(curve.id), dates }));
const firstCuts = () => kept(farmDatabase()).firstCuts.map(({ seasonYear, firstCut }) => [seasonYear, firstCut]);

test("first cuts that were typed are kept, a year later more of them, and all stand ready to learn from", async () => {
  const curve = curveOf("day-of-year");
  expect(told(await keep(curve, "2024-05-14\n2025 2025-05-20\n"))).toEqual(["saved"]);
  expect(told(await keep(curve, "2026-05-11\n2025-05-21"))).toEqual(["saved"]);
  expect(firstCuts()).toEqual([
    [2024, "2024-05-14"],
    [2025, "2025-05-21"],
    [2026, "2026-05-11"],
  ]);
  expect(firstCutsOnRecord(kept(farmDatabase()), curve).map(firstCutInLine)).toEqual([
    "2024-05-14",
    "2025-05-21",
    "2026-05-11",
  ]);
});

test("every line that is wrong is told with its mend, nothing is kept, and what was typed stays", async () => {
  const before = firstCuts();
  const dates = "2024-05-14\n2023-02-30\nsoon\n2024-05-16";
  const answer = await keep(curveOf("day-of-year"), dates);
  expect(told(answer)).toEqual([
    "refused",
    expect.stringMatching(/^line 2: not a calendar day: write it as YYYY-MM-DD/),
    expect.stringMatching(/^line 3: /),
    expect.stringMatching(/^line 4: 2024 stands a second time/),
  ]);
  expect(answer.typed).toMatchObject({ dates: [dates] });
  expect(told(await keep(curveOf("day-of-year"), "\n"))).toEqual([
    "refused",
    "there is no first cut to keep: write one a line",
  ]);
  expect(told(await keepTyped(FRESH, formOf({ curve: "", dates })))).toEqual([
    "refused",
    "choose one of the curves in the list",
  ]);
  expect(firstCuts()).toEqual(before);
});

test("one is changed by its form, also into what is wrong, which is refused at its field, and is taken away", async () => {
  const [{ id }] = kept(farmDatabase()).firstCuts;
  const form = (given: object) =>
    formOf({ firstCutId: String(id), seasonYear: "2024", firstCut: "2024-05-17", ...given });
  expect(told(await saveFirstCut(FRESH, form({})))).toEqual(["saved"]);
  expect(firstCuts()[0]).toEqual([2024, "2024-05-17"]);
  const places = async (given: object) => (await saveFirstCut(FRESH, form(given))).problems.map(({ place }) => place);
  expect(await places({ firstCut: "May" })).toEqual(["firstCut"]);
  expect(await places({ seasonYear: "24" })).toEqual(["seasonYear"]);
  expect(await places({ plantedOn: "2024-06-01" })).toEqual(["plantedOn"]);
  expect(await places({ seasonYear: "2026" })).toEqual(["firstCut"]);
  expect(told(await deleteFirstCut(FRESH, formOf({ firstCutId: String(id) })))).toEqual(["saved"]);
  expect(firstCuts().map(([year]) => year)).toEqual([2025, 2026]);
  expect((await deleteFirstCut(FRESH, formOf({ firstCutId: String(id) }))).outcome).toBe("refused");
});

test("a curve of days after planting asks for the planting day of each", async () => {
  const planted = { ...curveOf("day-of-year") };
  const { typedFirstCuts } = await import("../../app/farm/weather/learn/kept-values");
  const farm = kept(farmDatabase());
  const curves = [{ ...planted, anchor: { kind: "days-after-planting" as const, days: 60 } }];
  const read = (dates: string) => typedFirstCuts({ ...farm, curves }, planted.id, dates);
  expect(read("2024-05-20 2024-07-20\n2024-06-10 2024-08-08")).toMatchObject({
    ok: true,
    parsed: [{ plantedOn: "2024-05-20" }, { plantedOn: "2024-06-10" }],
  });
  expect(read("2024-07-20")).toMatchObject({
    ok: false,
    problems: [{ message: "2024-07-20: write the planting day before it, such as 2024-05-20 2024-07-20" }],
  });
});
