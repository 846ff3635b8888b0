import { describe, expect, test } from "vitest";
import { CLIMATE_STATIONS } from "#lib/domain/catalogue/climate-stations";
import { daysBetween, parseDay } from "#lib/domain/day";
import type { BloomCurve } from "#lib/domain/records/curve";
import { firstCutOn } from "../../first-cut-on";
import { curve, monthDay, planting } from "../../small-farm";

const RICHMOND = CLIMATE_STATIONS.find(({ station }) => station === "Richmond, Virginia") ?? null;

/** Cut 60 days after planting on 25 May in Richmond; grows above 10 °C. */
const annual = (given: Partial<BloomCurve> = {}): BloomCurve =>
  curve({
    anchor: { kind: "days-after-planting", days: 60 },
    heatBaseC: 10,
    heatFrom: monthDay("05-25"),
    heatPlace: "Richmond, Virginia",
    ...given,
  });
const plantedOn = (text: string) => planting({ id: 1, plantedOn: parseDay(text) });

describe("sown in place", () => {
  const fromBoth = (given: Partial<BloomCurve> = {}) => annual({ sowingDays: 14, ...given });
  const perennial = annual({
    anchor: { kind: "day-of-year", firstCut: monthDay("05-12") },
    heatFrom: monthDay("01-01"),
    sowingDays: 14,
  });
  const sownOn = (text: string) => ({ ...plantedOn(text), sown: true });

  test("[F1] by the calendar it takes the curve's 14 days more than from a plant set out", () => {
    expect(firstCutOn(fromBoth(), plantedOn("2027-05-25"))).toBe("2027-07-24");
    expect(firstCutOn(fromBoth(), sownOn("2027-05-25"))).toBe("2027-08-07");
  });

  test("[F1] sown 14 days before the known planting day, at the known place, it is cut on the known day; in the heat of July it takes fewer than 14 more", () => {
    expect(firstCutOn(fromBoth(), sownOn("2027-05-11"), RICHMOND)).toBe(
      firstCutOn(fromBoth(), plantedOn("2027-05-25"), RICHMOND),
    );
    const more = daysBetween(
      firstCutOn(fromBoth(), plantedOn("2027-07-15"), RICHMOND),
      firstCutOn(fromBoth(), sownOn("2027-07-15"), RICHMOND),
    );
    expect(more).toBeLessThan(14);
    expect(more).toBeGreaterThan(5);
  });

  test("[F1] a curve that knows no days from sowing, or blooms on a day of the year, counts the same", () => {
    expect(firstCutOn(annual(), sownOn("2027-05-25"))).toBe("2027-07-24");
    expect(firstCutOn(perennial, sownOn("2027-03-01"), RICHMOND)).toBe("2027-05-12");
  });
});
