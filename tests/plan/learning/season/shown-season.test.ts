import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { seededFarm } from "#demo/seeded-farm";
import { toDay, toDayNumber } from "#lib/domain/day";
import type { Cut } from "#lib/domain/records/cut";
import { seededRandom } from "#lib/maths/random";
import { plantingEvidence } from "#lib/plan/learning/season/planting-evidence";
import { plantingPosterior } from "#lib/plan/learning/season/planting-posterior";
import { readyStems } from "#lib/plan/learning/season/ready-stems";
import { shownSeason } from "#lib/plan/learning/season/season-lesson";
import { seasonPosterior } from "#lib/plan/learning/season/season-posterior";
import { frostDayOf } from "#lib/plan/road/forecast";
import { grown } from "#lib/plan/road/grown";
import { pickingDays } from "#lib/plan/road/picking-days";
import type { Plan } from "#lib/plan/road/plan";
import { booking, crop, curve, day, farm, focal, monthDay, planting, snapshot } from "../../../small-farm";
import { anySeed } from "../../any-farm";
import { anyGarden, anySeason, lived, on, shortOf } from "../../road/lived-season";
import {
  foundStems,
  type InventedPlanting,
  inventedPlanting,
  isPickingDay,
  otherSeason,
  ownSeason,
  pickedToTheList,
} from "./invented-watch";

/** All that stands ready in every planting on each picking day up to a day, so late and so heavy, cut for nobody. */
function allThatWasReady(snap: ReturnType<typeof snapshot>, until: number, daysLate = 0, factor = 1): Cut[] {
  const next = pickingDays(snap.farm.pickingWeekdays);
  return grown(snap, 2027).flatMap((row) => {
    if (row.firstCut === null) return [];
    const ready = readyStems(row, snap.farm, frostDayOf(snap.farm, 2027));
    const days = Array.from(
      { length: Math.max(0, until - row.firstCut + 30) },
      (_, at) => (row.firstCut ?? 0) - 30 + at,
    );
    return days
      .filter((on) => next(on, row.bed) === on && ready(on, daysLate) > 0)
      .map((on) => ({
        ...{ id: on * 1000 + row.planting.id, cutOn: toDay(on), bedId: row.bed.id, varietyId: row.variety.id },
        ...{ bookingId: null, stemsAsked: null, goodStems: Math.round(ready(on, daysLate) * factor) },
        restStands: false,
        stemsCut: Math.ceil((ready(on, daysLate) * factor) / (1 - (row.planting.gradeOutShare ?? 0))) + 1,
      }));
  });
}

const JULY = toDayNumber(day("2027-07-20"));

describe("what the plan reckons with", () => {
  test("[O5] a farm of 24 beds cut as expected to the last stem moves nothing; six days late and a fifth short, its beds are moved so", () => {
    const snap = seededFarm(5, { bedCount: 24, bookingCount: 10 });
    expect(shownSeason(snap, 2027)).toBeNull();
    const asExpected = shownSeason({ ...snap, cuts: allThatWasReady(snap, JULY) }, 2027);
    expect(asExpected).toBeNull();
    const cuts = allThatWasReady(snap, JULY, 6, 0.8);
    const late = shownSeason({ ...snap, cuts }, 2027);
    const cutIn = new Set(cuts.filter(({ stemsCut }) => stemsCut > 20).map(({ bedId }) => bedId));
    const moved = snap.plantings.filter(({ bedId }) => cutIn.has(bedId)).map(({ id }) => late?.get(id));
    expect(moved.length).toBeGreaterThan(4);
    const mean = (of: readonly number[]) => of.reduce((sum, one) => sum + one, 0) / of.length;
    expect(mean(moved.map((one) => one?.daysLate ?? 0))).toBeGreaterThan(4);
    expect(mean(moved.map((one) => one?.yieldFactor ?? 1))).toBeLessThan(0.9);
    for (const { yieldFactor } of late?.values() ?? []) expect((yieldFactor * 20) % 1).toBeCloseTo(0, 9);
  });

  test("[O5] of any farm of which nothing was seen nothing is moved, so that its forecast is the forecast to the stem", () => {
    fc.assert(
      fc.property(anyGarden, (snap) => {
        expect(shownSeason({ ...snap, cuts: [], budLooks: [] }, 2027)).toBeNull();
      }),
      { ...anySeed, numRuns: 40 },
    );
  });

  test("[O5] what the grower says herself stands in its place, field by field", () => {
    const shown = new Map([[1, { daysLate: 6, yieldFactor: 0.8 }]]);
    const firstCut = (given: Partial<ReturnType<typeof planting>>) => {
      const [row] = grown(snapshot({ plantings: [planting({ id: 1, ...given })], shown }), 2027);
      return [toDay(row.firstCut ?? 0), row.saleableShare];
    };
    expect(firstCut({})).toEqual(["2027-06-13", 0.8]);
    expect(firstCut({ daysLate: 0 })).toEqual(["2027-06-07", 0.8]);
    expect(firstCut({ daysLate: -2, yieldFactor: 1 })).toEqual(["2027-06-05", 1]);
  });
});

describe("a plan within a season that has shown something", () => {
  /** Ten stems a day from Monday 7 to Sunday 13 June, cut each day, for a wedding of 20 on Friday and one of 40 on Sunday. */
  const FARM = snapshot({
    farm: farm({ pickingWeekdays: [1, 2, 3, 4, 5, 6, 7], leadDays: 1 }),
    crops: [crop({ id: 1, holdDays: { count: 4, mark: "own", source: null } })],
    curves: [curve({ stemsPerPlantByWeek: [1], anchor: { kind: "day-of-year", firstCut: monthDay("06-07") } })],
    plantings: [planting({ id: 1, plantCount: 70 })],
    bookings: [
      booking({ id: 1, eventOn: day("2027-06-11"), stemLines: focal(20) }),
      booking({ id: 2, eventOn: day("2027-06-13"), stemLines: focal(40) }),
    ],
  });

  test("[O5] on Thursday half the yield is half of Thursday to Saturday, and what was cut by Wednesday stays", () => {
    const shown = new Map([[1, { daysLate: 0, yieldFactor: 0.5 }]]);
    expect(shortOf(on(FARM, "2027-06-10"))).toEqual([0, 0]);
    // Sunday's has Wednesday's ten and five of each of three days, Friday's had its twenty.
    const { match } = on({ ...FARM, shown }, "2027-06-10");
    expect([...match.shortStems].reduce((sum, stems) => sum + stems, 0)).toBe(15);
    const behind = match.servings.filter(({ cutDay }) => cutDay < toDayNumber(day("2027-06-10")));
    expect(behind.reduce((sum, { stems }) => sum + stems, 0)).toBe(30);
  });

  test("[O5] over lived seasons what lies behind is as it was without, and what lies well ahead is what the moved planting gives", () => {
    const some = fc.record({
      season: anySeason,
      daysLate: fc.integer({ min: -5, max: 9 }),
      twentieths: fc.integer({ min: 10, max: 28 }),
    });
    const FIELD_DAYS = 9;
    let counted = 0;
    fc.assert(
      fc.property(some, ({ season: { snap, seed, dayCount }, daysLate, twentieths }) => {
        const { cuts, today } = lived(snap, seed, dayCount);
        const shown = new Map(snap.plantings.map(({ id }) => [id, { daysLate, yieldFactor: twentieths / 20 }]));
        const [without, made] = [on({ ...snap, cuts }, today), on({ ...snap, cuts, shown }, today)];
        const behind = ({ match }: Plan) =>
          match.supplies.flatMap(({ variety, bookingId, days, stems }) =>
            days.flatMap((cutDay, at) => (cutDay < today ? [[variety.id, bookingId, cutDay, stems[at]]] : [])),
          );
        expect(behind(made)).toEqual(behind(without));
        for (const { planting: of, cutDays, usableStems } of made.forecast.plantings)
          cutDays.forEach((cutDay, at) => {
            if (cutDay <= today + FIELD_DAYS) return;
            const stems = made.match.supplies
              .flatMap(({ days, lots }) => lots[days.indexOf(cutDay)] ?? [])
              .filter(({ stand }) => stand.kind === "planting" && stand.planting.planting.id === of.id)
              .reduce((sum, lot) => sum + lot.stems, 0);
            expect(stems).toBe(usableStems[at]);
            counted += stems;
          });
      }),
      { ...anySeed, numRuns: 60 },
    );
    expect(counted).toBeGreaterThan(0);
  });
});

/** What plans that reckon with what was seen, and plans that do not, err by over the next four weeks, squared, planting by planting and week by week. */
function erred(seasonOf: typeof ownSeason, seasons: number) {
  const FARM: readonly InventedPlanting[] = [1, 2, 3].flatMap((cropId) =>
    [0, 1, 2].map((bed) =>
      inventedPlanting({
        ...{ id: cropId * 10 + bed, cropId, firstDay: 60 + cropId * 45 + bed * 14, weeks: Array(12).fill(30) },
        ...{ sharedSpreadDays: 5, ownSpreadDays: 4, yieldSpread: 0.3 },
      }),
    ),
  );
  const daysBetween = (from: number, to: number) => Array.from({ length: to - from }, (_, index) => from + index);
  const squares = { with: 0, without: 0 };
  for (let season = 1; season <= seasons; season++) {
    const date = [135, 166, 196, 227, 258][season % 5];
    const random = seededRandom(season);
    const turns = seasonOf(random, FARM);
    const seen = FARM.map((row, index) => ({
      ...row,
      timing: [],
      cuts: pickedToTheList(seededRandom(season * 100 + index), row, turns[index], daysBetween(70, date), 0.7),
    }));
    const measured = new Set(
      seen.filter(({ cuts }) => cuts.some(({ says }) => says !== "at least")).map(({ cropId }) => cropId),
    );
    const evidence = seen.map((row) => plantingEvidence(measured.has(row.cropId) ? row : { ...row, cuts: [] }));
    const posterior = seasonPosterior(evidence);
    const believed = posterior.crops.flatMap((one) => one.evidence.map((each) => plantingPosterior(each, one)));
    const ahead = daysBetween(date, date + 28).filter(isPickingDay);
    FARM.forEach((row, index) => {
      const { likeliestDaysLate, yieldFactor } =
        believed.find(({ plantingId }) => plantingId === row.id) ?? believed[0];
      for (let week = 0; week < 4; week++) {
        const days = ahead.filter((one) => Math.floor((one - date) / 7) === week);
        const stems = (of: (one: number) => number) => days.reduce((sum, one) => sum + of(one), 0);
        const came = stems((one) => foundStems(random, row, turns[index], one));
        const late = Math.abs(Math.round(likeliestDaysLate)) < 2 ? 0 : Math.round(likeliestDaysLate);
        const reckoned = Math.round(yieldFactor * 20) / 20;
        squares.with += (stems((one) => row.readyStems(one, late) * reckoned) - came) ** 2;
        squares.without += (stems((one) => row.readyStems(one, 0)) - came) ** 2;
      }
    });
  }
  return squares;
}

test("[O5] in 250 seasons of the model’s own kind a plan that reckons with what was seen errs less over the next four weeks than one that does not, and in 100 of another kind no more", () => {
  const own = erred(ownSeason, 250);
  expect(own.with).toBeLessThan(0.9 * own.without);
  const other = erred(otherSeason, 100);
  expect(other.with).toBeLessThanOrEqual(other.without);
});
