import { expect, test } from "vitest";
import { changeSchema } from "#lib/domain/what-if";
import { changeInWords } from "#lib/plan/words/what-if-words";
import { FormValues } from "../../app/ui/form-values";
import { readChange } from "../../app/what-if/suppose/change-values";
import { dahliaFarm } from "../plan/what-if/farm";
import { farm } from "../small-farm";
import { formOf } from "./form-of";

const YEAR = 2027;

function read(fields: Record<string, string>) {
  return readChange(new FormValues(formOf(fields)), dahliaFarm(), YEAR);
}

const problemsOf = (fields: Record<string, string>) => {
  const change = read(fields);
  return change.ok ? [] : change.problems.map(({ place, message }) => `${place}: ${message}`);
};

test.each([
  [
    { kind: "bed-kept", bedId: "1" },
    { kind: "bed-kept", bedId: 1 },
  ],
  [
    { kind: "frost-moved", firstFrost: "2027-10-04" },
    { kind: "frost-moved", firstFrost: "10-04" },
  ],
  [
    { kind: "season-shifted", days: "10", direction: "early", cropId: "" },
    { kind: "season-shifted", days: -10, cropId: null },
  ],
  [
    { kind: "season-shifted", days: "0", direction: "early", cropId: "1" },
    { kind: "season-shifted", days: 0, cropId: 1 },
  ],
  [
    { kind: "yield-scaled", factor: "7.5", cropId: "2" },
    { kind: "yield-scaled", factor: 0.075, cropId: 2 },
  ],
  [
    { kind: "booking-moved", bookingId: "1", eventOn: "2027-08-28" },
    { kind: "booking-moved", bookingId: 1, eventOn: "2027-08-28" },
  ],
  [
    { kind: "booking-dropped", bookingId: "2" },
    { kind: "booking-dropped", bookingId: 2 },
  ],
  [
    { kind: "status-set", bookingId: "1", status: "held" },
    { kind: "status-set", bookingId: 1, status: "held" },
  ],
  [
    { kind: "planting-moved", plantingId: "3", bedId: "", plantedOn: "2027-05-30" },
    { kind: "planting-moved", plantingId: 3, bedId: null, plantedOn: "2027-05-30" },
  ],
  [
    { kind: "planting-removed", plantingId: "2" },
    { kind: "planting-removed", plantingId: 2 },
  ],
  [
    { kind: "at-hand-set", resource: "tarp", atHand: "" },
    { kind: "at-hand-set", resource: "tarp", atHand: null },
  ],
])("a short form of %o makes its change", (fields, change) => {
  expect(read(fields as Record<string, string>)).toEqual({ ok: true, parsed: change });
});

test("what is typed in cubic yards is kept in cubic metres and told in cubic yards", () => {
  const change = read({ kind: "at-hand-set", resource: "leaves", atHand: "10" });
  if (!change.ok || change.parsed.kind !== "at-hand-set") throw new Error("refused");
  expect(change.parsed.atHand).toBeCloseTo(7.6455, 4);
  expect(changeInWords(change.parsed, dahliaFarm())).toBe("10 cubic yards of leaves at hand");
  const metric = { ...dahliaFarm(), farm: farm({ units: "metric" }) };
  expect(changeInWords(change.parsed, metric)).toBe("7.6 cubic metres of leaves at hand");
});

test("a booking that might be needs a client, a day and something to ask for, each told beside its field", () => {
  const empty = { kind: "booking-added", "booking.status": "held", "booking.palette": "mauve" };
  expect(problemsOf(empty).map((problem) => problem.split(":")[0])).toEqual([
    "focalStems",
    "booking.client",
    "booking.eventOn",
    "booking.palette",
  ]);
});

test("a booking that might be asks for focal stems in its palette, with the farm's spare", () => {
  const change = read({
    kind: "booking-added",
    "booking.client": "D. Invented",
    "booking.status": "held",
    "booking.eventOn": "2027-08-21",
    "booking.palette": "blush, cream",
    focalStems: "40",
  });
  if (!change.ok || change.parsed.kind !== "booking-added") throw new Error("refused");
  expect(change.parsed.booking).toMatchObject({
    client: "D. Invented",
    spareShare: 0.1,
    palette: ["blush", "cream"],
    stemLines: [{ role: "focal", stemCount: 40, colours: ["blush", "cream"] }],
  });
});

test("a piece without its count, and a count without its piece, are told on their own lines", () => {
  const typed = {
    kind: "booking-added",
    "booking.client": "D",
    "booking.status": "held",
    "booking.eventOn": "2027-08-21",
  };
  expect(problemsOf({ ...typed, "pieceRecipe[1]": "77", "pieceCount[2]": "5" })).toEqual([
    "pieceRecipe[1]: this one is gone: choose a piece",
    "pieceRecipe[2]: choose a piece",
    expect.stringContaining("pieceCount[1]: "),
  ]);
});

test("half a piece is met with a word on its own line", () => {
  const recipe = dahliaFarm().recipes.find(({ unit }) => unit === "piece");
  const typed = {
    kind: "booking-added",
    "booking.client": "D",
    "booking.status": "held",
    "booking.eventOn": "2027-08-21",
    "pieceRecipe[1]": String(recipe?.id),
    "pieceCount[1]": "2.5",
  };
  expect(problemsOf(typed)).toEqual([
    expect.stringMatching(/^pieceCount\[1\]: 2\.5 of .*: pieces are whole, write 3$/),
  ]);
});

test("what is wrong with a change is told in words, at its field", () => {
  expect(problemsOf({ kind: "bed-kept", bedId: "99" })).toEqual(["bedId: this one is gone: choose a bed"]);
  expect(problemsOf({ kind: "frost-moved", firstFrost: "2028-10-04" })).toEqual(["firstFrost: choose a day in 2027"]);
  expect(problemsOf({ kind: "season-shifted", days: "61", direction: "late", cropId: "" })).toEqual([
    "days: at most 60 days",
  ]);
  expect(problemsOf({ kind: "yield-scaled", factor: "lots", cropId: "" })[0]).toContain(
    'factor: "lots" is not a number',
  );
  expect(problemsOf({ kind: "planting-moved", plantingId: "1", bedId: "", plantedOn: "" })[0]).toBe(
    "plantedOn: say which day, which bed, or both",
  );
});

test("a planting that might be is one that the domain takes", () => {
  const change = read({
    kind: "planting-added",
    "planting.bedId": "2",
    "planting.varietyId": "1",
    "planting.treatment": "spring-planted",
    "planting.plantedOn": "2027-05-10",
    "planting.plantCount": "120",
    "planting.aliveShare": "95",
    "planting.gradeOutShare": "10",
  });
  if (!change.ok) throw new Error("refused");
  expect(changeSchema.parse(change.parsed)).toMatchObject({
    planting: { plantCount: 120, aliveShare: 0.95, seasonYear: YEAR },
  });
});
