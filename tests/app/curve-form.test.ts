import { expect, test } from "vitest";
import { OWN } from "#lib/domain/sourced";
import { readCurve } from "../../app/beds/curves/curve-values";
import { FormValues } from "../../app/ui/form-values";
import { curve, farm, monthDay } from "../small-farm";

const COMMA = farm({ decimalMark: "comma" });
const before = curve({
  id: 1,
  anchor: { kind: "day-of-year", firstCut: monthDay("06-07") },
  stemsPerPlantByWeek: [1.5, 2],
  firstCutSpreadDays: 7,
  yieldSpread: 1 / 3,
  timingOrigin: { mark: "trade", source: "X" },
  yieldOrigin: { mark: "trade", source: "X" },
});

/** The form of the curve as it is shown, where decimals have a comma, with some fields typed otherwise. */
function read(typed: Record<string, string | string[]> = {}) {
  const shown = {
    cropId: "1",
    isFor: "crop",
    treatment: before.treatment,
    "anchor.kind": "day-of-year",
    firstCut: "06-07",
    daysAfterPlanting: "",
    ends: "weeks",
    firstCutSpreadDays: "7",
    yieldSpread: "33,33",
    laterDays: "0",
    stemsPerPlantByWeek: ["1,5", "2"],
    ...typed,
  };
  const form = new FormData();
  for (const [name, texts] of Object.entries(shown)) for (const text of [texts].flat()) form.append(name, text);
  const values = new FormValues(form);
  values.readBy(COMMA.decimalMark);
  return readCurve(values, COMMA, before);
}

test("a curve sent as it was shown changes no digit and keeps its origins", () => {
  const { id: _, ...draft } = before;
  expect(read()).toEqual({ ok: true, parsed: draft });
});

test("weeks typed with a comma are read, and the yield becomes the farm's own while the timing keeps its origin", () => {
  const now = read({ stemsPerPlantByWeek: ["1,25", "2"] });
  expect(now).toMatchObject({
    parsed: { stemsPerPlantByWeek: [1.25, 2], timingOrigin: before.timingOrigin, yieldOrigin: { mark: "own" } },
  });
});

test("every problem comes at once and at its field, and what stands under the other kind of first cut is not read", () => {
  const wrong = read({
    firstCut: "31 June",
    yieldSpread: "300",
    stemsPerPlantByWeek: ["-1"],
    daysAfterPlanting: "soon",
  });
  expect(wrong.ok ? [] : wrong.problems.map(({ place }) => place).sort()).toEqual([
    "firstCut",
    "stemsPerPlantByWeek[0]",
    "yieldSpread",
  ]);
  expect(read({ "anchor.kind": "days-after-planting", firstCut: "31 June", daysAfterPlanting: "90" })).toMatchObject({
    parsed: { anchor: { kind: "days-after-planting", days: 90 } },
  });
});

test("warmth is typed in the farm's degrees, and is nothing where it is left empty", () => {
  const clock = { heatBaseC: "50", heatCeilingC: "", heatFrom: "01-01", heatPlace: "Richmond, Virginia" };
  expect(read(clock)).toMatchObject({
    parsed: { heatBaseC: 10, heatCeilingC: null, heatFrom: "01-01", heatPlace: "Richmond, Virginia", heatOrigin: OWN },
  });
  expect(read()).toMatchObject({ parsed: { heatBaseC: null, heatFrom: null, heatPlace: null } });
});

test("half a clock is refused at the field that lacks", () => {
  const places = (typed: Record<string, string>) => {
    const wrong = read(typed);
    return wrong.ok ? [] : wrong.problems.map(({ place }) => place);
  };
  expect(places({ heatBaseC: "50" })).toEqual(["heatFrom"]);
  expect(places({ heatBaseC: "50", heatFrom: "01-01", heatCeilingC: "40" })).toEqual(["heatCeilingC"]);
  expect(places({ heatFrom: "01-01" })).toEqual(["heatBaseC"]);
  expect(places({ heatBaseC: "500", heatFrom: "01-01" })).toEqual(["heatBaseC"]);
});

test("heat that ends a bloom has its degrees, and is refused without them", () => {
  expect(read({ ends: "heat", endHighC: "80" })).toMatchObject({ parsed: { ends: "heat", endHighC: 26.6666666667 } });
  const wrong = read({ ends: "heat" });
  expect(wrong.ok ? [] : wrong.problems.map(({ place }) => place)).toEqual(["endHighC"]);
});

test("what is fit to sell is four shares or none, and makes the yield her own", () => {
  expect(read({ saleableBySeason: "0,9 / 0,8 / 0,85 / 1" })).toMatchObject({
    parsed: { saleableBySeason: [0.9, 0.8, 0.85, 1], yieldOrigin: OWN, timingOrigin: before.timingOrigin },
  });
  const wrong = (text: string) => {
    const given = read({ saleableBySeason: text });
    return given.ok ? [] : given.problems.map(({ place, message }) => [place, message]);
  };
  expect(wrong("0,9 / 0,8")).toEqual([
    ["saleableBySeason", "write four shares, of spring, summer, autumn and winter, or none"],
  ]);
  expect(wrong("90 / 0,8 / 0,8 / 1").map(([place]) => place)).toEqual(["saleableBySeason"]);
});
