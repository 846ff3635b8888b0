import { describe, expect, test } from "vitest";
import { CLIMATE_STATIONS } from "#lib/domain/catalogue/climate-stations";
import { parseDay } from "#lib/domain/day";
import { forecast } from "#lib/plan/road/forecast";
import { crop, curve, farm, monthDay, planting, snapshot } from "../small-farm";
import { catalogueCrop, catalogueCurve } from "./catalogue-curve";

/**
 * Zinnia stems a plant by planting month, Verona, Mississippi: 21.6 in May, 10.8 in June, 14.5 in July (ZIN-MS2008), so 0.67 of May in July. That June lay
 * below July is of that field; what we hold to is that July gives two thirds of May where the frost comes as late as there. Raleigh is as warm; that the
 * first frost at both is in early November is from memory.
 */
describe("zinnias by planting month", () => {
  const stemsOf = (planted: string, station: string, firstFrost: string) => {
    const { curves: _, ...facts } = catalogueCrop("Zinnia");
    const { frost } = farm();
    const farmNow = snapshot({
      farm: farm({
        climate: CLIMATE_STATIONS.find((row) => row.station === station) ?? null,
        pickingWeekdays: [1, 2, 3, 4, 5, 6, 7],
        frost: { ...frost, firstAutumnP50: monthDay(firstFrost), firstAutumnP90: monthDay(firstFrost) },
      }),
      crops: [crop({ id: 1, ...facts })],
      curves: [curve(catalogueCurve("Zinnia", "field"))],
      plantings: [planting({ id: 1, plantedOn: parseDay(`2027-${planted}`), plantCount: 100 })],
    });
    return forecast(farmNow, 2027).plantings[0].cutStems.reduce((sum, stems) => sum + stems, 0);
  };
  const byMonth = (station: string, firstFrost: string) =>
    ["05-15", "06-15", "07-15"].map((set) => stemsOf(set, station, firstFrost));

  test("those of mid July give two thirds of mid May, to a twentieth, where frost comes in November (0.67 in ZIN-MS2008)", () => {
    const [may, , july] = byMonth("Raleigh, North Carolina", "11-05");
    expect(Math.abs(july / may - 14.5 / 21.6)).toBeLessThan(0.05);
  });

  test("where frost comes in October they give fewer still, and each month fewer than the one before", () => {
    const [may, june, july] = byMonth("Asheville, North Carolina", "10-18");
    expect(june).toBeLessThan(may);
    expect(july).toBeLessThan(june);
    expect(july / may).toBeGreaterThan(0.35);
    expect(july / may).toBeLessThan(14.5 / 21.6);
  });
});
