import { describe, expect, test } from "vitest";
import { toDayNumber } from "#lib/domain/day";
import { type BloomCurve, bloomCurveSchema } from "#lib/domain/records/curve";
import { weatherOfDays } from "#lib/domain/records/weather-day";
import { firstCutsOnRecord } from "#lib/plan/learning/first-cuts-on-record";
import { lessonOf } from "../../app/farm/weather/learn/lesson";
import { demoSnapshot } from "../../demo/demo-snapshot";
import { day } from "../small-farm";

/** What first cuts teach a curve of the demo farm with weather from one day to another, warmer in the middle of each year. */
function lesson(from: string, to: string, firstCuts: readonly string[]) {
  const snapshot = demoSnapshot();
  const first = toDayNumber(day(from));
  const weather = weatherOfDays(
    Array.from({ length: toDayNumber(day(to)) - first + 1 }, (_, index) => ({
      day: first + index,
      highC: 15 - 10 * Math.cos(((first + index) / 365.25) * 2 * Math.PI),
      lowC: 5,
    })),
  );
  const curve = snapshot.curves.find(({ anchor }) => anchor.kind === "day-of-year");
  return lessonOf({ ...snapshot, weather }, curve?.id ?? 0, firstCuts.join("\n"));
}

test("weather that says nothing of a part of the year is refused in words, and never breaks the page", () => {
  for (const [from, to] of [
    ["2020-12-20", "2021-01-05"],
    ["2021-03-01", "2021-10-31"],
  ])
    expect(lesson(from, to, ["2020-05-03", "2021-05-01", "2022-05-02"])).toMatchObject({
      ok: false,
      because: expect.stringMatching(/every fortnight/),
    });
});

test("first cuts that no curve can hold are refused, since a farm with such a curve could not be read any more", () => {
  expect(lesson("2010-01-01", "2016-12-31", ["2011-01-05", "2012-12-20", "2013-06-01", "2014-12-25"])).toMatchObject({
    ok: false,
    because: expect.stringMatching(/more than 60 days/),
  });
  const learned = lesson("2010-01-01", "2016-12-31", ["2011-05-01", "2012-05-20", "2013-06-01", "2014-06-25"]);
  expect(learned.ok && bloomCurveSchema.safeParse(learned.byMean).success).toBe(true);
});

test("first cuts before New Year of their season are refused: a curve would begin a year too late by them", () => {
  const firstCuts = ["2012,2011-12-05", "2013,2012-12-20", "2014,2013-12-10"];
  expect(lesson("2010-01-01", "2016-12-31", firstCuts)).toMatchObject({
    ok: false,
    because: expect.stringMatching(/before New Year/),
  });
});

test("more first cuts than are read are refused, since the last of them would go missing unsaid", () => {
  const firstCuts = ["2011-05-01", "2012-05-20", "2013-06-01", "2014-06-25"];
  const spaced = (spaces: number) => lesson("2010-01-01", "2016-12-31", [...firstCuts, " ".repeat(spaces)]);
  const letters = firstCuts.join("\n").length + 1;
  expect(spaced(8000 - letters)).toMatchObject({ ok: true, leftOut: [] });
  expect(spaced(8001 - letters)).toMatchObject({
    ok: false,
    because: expect.stringMatching(/longer than 8,000 letters/),
  });
});

describe("a curve of days after planting", () => {
  const june = demoSnapshot(2027, day("2027-10-20"));
  const curveOf = (crop: string, treatment: string) => {
    const cropId = june.crops.find(({ name }) => name === crop)?.id;
    const found = june.curves.find((row) => row.cropId === cropId && row.treatment === treatment);
    if (!found) throw new RangeError(`${crop} has no curve of ${treatment}`);
    return found;
  };
  const typed = (curve: BloomCurve) =>
    firstCutsOnRecord(june, curve)
      .map(({ plantedOn, firstCut }) => `${plantedOn} ${firstCut}`)
      .join("\n");

  test("learns from the first blooms on record of the demo's three seasons, told by warmth or by their mean, whichever errs less, and the farm can be read with it", () => {
    for (const [crop, treatment] of [
      ["Dahlia", "spring-planted"],
      ["Zinnia", "field"],
      ["Snapdragon", "field"],
      ["Gladiolus", "field"],
    ]) {
      const curve = curveOf(crop, treatment);
      const learned = lessonOf(june, curve.id, typed(curve));
      if (!learned.ok || !("planted" in learned)) throw new Error(`${crop}: ${JSON.stringify(learned)}`);
      expect(learned.leftOut).toEqual([]);
      const { clockErrorDays, meanErrorDays } = learned.planted;
      expect(learned.byClock === null).toBe(clockErrorDays === null);
      if (clockErrorDays !== null) expect(clockErrorDays).toBeLessThan(meanErrorDays);
      for (const one of [learned.byMean, learned.byClock])
        if (one) {
          expect(bloomCurveSchema.safeParse(one).success).toBe(true);
          expect(one.anchor.kind).toBe("days-after-planting");
        }
    }
  });

  test("needs planting days, three of them, of two years", () => {
    const { id } = curveOf("Zinnia", "field");
    expect(lessonOf(june, id, "2025-07-20\n2026-07-22\n2024-07-20")).toMatchObject({
      ok: false,
      because: expect.stringMatching(/with their planting days .* there are 0 of 0/),
      leftOut: expect.arrayContaining([expect.stringMatching(/20 July 2025: write the planting day before it/)]),
    });
    const oneYear = "2025-05-12 2025-07-03\n2025-06-15 2025-08-01\n2025-07-06 2025-08-23";
    expect(lessonOf(june, id, oneYear)).toMatchObject({
      ok: false,
      because: expect.stringMatching(/of two years or more, and there are 3 of 1/),
    });
  });
});
