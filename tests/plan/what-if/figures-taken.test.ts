import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { changedFigures, keptFigures, takenFigures, withFigures } from "#lib/domain/built-in-figures";
import { CATALOGUE } from "#lib/domain/catalogue/crops";
import type { CatalogueCrop, CatalogueCurve } from "#lib/domain/catalogue-types";
import type { Snapshot } from "#lib/domain/snapshot";
import { COMMON_PRACTICE, OWN } from "#lib/domain/sourced";
import { figureInWords } from "#lib/plan/words/figure-words";
import { provenPlan } from "../../proven-plan";
import { booking, crop, curve, farm, focal, monthDay, snapshot } from "../../small-farm";
import { anyFarm } from "../any-farm";
import { figuresTaken } from "./figures-at-once";

const SEED = 20_270_615;

/** The small farm's crop and curve, as they came with the tool. */
const cropRow = {
  ...crop({ id: 1 }),
  holdDays: { count: 5, ...COMMON_PRACTICE },
  buyInCents: { count: 300, ...COMMON_PRACTICE },
};
const curveRow = { ...curve(), timingOrigin: COMMON_PRACTICE, yieldOrigin: COMMON_PRACTICE };
const asked = snapshot({
  crops: [cropRow],
  curves: [curveRow],
  bookings: [booking({ id: 1, stemLines: focal(90) })],
});

const withoutId = <T extends { id: number }>({ id: _, ...rest }: T) => rest;
const builtIn = (change: Partial<CatalogueCrop>, ofCurve: Partial<CatalogueCurve> = {}): CatalogueCrop[] => {
  const { id: _id, cropId: _crop, varietyId: _variety, plantingId: _planting, ...plain } = curveRow;
  return [{ ...withoutId(cropRow), ...change, curves: [{ ...plain, ...ofCurve }] }];
};

describe("built-in figures that changed", () => {
  test("[W9] ten stems a day, four days in the hold window, 90 asked: 50 short; with twice the stems a plant, 10; and only the stems of that curve differ", () => {
    const catalogue = builtIn({}, { stemsPerPlantByWeek: curveRow.stemsPerPlantByWeek.map((stems) => 2 * stems) });
    const changed = changedFigures(asked, catalogue);
    expect(changed.map(({ figures }) => figures.map(({ of }) => of))).toEqual([["yield"]]);
    const plan = provenPlan(asked, 2027);
    const { shortBefore, shortAfterAll, crops } = figuresTaken(plan, changed);
    expect([shortBefore, shortAfterAll]).toEqual([50, 10]);
    expect(crops[0]).toMatchObject({
      before: { shortStems: 50, cutStems: 70 },
      after: { shortStems: 10, cutStems: 140 },
    });
    const taken = withFigures(asked, takenFigures(changed));
    expect(taken.crops).toBe(asked.crops);
    expect(taken.curves[0]).toEqual({ ...curveRow, stemsPerPlantByWeek: taken.curves[0].stemsPerPlantByWeek });
  });

  test("[W9] a number of hers is never offered, whatever the tool says: hold, price, timing and yield alike", () => {
    const own = {
      ...asked,
      crops: [{ ...cropRow, holdDays: { count: 5, ...OWN }, buyInCents: { count: 300, ...OWN } }],
      curves: [{ ...curveRow, timingOrigin: OWN, yieldOrigin: OWN }],
    };
    const catalogue = builtIn(
      { holdDays: { count: 9, ...COMMON_PRACTICE }, buyInCents: { count: 9, ...COMMON_PRACTICE } },
      { stemsPerPlantByWeek: [9], firstCutSpreadDays: 20 },
    );
    expect(changedFigures(own, catalogue)).toEqual([]);
    expect(changedFigures(asked, catalogue)[0].figures.map(({ of }) => of)).toEqual([
      "number",
      "number",
      "timing",
      "yield",
    ]);
  });

  test("[W9] timing taken leaves the stems as they were, and the other way round", () => {
    const catalogue = builtIn({}, { firstCutSpreadDays: 20, stemsPerPlantByWeek: [9], note: "new" });
    const [{ figures, ...whose }] = changedFigures(asked, catalogue);
    const only = (of: string) =>
      takenFigures([{ ...whose, figures: figures.filter((figure) => figure.of === of) }]).curves[0];
    expect(only("timing")).toEqual({ ...curveRow, firstCutSpreadDays: 20, note: "new" });
    expect(only("yield")).toEqual({ ...curveRow, stemsPerPlantByWeek: [9], note: "new" });
  });

  test("[W9] a clock is part of the timing: a built-in one is offered in words, and a first cut or a clock of hers is not touched", () => {
    const clock = { heatBaseC: 10, heatFrom: monthDay("05-25"), heatOrigin: COMMON_PRACTICE };
    const changed = changedFigures(asked, builtIn({}, clock));
    expect(changed[0].figures.map(({ of }) => of)).toEqual(["timing"]);
    expect(figureInWords(changed[0].figures[0], farm()).is).toContain("follows warmth above 50 °F");
    expect(takenFigures(changed).curves[0]).toEqual({ ...curveRow, ...clock });
    const hers = { ...curveRow, ...clock, heatBaseC: 7, heatOrigin: OWN };
    expect(changedFigures({ ...asked, curves: [hers] }, builtIn({}, clock))).toEqual([]);
  });

  test("[W9] what ends a bloom is part of its timing, and said where it differs", () => {
    const changed = changedFigures(asked, builtIn({}, { ends: "heat", endHighC: 26.7 }));
    const { was, is } = figureInWords(changed[0].figures[0], farm());
    expect(was).toContain("It ends with the last of its weeks.");
    expect(is).toContain("It ends with heat, or the last of its weeks, at a usual high of 80.1 °F.");
    expect(is).not.toContain("calendar");
  });

  test("[W9] a plant's age is part of its stems, and said where it differs", () => {
    const [{ figures }] = changedFigures(asked, builtIn({}, { shareByAge: [0, 0.5, 1] }));
    expect(figures.map(({ of }) => of)).toEqual(["yield"]);
    const { was, is } = figureInWords(figures[0], farm());
    expect(was).toContain("The same at any age.");
    expect(is).toContain("Of that in each season of its life: 0 %, 50 %, 100 %, and so on.");
  });

  test("a new source for the same number, a crop of her own and a curve of one variety or planting are no change", () => {
    const published = { mark: "published", source: "X" } as const;
    expect(changedFigures(asked, builtIn({ holdDays: { count: 5, ...published } }))).toEqual([]);
    expect(changedFigures(asked, builtIn({ name: "Another" }, { stemsPerPlantByWeek: [9] }))).toEqual([]);
    const ofPlanting = { ...asked, curves: [{ ...curveRow, plantingId: 1 }] };
    expect(changedFigures(ofPlanting, builtIn({}, { stemsPerPlantByWeek: [9] }))).toEqual([]);
    const ofVariety = { ...asked, curves: [{ ...curveRow, varietyId: 1 }] };
    expect(changedFigures(ofVariety, builtIn({}, { stemsPerPlantByWeek: [9] }))).toEqual([]);
  });

  test("a price and a timing are said in the farm's words, old and new", () => {
    const catalogue = builtIn({ buyInCents: { count: 275, ...COMMON_PRACTICE } }, { firstCutSpreadDays: 20 });
    const [{ figures }] = changedFigures(asked, catalogue);
    const said = figures.map((figure) => figureInWords(figure, farm()));
    expect(said.map(({ was, is }) => [was, is])).toEqual([
      ["$3.00", "$2.75"],
      [expect.stringMatching(/give or take/), expect.stringMatching(/, give or take 20 days\.$/)],
    ]);
  });
});

/** The curves of a crop as if they were built in, each with a change. */
const builtInCurves = (
  curves: Snapshot["curves"],
  ofCrop: number,
  change: (plain: CatalogueCurve) => Partial<CatalogueCurve>,
): CatalogueCurve[] =>
  curves
    .filter(({ cropId, varietyId }) => cropId === ofCrop && varietyId === null)
    .map(({ id: _id, cropId: _crop, varietyId: _variety, plantingId: _planting, ...plain }) => ({
      ...plain,
      ...change(plain),
    }));

test("[W9] on any farm, a crop by itself is short of what the plan with its figures taken is, grown or not", () => {
  fc.assert(
    fc.property(anyFarm, fc.boolean(), fc.nat(2), (any, isPrice, more) => {
      const marked = {
        ...any,
        crops: any.crops.map((row) => ({
          ...row,
          holdDays: { ...row.holdDays, ...COMMON_PRACTICE },
          buyInCents: { ...row.buyInCents, ...COMMON_PRACTICE },
        })),
        curves: any.curves.map((row) => ({ ...row, timingOrigin: COMMON_PRACTICE, yieldOrigin: COMMON_PRACTICE })),
      };
      const catalogue = marked.crops.map((row) => ({
        ...withoutId(row),
        holdDays: { ...row.holdDays, count: row.holdDays.count + (isPrice ? 3 : 0) },
        buyInCents: { ...row.buyInCents, count: row.buyInCents.count + (isPrice ? 40 : 0) },
        curves: builtInCurves(marked.curves, row.id, (plain) => ({
          firstCutSpreadDays: plain.firstCutSpreadDays + 1,
          stemsPerPlantByWeek: plain.stemsPerPlantByWeek.map((stems) => stems + more),
        })),
      }));
      const changed = changedFigures(marked, catalogue);
      const { crops, shortBefore } = figuresTaken(provenPlan(marked, 2027), changed);
      const shortOf = (farmNow: Snapshot) =>
        provenPlan(farmNow, 2027).gaps.reduce((sum, { shortStems }) => sum + shortStems, 0);
      expect(shortBefore).toBe(shortOf(marked));
      for (const { changed: one, after } of crops)
        expect(after.shortStems).toBe(shortOf(withFigures(marked, takenFigures([one]))));
    }),
    { seed: SEED, numRuns: 40 },
  );
});

test("[W9] on any farm, taken or kept, nothing is left to ask; kept, the plan stays what it was", () => {
  fc.assert(
    fc.property(anyFarm, fc.nat(3), (any, extra) => {
      const marked = {
        ...any,
        crops: any.crops.map((row) => ({ ...row, holdDays: { ...row.holdDays, ...COMMON_PRACTICE } })),
        curves: any.curves.map((row) => ({ ...row, timingOrigin: COMMON_PRACTICE, yieldOrigin: COMMON_PRACTICE })),
      };
      const catalogue = marked.crops.map((row) => ({
        ...withoutId(row),
        holdDays: { ...row.holdDays, count: row.holdDays.count + extra },
        curves: builtInCurves(marked.curves, row.id, (plain) => ({
          firstCutSpreadDays: plain.firstCutSpreadDays + extra,
          stemsPerPlantByWeek: [...plain.stemsPerPlantByWeek, extra],
        })),
      }));
      const changed = changedFigures(marked, catalogue);
      const taken = withFigures(marked, takenFigures(changed));
      expect(changedFigures(taken, catalogue)).toEqual([]);
      const kept = withFigures(marked, keptFigures(changed));
      expect(changedFigures(kept, catalogue)).toEqual([]);
      const short = (farmNow: Snapshot) => provenPlan(farmNow, 2027).match.shortStems;
      expect(short(kept)).toEqual(short(marked));
    }),
    { seed: SEED, numRuns: 40 },
  );
});

test("a farm that starts with the catalogue has nothing to be asked about", () => {
  const rows = CATALOGUE.map(({ curves: _, ...row }, index) => ({ ...row, id: index + 1 }));
  const curves = CATALOGUE.flatMap(({ curves: ofCrop }, index) => ofCrop.map((row) => ({ ...row, cropId: index + 1 })));
  const numbered = curves.map((row, index) => ({ ...row, id: index + 1, varietyId: null, plantingId: null }));
  expect(changedFigures({ crops: rows, curves: numbered }, CATALOGUE)).toEqual([]);
});
