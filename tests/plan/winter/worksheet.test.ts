import { describe, expect, test } from "vitest";
import { SOURCES } from "#lib/domain/catalogue/sources";
import { isoWeekday } from "#lib/domain/day";
import { winterBeds } from "#lib/plan/winter/beds";
import { winterWorksheet } from "#lib/plan/winter/worksheet";
import { takesInWords } from "#lib/plan/words/takes-words";
import { isWinterWork, taskInWords, workTakesInWords } from "#lib/plan/words/task-words";
import { WINTER_CAUTIONS } from "#lib/plan/words/winter-cautions";
import { bed, crop, curve, day, planting, snapshot, variety } from "../../small-farm";
import { SEASON, winterFarm } from "./farm";

const farmOf = () =>
  snapshot({
    crops: [crop({ id: 1, overwinters: true, tender: true })],
    varieties: [variety({ id: 1, name: "Maple Row", colour: "plum" })],
    curves: [curve({ id: 1, treatment: "spring-planted" }), curve({ id: 2, treatment: "kept-in-ground" })],
    beds: [bed({ id: 1, name: "D1", lengthMetres: 20 }), bed({ id: 2, name: "D2", lengthMetres: 20 })],
    plantings: [planting({ id: 1, bedId: 1, plantCount: 90 }), planting({ id: 2, bedId: 2, plantCount: 90 })],
  });

const BEFORE_FROST = day("2026-10-01");

describe("the worksheet", () => {
  const sheet = winterWorksheet(farmOf(), 2027, [1], BEFORE_FROST);

  test("[K9] a kept bed: tops a week after the frost of 18 October 2026, covered after two and not on a Sunday, looked at monthly, vented in March, uncovered 25 days before 20 April 2027, counted then", () => {
    const kept = sheet.tasks.filter(({ bedName }) => bedName === "D1");
    expect(kept.map(({ day: on, work }) => `${on} ${work}`)).toEqual([
      "2026-10-25 cut tops",
      "2026-11-01 voles",
      "2026-11-02 leaves on",
      "2026-11-02 tarp on",
      "2026-12-01 look",
      "2026-12-31 look",
      "2027-01-30 look",
      "2027-03-01 look",
      "2027-03-12 vent",
      "2027-03-26 uncover",
      "2027-03-26 frost cloth",
      "2027-04-20 count and thin",
    ]);
    expect(kept.every(({ fate }) => fate === "kept")).toBe(true);
    expect(kept[2].leafCubicMetres).toBeCloseTo(4.8, 9);
    expect(kept[3].tarpSquareMetres).toBeCloseTo(24, 9);
    expect(sheet.dates.lateFrostOn).toBe("2027-05-04");
  });

  test("[K9] a dug bed: lifted two weeks after the frost, divided two days later over two days of 6 hours, checked monthly, planted again on its planting day", () => {
    const dug = sheet.tasks.filter(({ bedName }) => bedName === "D2");
    expect(dug[0]).toMatchObject({ day: "2026-11-02", work: "dig", clumpCount: 90, hours: 3 });
    expect(dug[0].origin).toEqual({ mark: "published", source: "UMN-TROTT" });
    expect(dug[1]).toMatchObject({ day: "2026-11-04", work: "divide", hours: 6 });
    expect(dug[2].day).toBe("2026-11-05");
    expect(dug[2].hours).toBeCloseTo(90 / 14 - 6, 9);
    expect(taskInWords(dug[1])).toContain("40 to 50 F");
    expect(dug.at(-1)).toMatchObject({ day: "2027-05-20", hours: 1 });
    expect(dug.slice(3, -1).map(({ day: on }) => on)).toEqual([
      "2026-12-03",
      "2027-01-02",
      "2027-02-01",
      "2027-03-03",
      "2027-04-02",
      "2027-05-02",
    ]);
  });

  test("[K9] it begins today: on 26 November what was due a month ago is laid from that day on, looks that are past are gone, and after venting has begun nobody is sent to dig", () => {
    const late = winterWorksheet(farmOf(), 2027, [1], day("2026-11-26")).tasks;
    expect(late[0].day).toBe("2026-11-26");
    expect(late.filter(({ work }) => work === "dig" || work === "leaves on").map(({ day: on }) => on)).toEqual([
      "2026-11-26",
      "2026-11-26",
    ]);
    expect(late.find(({ work }) => work === "divide")?.day).toBe("2026-11-28");
    expect(late.find(({ work }) => work === "check store")?.day).toBe("2026-12-03");
    const slow = farmOf();
    const oneHour = { ...slow, farm: { ...slow.farm, winter: { ...slow.farm.winter, workHoursPerDay: 1 } } };
    const slowly = winterWorksheet(oneHour, 2027, [1], day("2026-11-26")).tasks;
    const divided = slowly.filter(({ work }) => work === "divide").at(-1)?.day ?? "";
    const checked = slowly.find(({ work }) => work === "check store")?.day ?? "";
    expect(divided > "2026-12-03" && checked >= divided).toBe(true);
    const spring = winterWorksheet(farmOf(), 2027, [1], day("2027-03-20")).tasks;
    expect(new Set(spring.map(({ work }) => work))).toEqual(
      new Set(["vent", "uncover", "frost cloth", "count and thin", "check store", "replant"]),
    );
    expect(winterWorksheet(farmOf(), 2027, [1], day("2027-08-01")).tasks).toEqual([]);
  });

  test("[K9] dead clumps are replanted on the planting day, with their hours: a tenth of 90 at 90 an hour", () => {
    const { farm, ...rest } = farmOf();
    const winter = { ...farm.winter, replantDeadShare: 0.5, leafHaulHoursPerCubicMetre: 0.5 };
    const tasks = winterWorksheet({ ...rest, farm: { ...farm, winter } }, 2027, [1], BEFORE_FROST).tasks;
    const replanting = tasks.find(({ work }) => work === "replant dead");
    expect(replanting?.day).toBe("2027-05-20");
    expect(replanting?.hours).toBeCloseTo(0.1, 9);
    expect(tasks.find(({ work }) => work === "haul leaves")?.hours).toBeCloseTo(2.4, 9);
  });

  test("[K9] totals in metres, yards and feet: 4.8 m3 of leaves are 6.3 yd3, 24 m2 of tarp 258 ft2", () => {
    expect(sheet.totals.leafCubicMetres).toBeCloseTo(4.8, 9);
    expect(takesInWords({ ...sheet.totals, clumpCount: 0 }, "us")).toBe(
      "6.3 cubic yards of leaves, 258 square feet of tarp",
    );
    expect([sheet.totals.keptClumpCount, sheet.totals.dugClumpCount]).toEqual([90, 90]);
    expect(sheet.totals.hours).toBeCloseTo(3 + 90 / 14 + 1 + 24 * 0.08, 9);
  });

  test("[K9] on 40 invented farms tasks come in order of day, no day has more than 6 hours and no Sunday any, a bed takes the hours that its cost has, and beds sum to the totals", () => {
    for (let seed = 1; seed <= 40; seed++) {
      const farm = winterFarm(seed, 16, 4);
      const ids = winterBeds(farm, SEASON).map(({ bed: { id } }) => id);
      const { tasks, beds, totals } = winterWorksheet(
        farm,
        SEASON,
        ids.filter((_, index) => index % 2 === 0),
        BEFORE_FROST,
      );
      expect(tasks.every(({ day }, index) => index === 0 || tasks[index - 1].day <= day)).toBe(true);
      const perDay = new Map<string, number>();
      for (const { day: on, hours } of tasks) perDay.set(on, (perDay.get(on) ?? 0) + hours);
      for (const [on, hours] of perDay) {
        expect(hours, `seed ${seed}, ${on}`).toBeLessThanOrEqual(6 + 1e-6);
        if (isoWeekday(day(on)) === 7) expect(hours).toBe(0);
      }
      for (const {
        bed: { id },
        keep,
        dig,
      } of winterBeds(farm, SEASON)) {
        const row = beds.find(({ bedId }) => bedId === id);
        expect(row?.hours).toBeCloseTo((row?.fate === "kept" ? keep : dig).hours, 6);
      }
      for (const word of ["hours", "leafCubicMetres", "tarpSquareMetres", "keptClumpCount", "dugClumpCount"] as const)
        expect(beds.reduce((sum, row) => sum + row[word], 0)).toBeCloseTo(totals[word], 6);
    }
  });

  test("[K9] a bed that is no candidate is refused", () => {
    expect(() => winterWorksheet(farmOf(), 2027, [7], BEFORE_FROST)).toThrow(RangeError);
  });

  test("[K9] every caution with a source names one that is listed, and the sources disagree on hardiness in the open", () => {
    for (const { origin } of [...WINTER_CAUTIONS, ...sheet.tasks])
      if (origin.source !== null) expect(Object.keys(SOURCES)).toContain(origin.source);
    const hardiness = WINTER_CAUTIONS.filter(({ topic }) => topic === "hardiness").map(({ origin }) => origin.source);
    expect(hardiness).toEqual(expect.arrayContaining(["GT-LOPEZ25", "ATTRA-DAHLIA", "ASKEXT-NC", "HANKINS"]));
    expect(WINTER_CAUTIONS.map(({ topic }) => topic)).toEqual(
      expect.arrayContaining(["first winter", "lifting", "stakes", "tarps", "knives", "voles"]),
    );
    expect(WINTER_CAUTIONS[0].topic).toBe("wet ground");
  });
});

test("the sum of the work names what is left of it and no nought: in June the planting again, in August nothing", () => {
  const late = (on: string) => winterWorksheet(farmOf(), 2027, [1], day(on));
  expect(workTakesInWords(late("2026-10-01"), "metric")).toMatch(
    /^1 bed kept, 1 bed dug: [\d.]+ hours, [\d.]+ cubic metres of leaves laid 20 centimetres deep, 24 square metres of tarp, 90 clumps to lift, 90 left in the ground\.$/,
  );
  expect(isWinterWork(late("2026-10-01"))).toBe(true);
  expect(workTakesInWords(late("2027-06-10"), "metric")).toBe("1 bed kept, 1 bed dug: 1 hour, 90 left in the ground.");
  expect(isWinterWork(late("2027-06-10"))).toBe(false);
  expect(workTakesInWords(late("2027-08-01"), "metric")).toBe("1 bed kept, 1 bed dug: no work of this winter is left.");
});
