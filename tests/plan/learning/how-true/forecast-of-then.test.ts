import { beforeAll, describe, expect, test } from "vitest";
import { closeFarm, openFarm } from "#db/client";
import { loadSnapshot } from "#db/read/read";
import { DEMO_SEASON } from "#demo/demo-season";
import { startDemoFarm } from "#demo/start-demo-farm";
import { type Day, toDay, toDayNumber } from "#lib/domain/day";
import { recordedDays, weatherOfDays } from "#lib/domain/records/weather-day";
import type { Snapshot } from "#lib/domain/snapshot";
import { seededRandom, wholeBetween } from "#lib/maths/random";
import { forecastOfThen } from "#lib/plan/learning/how-true/forecast-of-then";
import { shownSeason } from "#lib/plan/learning/season/season-lesson";
import { type Forecast, forecast } from "#lib/plan/road/forecast";
import { bed, crop, curve, day, farm, planting, snapshot } from "../../../small-farm";
import { cut, look, numbered } from "./recorded";

/** What a forecast says, planting by planting. */
const said = ({ plantings }: Forecast) =>
  plantings.map(({ planting: { id }, firstCut, cutDays, cutStems }) => ({ id, firstCut, cutDays, cutStems }));

const THEN = toDayNumber(day("2027-06-01"));

describe("what was known then", () => {
  const FARM = snapshot({
    farm: farm({ killingFrosts: [day("2027-10-01")] }),
    crops: [crop({ id: 1, tender: true })],
    curves: [curve({ stemsPerPlantByWeek: [2, 2, 2, 2] })],
    beds: [1, 2, 3].map((id) => bed({ id })),
    plantings: [1, 2, 3].map((id) => planting({ id, bedId: id })),
    budLooks: numbered([look("2027-05-31", "buds showing", { daysToCut: 16 })]),
  });

  test("[HT1] nothing that is recorded on the day or later moves it: cuts, looks, losses, frosts, sprays, in any number", () => {
    const was = said(forecastOfThen(FARM, 2027, THEN));
    for (let seed = 1; seed <= 20; seed++) {
      const random = seededRandom(seed);
      const later = (): Day => toDay(THEN + wholeBetween(random, 0, 150));
      const bedId = wholeBetween(random, 1, 3);
      const rows = Array.from({ length: 5 }, later);
      const loss = { bedId, varietyId: 1, cause: "voles" as const, plantsBefore: 70, plantsLeft: 7 };
      const changed: Snapshot = {
        ...FARM,
        farm: farm({ killingFrosts: [day("2027-08-20")] }),
        cuts: numbered(rows.map((on) => cut(on, wholeBetween(random, 0, 90), { bedId }))),
        budLooks: numbered([...FARM.budLooks, ...rows.map((on) => look(on, "first bloom", { bedId }))]),
        losses: numbered(rows.map((seenOn) => ({ ...loss, seenOn }))),
        beds: FARM.beds.map((row) => ({ ...row, noEntryFrom: toDay(THEN), noEntryUntil: toDay(THEN + 30) })),
        plantings: FARM.plantings.map((row) => ({ ...row, daysLate: 9, yieldFactor: 0.4 })),
        shown: new Map([[1, { daysLate: 20, yieldFactor: 0.2 }]]),
      };
      expect(said(forecastOfThen(changed, 2027, THEN))).toEqual(was);
    }
  });

  test("[HT1] what was recorded the day before does: a first bloom, a loss, a spray", () => {
    const was = said(forecastOfThen(FARM, 2027, THEN));
    const eve = toDay(THEN - 1);
    const loss = { id: 1, bedId: 1, varietyId: 1, cause: "voles" as const, plantsBefore: 70, plantsLeft: 7 };
    const changes: Partial<Snapshot>[] = [
      { budLooks: [{ ...look(eve, "first bloom"), id: 1 }] },
      { losses: [{ ...loss, seenOn: eve }] },
      { beds: FARM.beds.map((row) => ({ ...row, noEntryFrom: eve, noEntryUntil: toDay(THEN + 30) })) },
    ];
    for (const given of changes) expect(said(forecastOfThen({ ...FARM, ...given }, 2027, THEN))).not.toEqual(was);
  });

  test("[HT1] [F16] what a season taught moves the seasons after it, and not its own", () => {
    const learned = [{ fromSeason: 2028, laterDays: 10, yieldFactor: 0.5 }];
    const taught = { ...FARM, curves: FARM.curves.map((row) => ({ ...row, learned })) };
    expect(said(forecastOfThen(taught, 2027, THEN))).toEqual(said(forecastOfThen(FARM, 2027, THEN)));
  });
});

describe("the demo's season of the year before", () => {
  let database: ReturnType<typeof openFarm>;
  beforeAll(() => {
    database = openFarm(":memory:");
    const written = startDemoFarm(database, DEMO_SEASON, day("2027-01-15"));
    if (!written.ok) throw new Error("the demo cannot be loaded");
    return () => closeFarm(database);
  });

  const read = (): Snapshot => {
    const found = loadSnapshot(database);
    if (!found.ok) throw new Error("the farm cannot be read");
    return found.parsed;
  };

  test("[HT1] is forecast as by the farm's own file from which every later record was deleted, row by row", () => {
    const whole = read();
    // From the last day back, so that one file serves them all.
    for (const then of ["2026-09-14", "2026-06-01", "2026-05-01", "2026-02-01"]) {
      for (const [table, column] of [
        ["cut", "cut_on"],
        ["bud_look", "looked_on"],
        ["loss", "seen_on"],
      ])
        database.$client.prepare(`DELETE FROM ${table} WHERE ${column} >= ?`).run(then);
      const left = read();
      const weather = left.weather && weatherOfDays(daysBefore(left.weather, then));
      const killingFrosts = left.farm.killingFrosts.filter((came) => came < then);
      const known = { ...left, weather, farm: { ...left.farm, killingFrosts } };
      const shown = shownSeason(known, 2026);
      const slow = forecast(shown ? { ...known, shown } : known, 2026);
      expect(said(forecastOfThen(whole, 2026, toDayNumber(day(then))))).toEqual(said(slow));
    }
  });
});

const daysBefore = (weather: NonNullable<Snapshot["weather"]>, then: string) =>
  recordedDays(weather)
    .filter(({ date }) => date < then)
    .map(({ date, highC, lowC }) => ({ day: toDayNumber(date), highC, lowC }));
