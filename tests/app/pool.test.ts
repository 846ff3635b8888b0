import { describe, expect, test } from "vitest";
import { LARGE, seededFarm, TYPICAL } from "#demo/seeded-farm";
import type { Snapshot } from "#lib/domain/snapshot";
import { loadLinearSolver } from "#lib/maths/linear-programme";
import { keepSureness } from "#lib/plan/chance/keep-sureness";
import { winterBeds, withKeptBeds } from "#lib/plan/winter/beds";
import type { JobKind, Jobs } from "../../app/threads/jobs";
import { Pool, pool, type Running } from "../../app/threads/pool";
import { type SeasonsDone, startSureness } from "../../app/threads/start-sureness";
import { sampleSeasons } from "../plan/chance/sampled";
import { chosen } from "../plan/winter/chosen";
import { SEASON, winterFarm } from "../plan/winter/farm";

const farm = winterFarm(3, 14, 12, false);
const open = winterBeds(farm, SEASON).filter(({ forbidden }) => forbidden.length === 0);
const keptBedIds = open.slice(0, 2).map(({ bed }) => bed.id);

test("a thread finds the same beds as the server's own thread would", async () => {
  const here = chosen(farm, await loadLinearSolver());
  expect(await pool().start(farm, "cheapest", { seasonYear: SEASON }).answer).toEqual(here);
});

test("a job that fails is refused in words, and the jobs after it are done", async () => {
  const bad = pool().start(farm, "verdicts", { seasonYear: SEASON, keptBedIds: [-1] });
  const good = pool().start(farm, "verdicts", { seasonYear: SEASON, keptBedIds });
  await expect(bad.answer).rejects.toThrow("keptBedIds must be candidate beds without a flag, got -1");
  expect((await good.answer).filter(({ isKept }) => isKept).map(({ bedId }) => bedId)).toEqual(keptBedIds);
});

test("more jobs than threads wait their turn, and every one is about its own farm", async () => {
  const farms = [winterFarm(4, 10, 6, false), winterFarm(5, 10, 6, false), farm];
  const answers = await Promise.all(
    farms.map((one) => pool().start(one, "verdicts", { seasonYear: SEASON, keptBedIds: [] }).answer),
  );
  expect(answers.map((rows) => rows.map(({ bedId }) => bedId))).toEqual(
    farms.map((one) => winterBeds(one, SEASON).map(({ bed }) => bed.id)),
  );
});

/** However busy the machine is, no thread of these is ended under its job. */
const patient = new Pool(600_000);
/** However quick the machine is, a job of these that is stopped at once loses its thread. */
const impatient = new Pool(0);

/** Starts a job and waits until it has told of its first step. */
function begun<Kind extends JobKind>(snapshot: Snapshot, kind: Kind, ask: Jobs[Kind]["ask"], reader?: string) {
  return new Promise<Running<Kind>>((resolve, reject) => {
    const running = patient.start(snapshot, kind, ask, { reader, told: () => resolve(running) });
    running.answer.catch(reject);
  });
}

test("a job stopped at once ends with what it has: the curve without all of its points", async () => {
  const curve = patient.start(farm, "curve", { seasonYear: SEASON });
  curve.stop();
  expect((await curve.answer).length).toBeLessThan(open.length + 1);
});

describe("stopping", () => {
  const large = seededFarm(1, LARGE, SEASON);

  test("a choice under way on 210 beds ends with the best so far and a bound that no choice beats", async () => {
    const choosing = await begun(large, "cheapest", { seasonYear: SEASON });
    choosing.stop();
    const choice = await choosing.answer;
    expect(choice.status).toBe("stopped");
    expect(choosing.wasStopped()).toBe(true);
  });

  test("a job that waits for its turn never begins", async () => {
    const jobs = [0, 1, 2].map(() => patient.start(large, "curve", { seasonYear: SEASON }, { reader: "one" }));
    jobs[2].stop();
    await expect(jobs[2].answer).rejects.toThrow("Stopped before there was an answer.");
    jobs[0].stop();
    jobs[1].stop();
    expect(await Promise.all([jobs[0].answer, jobs[1].answer])).toEqual([[], []]);
  });

  test("a job deaf to the stop loses its thread; the job beside it begins again and is answered", async () => {
    const deaf = ["one", "two"].map((reader) =>
      impatient.start(large, "cheapest", { seasonYear: SEASON }, { reader: `deaf ${reader}` }),
    );
    const beside = impatient.start(farm, "verdicts", { seasonYear: SEASON, keptBedIds });
    for (const job of deaf) job.stop();
    for (const job of deaf) await expect(job.answer).rejects.toThrow("Stopped before there was an answer.");
    expect((await beside.answer).filter(({ isKept }) => isKept).map(({ bedId }) => bedId)).toEqual(keptBedIds);
  });

  test("sampled seasons are stopped in the midst of a part: the sum is over whole parts, whichever thread is the first", async () => {
    const ask = { seasonYear: SEASON, keptBedIds: [], seasonCount: 1000 };
    for (let time = 0; time < 4; time++) {
      const { stop, answer } = startSureness(farm, ask, { told: () => stop() });
      const { seasonCount } = await answer;
      expect(seasonCount % 5).toBe(0);
      expect(seasonCount).toBeGreaterThan(0);
      expect(seasonCount).toBeLessThan(1000);
    }
  });

  test("sampled seasons that are stopped at once are none, and that is said", async () => {
    const ask = { seasonYear: SEASON, keptBedIds: [], seasonCount: 1000 };
    const { stop, answer } = startSureness(farm, ask, { told: () => {} });
    stop();
    await expect(answer).rejects.toThrow("Stopped before a season was sampled.");
  });
});

describe("taking turns", () => {
  const shares = (index: number) => [0.3 + index / 100];

  test("forty long jobs of one reader do not hold up another: hers is answered while most of them wait", async () => {
    const typical = seededFarm(1, TYPICAL, SEASON);
    const small = winterFarm(6, 10, 6, false);
    let doneCount = 0;
    const crowd = Array.from({ length: 40 }, (_, index) =>
      pool().start(
        typical,
        "sweep",
        { seasonYear: SEASON, by: "survival", values: shares(index) },
        { reader: "crowd" },
      ),
    );
    for (const { answer } of crowd) answer.then(() => doneCount++).catch(() => {});
    await pool().start(small, "cheapest", { seasonYear: SEASON }, { reader: "another" }).answer;
    expect(doneCount).toBeLessThan(20);
    for (const { stop } of crowd) stop();
    await Promise.allSettled(crowd.map(({ answer }) => answer));
  });

  test("more than a reader may have waiting is refused in words, and others are not", async () => {
    const large = seededFarm(1, LARGE, SEASON);
    const crowd = Array.from({ length: 43 }, () =>
      patient.start(large, "curve", { seasonYear: SEASON }, { reader: "crowd" }),
    );
    await expect(crowd[42].answer).rejects.toThrow("Too much is being worked out already.");
    const another = await begun(farm, "cheapest", { seasonYear: SEASON }, "another");
    for (const { stop } of crowd) stop();
    await Promise.allSettled(crowd.map(({ answer }) => answer));
    expect((await another.answer).status).toBe("optimal");
  });
});

describe("seasons sampled in parts over both threads", () => {
  const sampled = (count: number) => {
    const [dug, kept] = [[], keptBedIds].map((ids) =>
      sampleSeasons(withKeptBeds(farm, SEASON, ids), SEASON, 1, 0, count),
    );
    return keepSureness(farm, SEASON, keptBedIds, dug, kept);
  };
  const askedFor = async (seasonCount: number) => {
    const told: SeasonsDone[] = [];
    const ask = { seasonYear: SEASON, keptBedIds, seasonCount };
    const answer = await startSureness(farm, ask, { told: (done) => told.push(done) }).answer;
    return { told, answer };
  };

  test("give what one run of them gives", async () => {
    const { told, answer } = await askedFor(60);
    expect(answer).toEqual(sampled(60));
    expect(told.at(-1)?.doneCount).toBe(60);
  });

  test("are summed up before they are all done, ever more of them, each look as those seasons alone would say", async () => {
    const { told } = await askedFor(300);
    const looks = told.flatMap(({ soFar }) => (soFar ? [soFar] : []));
    const counts = [...new Set(looks.map(({ seasonCount }) => seasonCount))];
    expect(counts.length).toBeGreaterThan(1);
    expect(counts).toEqual([...counts].sort((a, b) => a - b));
    // How many parts are done by then is chance; less than half of all they always are.
    expect(counts[0]).toBeLessThan(150);
    for (const look of looks) expect(look).toEqual(sampled(look.seasonCount));
  });
});
