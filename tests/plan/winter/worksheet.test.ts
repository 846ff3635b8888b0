import { describe, expect, test } from "vitest";
import { SOURCES } from "#lib/domain/catalogue/sources";
import { winterWorksheet } from "#lib/plan/winter/worksheet";
import { takesInWords } from "#lib/plan/words/takes-words";
import { taskInWords } from "#lib/plan/words/task-words";
import { WINTER_CAUTIONS } from "#lib/plan/words/winter-cautions";
import { bed, crop, curve, planting, snapshot, variety } from "../../small-farm";
import { SEASON, winterFarm } from "./farm";

const farmOf = () =>
  snapshot({
    crops: [crop({ id: 1, overwinters: true, tender: true })],
    varieties: [variety({ id: 1, name: "Maple Row", colour: "plum" })],
    curves: [curve({ id: 1, treatment: "spring-planted" }), curve({ id: 2, treatment: "kept-in-ground" })],
    beds: [bed({ id: 1, name: "D1", lengthMetres: 20 }), bed({ id: 2, name: "D2", lengthMetres: 20 })],
    plantings: [planting({ id: 1, bedId: 1, plantCount: 90 }), planting({ id: 2, bedId: 2, plantCount: 90 })],
  });

describe("the worksheet", () => {
  const sheet = winterWorksheet(farmOf(), 2027, [1]);

  test("[K9] a kept bed: tops a week after the frost of 18 October 2026, covered after two, looked at monthly, uncovered on 20 April 2027", () => {
    const kept = sheet.tasks.filter(({ bedName }) => bedName === "D1");
    expect(kept.map(({ day }) => day)).toEqual([
      "2026-10-25",
      "2026-11-01",
      "2026-11-01",
      "2026-12-01",
      "2026-12-31",
      "2027-01-30",
      "2027-03-01",
      "2027-03-31",
      "2027-04-20",
    ]);
    expect(kept.every(({ fate }) => fate === "kept")).toBe(true);
    expect(kept[1].leafCubicMetres).toBeCloseTo(4.8, 9);
    expect(kept[2].tarpSquareMetres).toBeCloseTo(24, 9);
  });

  test("[K9] a dug bed: lifted two weeks after the frost, divided and stored, checked monthly, planted again on its planting day", () => {
    const dug = sheet.tasks.filter(({ bedName }) => bedName === "D2");
    expect(dug[0]).toMatchObject({ day: "2026-11-01", clumpCount: 90, hours: 3 });
    expect(dug[0].origin).toEqual({ mark: "published", source: "UMN-TROTT" });
    expect(dug[1].day).toBe("2026-11-03");
    expect(taskInWords(dug[1])).toContain("40 to 50 F");
    expect(dug.at(-1)).toMatchObject({ day: "2027-05-20", hours: 1 });
    expect(dug.slice(2, -1).map(({ day }) => day)).toEqual([
      "2026-12-03",
      "2027-01-02",
      "2027-02-01",
      "2027-03-03",
      "2027-04-02",
      "2027-05-02",
    ]);
  });

  test("[K9] totals in metres, yards and feet: 4.8 m3 of leaves are 6.3 yd3, 24 m2 of tarp 258 ft2", () => {
    expect(sheet.totals.leafCubicMetres).toBeCloseTo(4.8, 9);
    expect(takesInWords({ ...sheet.totals, clumpCount: 0 }, "us")).toBe(
      "6.3 cubic yards of leaves, 258 square feet of tarp",
    );
    expect([sheet.totals.keptClumpCount, sheet.totals.dugClumpCount]).toEqual([90, 90]);
    expect(sheet.totals.hours).toBeCloseTo(3 + 90 / 14 + 1 + 24 * 0.08, 9);
  });

  test("[K9] on 40 invented farms tasks come in order of day, and beds sum to the totals", () => {
    for (let seed = 1; seed <= 40; seed++) {
      const farm = winterFarm(seed, 16, 4);
      const ids = winterWorksheet(farm, SEASON, []).beds.map(({ bedId }) => bedId);
      const { tasks, beds, totals } = winterWorksheet(
        farm,
        SEASON,
        ids.filter((_, index) => index % 2 === 0),
      );
      expect(tasks.every(({ day }, index) => index === 0 || tasks[index - 1].day <= day)).toBe(true);
      for (const word of ["hours", "leafCubicMetres", "tarpSquareMetres", "keptClumpCount", "dugClumpCount"] as const)
        expect(beds.reduce((sum, row) => sum + row[word], 0)).toBeCloseTo(totals[word], 6);
    }
  });

  test("[K9] a bed that is no candidate is refused", () => {
    expect(() => winterWorksheet(farmOf(), 2027, [7])).toThrow(RangeError);
  });

  test("[K9] every caution with a source names one that is listed, and the sources disagree on hardiness in the open", () => {
    for (const { origin } of [...WINTER_CAUTIONS, ...sheet.tasks])
      if (origin.source !== null) expect(Object.keys(SOURCES)).toContain(origin.source);
    const hardiness = WINTER_CAUTIONS.filter(({ topic }) => topic === "hardiness").map(({ origin }) => origin.source);
    expect(hardiness).toEqual(expect.arrayContaining(["GT-LOPEZ25", "ATTRA-DAHLIA", "ASKEXT-NC", "HANKINS"]));
    expect(WINTER_CAUTIONS.map(({ topic }) => topic)).toEqual(
      expect.arrayContaining(["first winter", "lifting", "stakes", "tarps", "knives", "wet ground"]),
    );
  });
});
