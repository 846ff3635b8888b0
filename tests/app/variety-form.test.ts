import { expect, test } from "vitest";
import { formFields, readForm } from "#lib/domain/records/form";
import { OWN_TRAITS, VARIETY } from "#lib/domain/records/variety";
import { variety } from "../small-farm";

const MANNER = { units: "us" } as const;

const typed = (fields: Record<string, readonly string[]>) => ({ getAll: (name: string) => [...(fields[name] ?? [])] });

const read = (fields: Record<string, readonly string[]>) =>
  readForm(VARIETY, typed({ name: ["Double Rose"], colour: ["pink"], ...fields }), MANNER, { given: { cropId: 1 } });

test("a variety’s form with nothing said of its own is in all as its crop", () => {
  const plain = { cropId: 1, name: "Double Rose", colour: "pink", roles: [], headSize: null, stemLength: null };
  const empty = { headSize: [""], stemLength: [""], outOfWater: [""], holdDays: [" "], stretchDays: [""] };
  for (const fields of [{}, empty])
    expect(read(fields)).toEqual({
      ok: true,
      parsed: { ...plain, outOfWater: null, holdDays: null, stretchDays: null },
    });
});

test("roles ticked, sizes chosen and days typed are the variety’s own", () => {
  const own = { roles: ["focal", "secondary"], headSize: ["large"], outOfWater: ["holds"], holdDays: ["2"] };
  const saved = read({ ...own, stretchDays: ["3.5"] });
  expect(saved.ok && saved.parsed).toMatchObject({
    ...{ roles: ["focal", "secondary"], headSize: "large", stemLength: null, outOfWater: "holds" },
    ...{ holdDays: 2, stretchDays: 3.5 },
  });
});

test("what cannot be is refused at its field, all of it at once, and said how to mend", () => {
  const bad = read({ headSize: ["enormous"], holdDays: ["-1"], stretchDays: ["four"], roles: ["star"] });
  expect(bad.ok ? [] : bad.problems.map(({ place }) => place)).toEqual([
    "roles",
    "headSize",
    "holdDays",
    "stretchDays",
  ]);
});

test("its choices begin with the crop’s own, which is what an untouched form keeps", () => {
  const { headSize } = formFields(OWN_TRAITS, variety({ id: 1 }), MANNER);
  expect(headSize.options.map(({ value, label }) => [value, label])[0]).toEqual(["", "as the crop"]);
  expect(headSize.values).toEqual([]);
});
