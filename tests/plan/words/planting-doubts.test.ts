import { describe, expect, test } from "vitest";
import { CLIMATE_STATIONS } from "#lib/domain/catalogue/climate-stations";
import type { BloomCurve } from "#lib/domain/records/curve";
import type { Farm } from "#lib/domain/records/farm-settings";
import type { Planting } from "#lib/domain/records/planting";
import { plantingDoubts } from "#lib/plan/words/planting-doubts";
import { bed, crop, curve, day, farm, monthDay, planting, snapshot, variety } from "../../small-farm";

type Case = { planting?: Partial<Planting>; curve?: Partial<BloomCurve>; farm?: Partial<Farm>; tender?: boolean };

const told = (given: Case) => {
  const grownCrop = crop({ id: 1, name: "Zinnia", tender: given.tender ?? true });
  const farmNow = snapshot({
    farm: farm(given.farm),
    crops: [grownCrop],
    curves: [curve({ anchor: { kind: "days-after-planting", days: 60 }, ...given.curve })],
  });
  const row = {
    planting: planting({ id: 0, ...given.planting }),
    bed: bed({ id: 1, lengthMetres: 30, widthMetres: 1.22 }),
  };
  return plantingDoubts(farmNow, { ...row, variety: variety({ id: 1 }), crop: grownCrop });
};

describe("a planting that can hardly be is met with a word", () => {
  test("70 plants of 20 May, cut in July, raise no doubt", () => {
    expect(told({})).toEqual([]);
  });

  test("100,000 plants in 37 square metres; 7,000 are not doubted", () => {
    expect(told({ planting: { plantCount: 100_000 }, farm: { units: "metric" } })).toEqual([
      {
        place: "plantCount",
        message:
          "100,000 plants on the 37 square metres of bed B1: not even tulips stand so close, 7,320 would be the most",
      },
    ]);
    expect(told({ planting: { plantCount: 7_000 } })).toEqual([]);
  });

  test("a tender crop set out before the last frost; not a hardy one, nor under a tunnel", () => {
    expect(told({ planting: { plantedOn: day("2027-04-10") } })).toEqual([
      {
        place: "plantedOn",
        message:
          "Zinnia is tender, and frost usually comes until 20 Apr, one year in ten after 4 May: set it out later, or cover it",
      },
    ]);
    expect(told({ planting: { plantedOn: day("2027-04-10") }, tender: false })).toEqual([]);
    const tunnel = {
      planting: { plantedOn: day("2027-04-10"), treatment: "tunnel" as const },
      curve: { treatment: "tunnel" as const },
    };
    expect(told(tunnel)).toEqual([]);
  });

  test("a first cut on the frost day or after it", () => {
    expect(told({ planting: { plantedOn: day("2027-08-19") } })).toEqual([
      {
        place: "plantedOn",
        message:
          "its first cut would come about 18 Oct, and the first frost is reckoned with on 18 Oct: set it out before, or choose another crop",
      },
    ]);
    expect(told({ planting: { plantedOn: day("2027-08-18") } })).toEqual([]);
  });

  test("a season too cool, and a planting year that is a slip of the pen", () => {
    const clock = { heatBaseC: 10, heatFrom: monthDay("05-20"), heatPlace: "Richmond, Virginia" };
    const cold = told({
      planting: { plantedOn: day("2027-09-20") },
      curve: clock,
      farm: { climate: CLIMATE_STATIONS[0] },
    });
    expect(cold.map(({ message }) => message)).toEqual([
      "planted on 2027-09-20 it never gathers the warmth that it needs to bloom in 2027: it is forecast at 0 stems. Mend the planting day or the season.",
    ]);
    expect(told({ planting: { plantedOn: day("2019-05-20") } })).toHaveLength(1);
  });
});
