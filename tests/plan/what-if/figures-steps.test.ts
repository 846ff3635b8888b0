import { expect, test } from "vitest";
import { changedFigures } from "#lib/domain/built-in-figures";
import { CATALOGUE } from "#lib/domain/catalogue/crops";
import { figuresTakenSteps } from "#lib/plan/what-if/figures-taken";
import { provenPlan } from "../../proven-plan";
import { crop, curve, snapshot, variety } from "../../small-farm";
import { catalogueCrop } from "../../truth/catalogue-curve";
import { figuresTaken } from "./figures-at-once";

/** Three built-in crops whose every hold is a day longer than the tool says today. */
const names = ["Stock", "Zinnia", "Cosmos"];
const farmNow = snapshot({
  crops: names.map((name, index) => {
    const { curves: _, ...facts } = catalogueCrop(name);
    return crop({ ...facts, id: index + 1, holdDays: { ...facts.holdDays, count: facts.holdDays.count + 1 } });
  }),
  varieties: names.map((_, index) => variety({ id: index + 1, cropId: index + 1 })),
  curves: names.map((name, index) => curve({ ...catalogueCrop(name).curves[0], id: index + 1, cropId: index + 1 })),
});
const changed = changedFigures(farmNow, CATALOGUE);

test("[W9] a season is planned with each crop's figures and then with all of them, and each plan made is told", () => {
  const steps = figuresTakenSteps(provenPlan(farmNow, 2027), changed);
  const told: unknown[] = [];
  for (let step = steps.next(); !step.done; step = steps.next()) told.push(step.value);
  expect(told).toEqual([1, 2, 3, 3].map((doneCount) => ({ doneCount, ofCount: 4 })));
});

test("[W9] stopped after any plan, those made stay what they are, and what all of them would do is not said", () => {
  const plan = provenPlan(farmNow, 2027);
  const whole = figuresTaken(plan, changed);
  expect(whole.shortAfterAll).not.toBeNull();
  for (const stopAfter of [1, 2, 3]) {
    const steps = figuresTakenSteps(plan, changed);
    for (let made = 0; made < stopAfter; made++) steps.next();
    const stopped = steps.next(true);
    expect(stopped.done).toBe(true);
    expect(stopped.value).toEqual({ ...whole, crops: whole.crops.slice(0, stopAfter), shortAfterAll: null });
  }
});
