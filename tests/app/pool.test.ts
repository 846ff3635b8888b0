import { expect, test } from "vitest";
import { loadMixedIntegerSolver } from "#lib/maths/mixed-integer";
import { keepSureness } from "#lib/plan/chance/keep-sureness";
import { sampleSeasons } from "#lib/plan/chance/simulation";
import { winterBeds, withKeptBeds } from "#lib/plan/winter/beds";
import { chooseBeds, finished } from "#lib/plan/winter/choose-beds";
import { pool } from "../../app/threads/pool";
import { startSureness } from "../../app/threads/start-sureness";
import { SEASON, winterFarm } from "../plan/winter/farm";

const farm = winterFarm(3, 14, 12, false);
const open = winterBeds(farm, SEASON).filter(({ forbidden }) => forbidden.length === 0);
const keptBedIds = open.slice(0, 2).map(({ bed }) => bed.id);

test("a thread finds the same beds as the server's own thread would", async () => {
  const here = finished(chooseBeds(farm, SEASON, await loadMixedIntegerSolver()));
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

test("a job stopped at once ends with what it has: the curve without all of its points", async () => {
  const curve = pool().start(farm, "curve", { seasonYear: SEASON });
  curve.stop();
  expect((await curve.answer).length).toBeLessThan(open.length + 1);
});

test("seasons sampled in parts over both threads give what one run of them gives", async () => {
  const told: number[] = [];
  const ask = { seasonYear: SEASON, keptBedIds, seasonCount: 60 };
  const { answer } = startSureness(farm, ask, ({ doneCount }) => told.push(doneCount));
  const [dug, kept] = [[], keptBedIds].map((ids) =>
    sampleSeasons(withKeptBeds(farm, SEASON, ids), SEASON, 1, 0, 60, { openDays: [] }),
  );
  expect(await answer).toEqual(keepSureness(farm, SEASON, keptBedIds, dug, kept));
  expect(told.at(-1)).toBe(60);
});
