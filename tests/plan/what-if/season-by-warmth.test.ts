import { expect, test } from "vitest";
import { CLIMATE_STATIONS } from "#lib/domain/catalogue/climate-stations";
import { forecast } from "#lib/plan/road/forecast";
import { applyChanges } from "#lib/plan/what-if/what-if";
import { curve, day, farm, monthDay, planting, snapshot } from "../../small-farm";

test("[W5] where warmth tells a first cut, ten days late are ten days for every planting day, and ten early take them back", () => {
  const climate = CLIMATE_STATIONS[0];
  const annual = curve({
    anchor: { kind: "days-after-planting", days: 60 },
    heatBaseC: 10,
    heatFrom: monthDay("05-25"),
    heatPlace: climate.station,
  });
  const byWarmth = snapshot({
    farm: farm({ climate }),
    curves: [annual],
    plantings: ["2027-04-20", "2027-05-25", "2027-06-20"].map((set, index) =>
      planting({ id: index + 1, plantedOn: day(set) }),
    ),
  });
  const cuts = (...days: number[]) => {
    const shifts = days.map((by) => ({ kind: "season-shifted" as const, days: by, cropId: null }));
    return forecast(applyChanges(byWarmth, 2027, shifts).snapshot, 2027).plantings.map(({ firstCut }) => firstCut ?? 0);
  };
  expect(cuts(10)).toEqual(cuts().map((cut) => cut + 10));
  expect(cuts(10, -10, -3)).toEqual(cuts().map((cut) => cut - 3));
});
