import { expect, test } from "vitest";
import { CLIMATE_STATIONS } from "#lib/domain/catalogue/climate-stations";
import { MONTHS } from "#lib/domain/day";
import { readClimate } from "../../app/farm/settings/climate-values";
import { FormValues } from "../../app/ui/form-values";
import { farm } from "../small-farm";
import { formOf } from "./form-of";

const twelve = (name: string, typed: string): Record<string, string> =>
  Object.fromEntries(MONTHS.map((_, month) => [`${name}[${month}]`, typed]));

function read(typed: Record<string, string>, given = farm()) {
  return readClimate(new FormValues(formOf(typed)), given);
}

const TYPED = {
  station: "Hill field",
  latitudeDegrees: "40",
  ...twelve("monthlyHighsC", "50"),
  ...twelve("monthlyLowsC", "32"),
};

test("fifty degrees Fahrenheit is ten inside", () => {
  expect(read(TYPED)).toEqual({
    ok: true,
    parsed: {
      station: "Hill field",
      latitudeDegrees: 40,
      monthlyHighsC: Array(12).fill(10),
      monthlyLowsC: Array(12).fill(0),
    },
  });
  expect(read(TYPED, farm({ units: "metric" }))).toMatchObject({ parsed: { monthlyHighsC: Array(12).fill(50) } });
});

test("a station's numbers sent as they are shown do not move by a digit", () => {
  const [climate] = CLIMATE_STATIONS;
  const shown = (name: "monthlyHighsC" | "monthlyLowsC") =>
    Object.fromEntries(climate[name].map((c, month) => [`${name}[${month}]`, (c * 1.8 + 32).toFixed(1)]));
  const typed = { station: climate.station, latitudeDegrees: String(climate.latitudeDegrees) };
  const sent = { ...typed, ...shown("monthlyHighsC"), ...shown("monthlyLowsC") };
  expect(read(sent, farm({ climate }))).toEqual({ ok: true, parsed: climate });
});

test("every problem comes at once and at its month", () => {
  const wrong = read({
    ...TYPED,
    station: "",
    "monthlyHighsC[1]": "",
    "monthlyLowsC[2]": "cold",
    "monthlyLowsC[3]": "51",
  });
  expect(wrong.ok ? [] : wrong.problems.map(({ place }) => place).sort()).toEqual([
    "monthlyHighsC[1]",
    "monthlyLowsC[2]",
    "station",
  ]);
  const above = read({ ...TYPED, "monthlyLowsC[3]": "51" });
  expect(above.ok ? [] : above.problems.map(({ place }) => place)).toEqual(["monthlyLowsC[3]"]);
});
