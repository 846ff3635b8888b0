import { seededFarm, TYPICAL } from "#demo/seeded-farm";
import { pool } from "../../app/threads/pool";
import { startSureness } from "../../app/threads/start-sureness";
import { type BenchRow, rowOf } from "./timing";

const SEASON = 2027;
const PARTS = [0, 250, 500, 750];

/** A thousand sampled seasons of the typical farm on the two worker threads that the screens use, warm, messages included. */
export async function threadRows(): Promise<BenchRow[]> {
  // The threads do not keep a process alive by themselves.
  const awake = setInterval(() => {}, 1000);
  const farm = seededFarm(1, TYPICAL);
  const sample = () =>
    Promise.all(
      PARTS.map(
        (firstSeason) =>
          pool().start(farm, "sample", { seasonYear: SEASON, plans: [[]], seed: 1, firstSeason, seasonCount: 250 })
            .answer,
      ),
    );
  const sure = () =>
    startSureness(farm, { seasonYear: SEASON, keptBedIds: [2, 4], seasonCount: 1000 }, { told: () => {} }).answer;
  const firstLook = async () => {
    const ask = { seasonYear: SEASON, keptBedIds: [1, 3, 5], seasonCount: 1000 };
    // Another farm object each time: a thread that has met the farm has its networks ready.
    const { answer, stop } = startSureness({ ...farm }, ask, { told: ({ soFar }) => soFar && stop() });
    await answer;
  };
  const rows = [
    rowOf("1,000 seasons on two threads, typical farm", await times(sample), "1.5 s", "in four parts"),
    rowOf("1,000 seasons under two keep plans", await times(sure), "3 s", "as Keep or dig asks, in parts with a bar"),
    rowOf("the first look at two keep plans", await times(firstLook), "0.5 s", "and stopped; ever more seasons follow"),
  ];
  clearInterval(awake);
  return rows;
}

async function times(work: () => Promise<unknown>): Promise<number[]> {
  const measured: number[] = [];
  for (let run = 0; run < 5; run++) {
    const start = performance.now();
    await work();
    measured.push(performance.now() - start);
  }
  return measured.slice(1);
}
