import { crop, curve, farm, monthDay, planting, snapshot } from "../../small-farm";

/** Ten stems a day from Monday 7 to Sunday 13 June, cut each day, kept four days. */
export const TEN_A_DAY = snapshot({
  farm: farm({ pickingWeekdays: [1, 2, 3, 4, 5, 6, 7], leadDays: 1 }),
  crops: [crop({ id: 1, holdDays: { count: 4, mark: "own", source: null } })],
  curves: [curve({ stemsPerPlantByWeek: [1], anchor: { kind: "day-of-year", firstCut: monthDay("06-07") } })],
  plantings: [planting({ id: 1, plantCount: 70 })],
});
