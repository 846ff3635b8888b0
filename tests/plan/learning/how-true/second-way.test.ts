import { expect, test } from "vitest";
import { demoSnapshot } from "#demo/demo-snapshot";
import { addDays, isoWeekOf, mondayOfIsoWeek, parseDay, toDayNumber } from "#lib/domain/day";
import type { Snapshot } from "#lib/domain/snapshot";
import { forecastOfThen } from "#lib/plan/learning/how-true/forecast-of-then";
import { MADE } from "#lib/plan/learning/how-true/truth";
import type { Forecast } from "#lib/plan/road/forecast";
import { goodShareOn } from "#lib/plan/road/saleable-share";
import { howTrue } from "./recorded";

/** Forecasts of the demo's season before, each worked out once for the day on which it is asked. */
const forecasts = new Map<string, Forecast>();
function forecastOn(snapshot: Snapshot, made: (typeof MADE)[number], came: string): Forecast | null {
  const monday = mondayOfIsoWeek(isoWeekOf(parseDay(came)));
  const on = {
    winter: parseDay("2026-02-01"),
    spring: parseDay("2026-05-01"),
    "four weeks ahead": addDays(monday, -28),
  };
  if (on[made] > came) return null;
  const known = forecasts.get(on[made]) ?? forecastOfThen(snapshot, 2026, toDayNumber(on[made]));
  forecasts.set(on[made], known);
  return known;
}

test("[HT2] [HT3] [HT4] [HT5] record by record, by looking each one up, the demo's season gives the same days and stems in every crop", () => {
  const demo = demoSnapshot(2027, parseDay("2027-01-15"));
  // Every third planting, so that it takes no minute.
  const snapshot = { ...demo, plantings: demo.plantings.filter(({ id }) => id % 3 === 0) };
  const truth = howTrue(snapshot, 2026);
  expect(truth.crops.length).toBeGreaterThan(20);
  for (const { crop, said } of truth.crops)
    for (const made of MADE) {
      const { late, came, stemsSaid, off } = recordByRecord(snapshot, crop.id, made);
      expect(late.length).toBe(said[made].timing?.plantingCount ?? 0);
      const mean = late.reduce((sum, days) => sum + days, 0) / Math.max(1, late.length);
      expect(said[made].timing?.daysLate ?? 0).toBeCloseTo(mean, 9);
      const { cameStems = 0, saidStems = 0, offStems = 0 } = said[made].stems ?? {};
      expect([cameStems, saidStems, offStems]).toEqual([came, stemsSaid, off]);
    }
});

/** Whether a look at buds, or a day on which none were cut, shows in the week before a first cut that nothing stood open. */
function wasShut(cutOn: string, looks: Snapshot["budLooks"], cuts: Snapshot["cuts"]): boolean {
  const from = addDays(parseDay(cutOn), -7);
  const isNear = (on: string) => on >= from && on < cutOn;
  return looks.some(({ lookedOn }) => isNear(lookedOn)) || cuts.some((row) => isNear(row.cutOn));
}

/** The demo keeps no first cuts, cuts on Thursdays alone, to a list, and leaves nothing to stand. */
function recordByRecord(snapshot: Snapshot, cropId: number, made: (typeof MADE)[number]) {
  const varieties = snapshot.varieties.filter((row) => row.cropId === cropId).map(({ id }) => id);
  const plantings = snapshot.plantings.filter((row) => row.seasonYear === 2026 && varieties.includes(row.varietyId));
  const late: number[] = [];
  for (const { id, bedId, varietyId } of plantings) {
    const isHere = (row: { bedId: number; varietyId: number }) => row.bedId === bedId && row.varietyId === varietyId;
    if (plantings.filter(isHere).length > 1) continue;
    const looks = snapshot.budLooks.filter((row) => isHere(row) && row.lookedOn.startsWith("2026"));
    const cuts = snapshot.cuts.filter((row) => isHere(row) && row.cutOn.startsWith("2026"));
    const first = (days: string[]): string | undefined => days.sort()[0];
    const bloom = first(looks.filter(({ sign }) => sign === "first bloom").map(({ lookedOn }) => lookedOn));
    const cutOn = first(cuts.filter(({ stemsCut }) => stemsCut > 0).map((row) => row.cutOn));
    if (bloom !== undefined) {
      const came = cutOn !== undefined && cutOn < bloom ? cutOn : bloom;
      const row = forecastOn(snapshot, made, came)?.plantings.find(({ planting }) => planting.id === id);
      if (row && row.firstCut !== null) late.push(toDayNumber(parseDay(came)) - row.firstCut);
    } else if (cutOn !== undefined && wasShut(cutOn, looks, cuts)) {
      const row = forecastOn(snapshot, made, cutOn)?.plantings.find(({ planting }) => planting.id === id);
      if (row && row.cutDays.length > 0) late.push(toDayNumber(parseDay(cutOn)) - row.cutDays[0]);
    }
  }
  let [came, stemsSaid, off] = [0, 0, 0];
  const days = new Set(snapshot.cuts.filter(({ cutOn }) => cutOn.startsWith("2026")).map(({ cutOn }) => cutOn));
  const places = new Set(plantings.map(({ bedId, varietyId }) => `${bedId} ${varietyId}`));
  for (const cutOn of days)
    for (const place of places) {
      const [bedId, varietyId] = place.split(" ").map(Number);
      const cuts = snapshot.cuts.filter(
        (row) => row.cutOn === cutOn && row.bedId === bedId && row.varietyId === varietyId,
      );
      const rows = forecastOn(snapshot, made, cutOn)?.plantings.filter(
        ({ planting }) => planting.bedId === bedId && planting.varietyId === varietyId,
      );
      if (cuts.length === 0 || !rows) continue;
      let [cut, asked, stands] = [0, 0, 0];
      for (const row of cuts) {
        cut += row.stemsCut;
        asked += row.stemsAsked ?? Number.NaN;
      }
      for (const { cutDays, cutStems } of rows)
        cutDays.forEach((on, at) => {
          if (on === toDayNumber(cutOn)) stands += cutStems[at];
        });
      const share = goodShareOn(rows[0], toDayNumber(cutOn));
      const [good, known] = [cut, Math.max(cut, asked)].map((stems) => Math.floor(stems * share + 1e-9));
      came += good;
      stemsSaid += Math.min(stands, known);
      off += Math.abs(good - Math.min(stands, known));
    }
  return { late, came, stemsSaid, off };
}
