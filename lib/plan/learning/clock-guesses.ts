import type { HeatClock, WarmthResponse } from "./heat-clock";

/**
 * Every clock that is tried on recorded seasons. The grids are ours; they were set on invented weather and invented plants and no recorded bloom:
 * bases round the 0 to 10 °C that handbooks give for cool- and warm-season plants, starts from early November to mid March.
 */
export function clockGuesses(): HeatClock[] {
  return RESPONSES.flatMap((response) =>
    FALLS.flatMap(([fallPerDay, fallPerColdDay]) =>
      START_DAYS.map((startDay) => ({ startDay, response, fallPerDay, fallPerColdDay })),
    ),
  );
}

const START_DAYS = [-60, -30, 0, 10, 20, 31, 45, 59, 74];

const RESPONSES: readonly WarmthResponse[] = [
  ...[-4, -2, -1, 0, 1, 2, 3, 4, 5, 6, 7, 8, 10].map((baseC) => ({ baseC })),
  ...[1.5, 2.2, 3.5].map((perTenDegrees) => ({ perTenDegrees })),
];

/** Falls by day and by cold day: none, or one of the two. */
const FALLS: readonly (readonly [number, number])[] = [
  [0, 0],
  ...[0.0025, 0.005, 0.01, 0.015, 0.02, 0.03, 0.05].map((perDay) => [perDay, 0] as const),
  ...[0.005, 0.01, 0.015, 0.02, 0.03, 0.05].map((perColdDay) => [0, perColdDay] as const),
];
