import { describe, expect, test } from "vitest";
import { FROST_STATIONS } from "#lib/domain/catalogue/frost-stations";
import { addDays, type Day, dayInYear, daysBetween, parseDay, toDay, toDayNumber } from "#lib/domain/day";
import { monthDaySchema } from "#lib/domain/day-schema";
import type { Treatment } from "#lib/domain/words";
import { forecastPlanting } from "#lib/plan/road/forecast";
import { NOTHING_SEEN } from "#lib/plan/road/plants-seen";
import { firstCutOn } from "../first-cut-on";
import { bed, crop, curve, farm, planting, variety } from "../small-farm";
import { catalogueCrop, catalogueCurve } from "./catalogue-curve";

/**
 * When dahlias bloom, USDA zone 7. The curve's own 13 weeks from planting to first harvest are published (ASCFG-2018VT); what they are held
 * against here are statements of common practice and published frost dates.
 */
const DAHLIAS = ["Dahlia", "Ball dahlia"] as const;
const YEARS = [2026, 2027, 2028];
const LATE_MAY = [25, 26, 27, 28, 29, 30, 31];

/** Median first autumn frosts of stations in and near the zone, mid to late October. */
const MEDIAN_FROSTS = FROST_STATIONS.map(({ frost }) => monthDaySchema.parse(frost.firstAutumnP50)).filter(
  (monthDay) => monthDay < "11-01",
);

const firstCut = (name: string, treatment: Treatment, plantedOn: Day): Day => {
  const set = planting({ id: 1, treatment, plantedOn, seasonYear: Number(plantedOn.slice(0, 4)) });
  return firstCutOn(curve(catalogueCurve(name, treatment)), set);
};

describe.each(DAHLIAS)("%s", (name) => {
  test("replanted in late May, it starts in late August or early September (common practice)", () => {
    for (const year of YEARS)
      for (const day of LATE_MAY) {
        const start = firstCut(name, "spring-planted", parseDay(`${year}-05-${day}`));
        expect(start >= parseDay(`${year}-08-20`) && start <= parseDay(`${year}-09-10`), start).toBe(true);
      }
  });

  test("kept in the ground, it starts in the first ten days of June (common practice, zone 7)", () => {
    for (const year of YEARS) {
      const start = firstCut(name, "kept-in-ground", parseDay(`${year}-01-01`));
      expect(start >= parseDay(`${year}-06-01`) && start <= parseDay(`${year}-06-10`), start).toBe(true);
    }
  });

  test("replanted in late May, it has six to eight whole weeks before a median frost of October (common practice)", () => {
    expect(MEDIAN_FROSTS.length).toBe(3);
    for (const year of YEARS)
      for (const day of LATE_MAY)
        for (const frost of MEDIAN_FROSTS) {
          const start = firstCut(name, "spring-planted", parseDay(`${year}-05-${day}`));
          const weeks = Math.floor(daysBetween(start, dayInYear(frost, year)) / 7);
          expect(weeks >= 6 && weeks <= 8, `${start} to ${frost}: ${weeks} weeks`).toBe(true);
        }
  });

  test("neither curve runs dry before a median frost of October: frost ends the bloom", () => {
    for (const frost of MEDIAN_FROSTS)
      for (const treatment of ["spring-planted", "kept-in-ground"] as const) {
        const weekCount = catalogueCurve(name, treatment).stemsPerPlantByWeek.length;
        const end = addDays(firstCut(name, treatment, parseDay("2027-05-25")), weekCount * 7);
        expect(end >= dayInYear(frost, 2027), `${treatment} ends ${end}, frost ${frost}`).toBe(true);
      }
  });

  test("kept beds start eleven weeks and more before replanted ones, with a first flush worth selling (common practice)", () => {
    const cutBefore = (treatment: Treatment, before: string) => {
      const { curves: _, ...facts } = catalogueCrop(name);
      const set = planting({
        id: 1,
        treatment,
        plantedOn: parseDay("2027-05-27"),
        plantCount: 100,
        winterSurvivalShare: 1,
      });
      const { cutDays, cutStems } = forecastPlanting(
        {
          planting: set,
          bed: bed({ id: 1 }),
          variety: variety({ id: 1 }),
          crop: crop({ id: 1, ...facts }),
          curve: curve(catalogueCurve(name, treatment)),
          firstCut: toDayNumber(firstCutOn(curve(catalogueCurve(name, treatment)), set)),
          ...{ movedDays: 0, heatEnd: null },
          bare: null,
          seen: NOTHING_SEEN,
          replanted: null,
          saleableShare: 1,
        },
        farm(),
        toDayNumber(parseDay("2027-10-18")),
      );
      return cutDays.reduce((sum, cut, index) => sum + (toDay(cut) < before ? cutStems[index] : 0), 0);
    };
    expect(
      daysBetween(
        firstCut(name, "kept-in-ground", parseDay("2027-05-27")),
        firstCut(name, "spring-planted", parseDay("2027-05-27")),
      ),
    ).toBeGreaterThanOrEqual(77);
    expect(cutBefore("spring-planted", "2027-08-20")).toBe(0);
    // How much is worth selling is our reading: 3 stems a plant by the first week of July, 5 before replanted beds start.
    expect(cutBefore("kept-in-ground", "2027-07-08")).toBeGreaterThanOrEqual(300);
    expect(cutBefore("kept-in-ground", "2027-08-20")).toBeGreaterThanOrEqual(500);
  });
});
