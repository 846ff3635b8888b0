import { expect, test } from "vitest";
import { changedFigures, keptFigures, takenFigures, withFigures } from "#lib/domain/built-in-figures";
import { FROM_MEMORY, OWN } from "#lib/domain/sourced";
import { figureInWords } from "#lib/plan/words/figure-words";
import { provenPlan } from "../../proven-plan";
import { booking, crop, farm, focal, snapshot } from "../../small-farm";
import { figuresTaken } from "./figures-at-once";

/** A farm of before the months in trade were told, and a built-in list that tells them. */
const untold = snapshot({
  crops: [crop({ id: 1, tradeOrigin: FROM_MEMORY })],
  bookings: [booking({ id: 1, stemLines: focal(90) })],
});
const inTrade = {
  buyInMonths: [7, 8, 9, 10],
  buyInColours: ["white" as const, "plum" as const],
  tradeOrigin: FROM_MEMORY,
};
const { id: _, ...plain } = untold.crops[0];
const catalogue = [{ ...plain, ...inTrade, curves: [] }];

test("[W9] when and in what colours a crop is to be had is one figure: taken it comes with its mark, kept it is hers and not asked about again", () => {
  const changed = changedFigures(untold, catalogue);
  expect(changed[0].figures.map(({ of }) => of)).toEqual(["trade"]);
  const { was, is } = figureInWords(changed[0].figures[0], farm());
  expect([was, is]).toEqual(["all year; any colour", "July to October; white and plum"]);
  expect(takenFigures(changed).crops).toEqual([{ ...untold.crops[0], ...inTrade }]);
  const kept = withFigures(untold, keptFigures(changed));
  expect(kept.crops).toEqual([{ ...untold.crops[0], tradeOrigin: OWN }]);
  expect(changedFigures(kept, catalogue)).toEqual([]);
  expect(changedFigures(withFigures(untold, takenFigures(changed)), catalogue)).toEqual([]);
});

test("[W9] the order in which months and colours are named is no change", () => {
  const told = [{ ...untold.crops[0], ...inTrade }];
  const turned = { buyInMonths: [10, 9, 8, 7], buyInColours: ["plum" as const, "white" as const] };
  expect(changedFigures({ crops: told, curves: [] }, [{ ...catalogue[0], ...turned }])).toEqual([]);
});

test("[W9] months taken change what can be bought and leave the stems short as they were", () => {
  const before = provenPlan(untold, 2027);
  const { crops, shortBefore } = figuresTaken(before, changedFigures(untold, catalogue));
  expect(before.buying).toHaveLength(1);
  expect(crops[0].after.shortStems).toBe(shortBefore);
  const taken = withFigures(untold, takenFigures(changedFigures(untold, catalogue)));
  expect(provenPlan(taken, 2027).buying).toEqual([]);
});
