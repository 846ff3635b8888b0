import { expect, test } from "vitest";
import { BED, bedDraftSchema } from "#lib/domain/records/bed";
import { CROP_NUMBERS } from "#lib/domain/records/crop";
import { formFields, readForm, type Typed } from "#lib/domain/records/form";
import { OWN } from "#lib/domain/sourced";
import { bed, crop } from "../../small-farm";

const FEET = { units: "us" } as const;
const typed = (form: Record<string, string>): Typed => ({ getAll: (name) => (name in form ? [form[name]] : []) });

test("a form that is sent as it was shown changes no digit: 15 m is shown as 49.2 feet and stays 15 m", () => {
  const before = bed({ id: 1, flags: ["wet soil"] });
  const fields = formFields(BED, before, FEET);
  expect(fields.lengthMetres).toMatchObject({ values: ["49.2"], unit: "feet", label: "Length", input: "number" });
  const sent: Typed = {
    getAll: (name) => [...(Object.values(fields).find((field) => field.name === name)?.values ?? [])],
  };
  const { id: _, ...draft } = before;
  expect(readForm(BED, sent, FEET, { before })).toEqual({ ok: true, parsed: draft });
});

test("every problem comes at once, at its field and in the unit that was typed", () => {
  const read = readForm(BED, typed({ name: "D4", lengthMetres: "4000", widthMetres: "wide", flags: "haunted" }), FEET);
  expect(read.ok ? [] : read.problems.map(({ place, message }) => `${place}: ${message}`)).toEqual([
    "lengthMetres: more than 0, and at most 3,280.83 feet",
    'widthMetres: "wide" is not a number: write digits alone, with a point for decimals, for example 12.5',
    expect.stringMatching(/^flags: "haunted" is not known here: write one of wet soil/),
  ]);
});

test("a rule over several fields is told at its field", () => {
  const sprayed = typed({ name: "D4", lengthMetres: "10", widthMetres: "4", noEntryFrom: "2027-06-12" });
  const read = readForm(BED, sprayed, FEET, { schema: bedDraftSchema });
  expect(read.ok ? [] : read.problems.map(({ place }) => place)).toEqual(["noEntryUntil"]);
});

test("a number with an origin keeps it until it is changed, and is then the farm's own", () => {
  const before = crop({ id: 1, holdDays: { count: 4, mark: "trade", source: "X" } });
  const store = { stretchDays: "0", dryHoldDays: "0", holdUpToC: "41", notColderC: "32", cutSpareShare: "0" };
  const form = { ...store, holdDays: "4", fieldDays: "3", bunchStems: "10", bucketStems: "50", buyInCents: "3.00" };
  const read = readForm(CROP_NUMBERS, typed(form), FEET, { before });
  expect(read).toMatchObject({ parsed: { holdDays: before.holdDays, fieldDays: { count: 3, ...OWN } } });
});

test("where the farm writes a decimal comma a form shows and reads it: 49,2 feet stay 15 m, and 1,5 feet are a foot and a half", () => {
  const comma = { units: "us", decimalMark: "comma" } as const;
  const before = bed({ id: 1 });
  expect(formFields(BED, before, comma).lengthMetres.values).toEqual(["49,2"]);
  const read = readForm(BED, typed({ name: "D4", lengthMetres: "49,2", widthMetres: "1,5" }), comma, { before });
  expect(read).toMatchObject({ parsed: { lengthMetres: 15, widthMetres: 0.4572 } });
});
