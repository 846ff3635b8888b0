import { describe, expect, test } from "vitest";
import { controlName, FIGURES, figureOf, inOneWord } from "../../app/farm/figures/figure-of";
import { figureWords, readFigure } from "../../app/farm/figures/figure-values";
import { FormValues } from "../../app/ui/form-values";
import { farm, snapshot } from "../small-farm";

const kept = farm();

function read(figure: string, ...typed: string[]) {
  const form = new FormData();
  form.set("figure", figure);
  for (const text of typed) form.append(figure, text);
  return readFigure(new FormValues(form), snapshot({ farm: kept }));
}

describe("one figure of the farm is changed where it stands", () => {
  test("and nothing else moves, for every setting left as it is", () => {
    for (const setting of FIGURES) {
      const name = controlName(setting);
      const { field } = figureOf(name, kept);
      const same = read(name, ...field.values);
      expect(same, name).toEqual({ ok: true, parsed: { farm: kept, name } });
    }
  });

  test("a share is typed in per cent, money in dollars, days by name", () => {
    const share = read("winter.winterSurvivalShare", "60");
    expect(share.ok && share.parsed.farm).toEqual({ ...kept, winter: { ...kept.winter, winterSurvivalShare: 0.6 } });
    const tuber = read("winter.tuberCents", "7.25");
    expect(tuber.ok && tuber.parsed.farm.winter.tuberCents).toBe(725);
    const days = read("pickingWeekdays", "Tue", "Fri");
    expect(days.ok && days.parsed.farm.pickingWeekdays).toEqual([2, 5]);
  });

  test("what breaks a rule over several is told at its own field", () => {
    const late = read("frost.firstAutumnP50", "12-20");
    expect(late).toEqual({
      ok: false,
      problems: [
        { place: "frost.firstAutumnP50", message: "autumn frost dates must come in order: 10 % first, 90 % last" },
      ],
    });
    const weight = read("statusWeights.held", "100");
    expect(weight.ok ? [] : weight.problems.map(({ place }) => place)).toEqual(["statusWeights.held"]);
  });

  test("a figure that no farm has is refused", () => {
    expect(read("winter.constructor", "1").ok).toBe(false);
  });

  test("it is shown with its unit, and the history says what it became", () => {
    expect(inOneWord(figureOf("winter.divideClumpsPerHour", kept))).toMatch(/^\d+ clumps per hour$/);
    expect(inOneWord(figureOf("winter.leafCentsPerCubicMetre", kept))).toMatch(/^\$[\d.]+ per cubic (yard|metre)$/);
    expect(inOneWord(figureOf("winter.hoursAtHand", { ...kept, winter: { ...kept.winter, hoursAtHand: null } }))).toBe(
      "no limit",
    );
    expect(inOneWord(figureOf("storeC", { ...kept, storeC: null }))).toBe("not said");
    expect(inOneWord(figureOf("storeC", { ...kept, units: "us", storeC: 5 }))).toBe("41 °F");
    expect(
      figureWords("frost.firstAutumnP50", {
        ...kept,
        frost: { ...kept.frost, firstAutumnP50: kept.frost.firstAutumnP90 },
      }),
    ).toMatch(/^changed “First frost of autumn”, now \d+ \w{3}$/);
  });
});
