import { type FarmSize, LARGE, seededFarm, TYPICAL } from "#demo/seeded-farm";
import type { Snapshot } from "#lib/domain/snapshot";
import { plan } from "#lib/plan/road/plan";
import { SEASON } from "./network-builder";
import { wholly } from "./plan-rows";
import { type BenchRow, rowOf } from "./timing";
import { byWarmth } from "./weather-rows";

const SIZES: readonly { name: string; size: FarmSize; runCount: number }[] = [
  { name: "typical", size: TYPICAL, runCount: 61 },
  { name: "large", size: LARGE, runCount: 21 },
];

/** Whole plans whose first cuts are told by warmth and ten recorded years, each beside the same farm by the calendar, by turns in one run. */
export const clockRows = (): BenchRow[] =>
  SIZES.map(({ name, size, runCount }) => {
    const calendar = seededFarm(1, size);
    const warmth = byWarmth(calendar, 10);
    const times: { calendar: number[]; warmth: number[] } = { calendar: [], warmth: [] };
    for (let run = -WARM_UP_RUNS; run < runCount; run++) {
      const [byCalendar, byClock] = [timeOf(calendar), timeOf(warmth)];
      if (run < 0) continue;
      times.calendar.push(byCalendar);
      times.warmth.push(byClock);
    }
    const beside = rowOf("", times.calendar, "").medianMs;
    const row = rowOf(`whole plan with clocks, ${name}`, times.warmth, "1.3 times the same by the calendar");
    return {
      ...row,
      note: `${(row.medianMs / beside).toFixed(2)} times; least ${(row.lowMs / Math.min(...times.calendar)).toFixed(2)}`,
    };
  });

const WARM_UP_RUNS = 15;

function timeOf(farm: Snapshot): number {
  const start = performance.now();
  wholly(plan(farm, SEASON));
  return performance.now() - start;
}
