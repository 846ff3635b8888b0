import { describe, expect, test } from "vitest";
import { type FarmSize, seededFarm, TYPICAL } from "#demo/seeded-farm";
import type { Booking } from "#lib/domain/records/booking";
import type { Snapshot } from "#lib/domain/snapshot";
import { oneOf, type RandomSource, seededRandom, wholeBetween } from "#lib/maths/random";
import { checkMatch } from "#lib/plan/road/match";
import type { Plan } from "#lib/plan/road/plan";
import { winterBeds, withKeptBeds } from "#lib/plan/winter/beds";
import { provenPlan } from "../../proven-plan";

const SEASON = 2027;

/** A change as a write makes it: the rows that it touches are new objects, all others stay the same. */
type Change = (farm: Snapshot, random: RandomSource) => Snapshot;

const changedBooking =
  (change: (booking: Booking, random: RandomSource) => Booking): Change =>
  (farm, random) => {
    const id = oneOf(random, farm.bookings).id;
    return { ...farm, bookings: farm.bookings.map((row) => (row.id === id ? change(row, random) : row)) };
  };

const CHANGES: readonly Change[] = [
  (farm, random) => {
    const beds = winterBeds(farm, SEASON).filter(() => random() < 0.5);
    return withKeptBeds(
      farm,
      SEASON,
      beds.map(({ bed }) => bed.id),
    );
  },
  (farm, random) => {
    const id = oneOf(random, farm.plantings).id;
    const plantCount = wholeBetween(random, 0, 300);
    return { ...farm, plantings: farm.plantings.map((row) => (row.id === id ? { ...row, plantCount } : row)) };
  },
  changedBooking((booking, random) => ({ ...booking, spareShare: wholeBetween(random, 0, 5) / 20 })),
  changedBooking((booking, random) => ({ ...booking, status: oneOf(random, ["confirmed", "held", "cancelled"]) })),
  (farm, random) => {
    const id = oneOf(random, farm.crops).id;
    const holdDays = (count: number) => ({ count, mark: "own" as const, source: null });
    const crops = farm.crops.map((row) =>
      row.id === id ? { ...row, holdDays: holdDays(wholeBetween(random, 1, 12)) } : row,
    );
    return { ...farm, crops };
  },
  (farm, random) => {
    const { eventOn } = oneOf(random, farm.bookings);
    return changedBooking((booking) => ({ ...booking, eventOn }))(farm, random);
  },
  // A booking or planting comes or goes: by turns, so that a farm neither empties nor fills up.
  (farm, random) =>
    farm.bookings.length > 8
      ? { ...farm, bookings: farm.bookings.toSpliced(Math.floor(random() * farm.bookings.length), 1) }
      : { ...farm, bookings: [...farm.bookings, { ...oneOf(random, farm.bookings), id: nextId(farm.bookings) }] },
  (farm, random) =>
    farm.plantings.length > 12
      ? { ...farm, plantings: farm.plantings.toSpliced(Math.floor(random() * farm.plantings.length), 1) }
      : { ...farm, plantings: [...farm.plantings, { ...oneOf(random, farm.plantings), id: nextId(farm.plantings) }] },
  (farm, random) => ({ ...farm, farm: { ...farm.farm, leadDays: wholeBetween(random, 1, 3) } }),
  (farm, random) => ({ ...farm, recipes: farm.recipes.map((row) => (random() < 0.2 ? { ...row } : row)) }),
];

const nextId = (rows: readonly { id: number }[]): number => rows.reduce((most, { id }) => Math.max(most, id), 0) + 1;

/** All that a plan says, as one text: needs, cost, flow, stems short and prices, and the paper. */
function answersOf({ match, gaps, weeks, pickList, buying, surplus, problems }: Plan): string {
  const { flow, unmet, price, totalCost } = match.solution;
  const needs = match.needs.map(({ booking, eventDay, kind, stems }) => [booking.id, eventDay, kind, stems]);
  const stems = match.supplies.map(({ variety, days, stems }) => [variety.id, days, stems]);
  const short = gaps.map(({ needIndex, shortStems, reasons, couldCover }) => [
    needIndex,
    shortStems,
    reasons,
    couldCover,
  ]);
  const solution = [totalCost, [...flow], [...unmet], [...price]];
  return JSON.stringify([needs, stems, solution, short, weeks, pickList.length, buying, surplus.length, problems]);
}

/** Changes of a farm, one after the other, each planned from the plan before it. */
function walk(seed: number, size: FarmSize, count: number, look: (before: Plan, replanned: Plan) => void): void {
  const random = seededRandom(seed);
  let farm = seededFarm(seed, size, SEASON);
  let planned = provenPlan(farm, SEASON);
  for (let change = 0; change < count; change++) {
    farm = oneOf(random, CHANGES)(farm, random);
    const replanned = provenPlan(farm, SEASON, undefined, planned);
    look(planned, replanned);
    planned = replanned;
  }
}

const isAsAfresh = (seed: number) => (_: Plan, replanned: Plan) => {
  expect(answersOf(replanned), `seed ${seed}`).toBe(answersOf(provenPlan(replanned.snapshot, SEASON)));
  expect(checkMatch(replanned.match)).toEqual([]);
};

describe("a plan made from the one before a change", () => {
  test("[L3] is the plan made afresh, with its proof: 300 changes of 6 farms", () => {
    for (let seed = 1; seed <= 6; seed++) walk(seed, { bedCount: 24, bookingCount: 18 }, 50, isAsAfresh(seed));
  });

  test("[L3] so it is after each of 2,000 changes of 10 small farms, one after the other", () => {
    for (let seed = 101; seed <= 110; seed++) walk(seed, { bedCount: 8, bookingCount: 6 }, 200, isAsAfresh(seed));
  });

  test("[L3] forecasts again only the plantings whose rows have changed, and counts again only the bookings that have", () => {
    const farm = seededFarm(1, TYPICAL, SEASON);
    const before = provenPlan(farm, SEASON);
    const [planting, booking] = [farm.plantings[3], farm.bookings[5]];
    const after = provenPlan(
      {
        ...farm,
        plantings: farm.plantings.with(3, { ...planting, plantCount: planting.plantCount + 1 }),
        bookings: farm.bookings.with(5, { ...booking, note: "moved to the barn" }),
      },
      SEASON,
      undefined,
      before,
    );
    const known = new Set<unknown>([...before.forecast.plantings, ...before.match.needs]);
    const remade = after.forecast.plantings.filter((row) => !known.has(row));
    expect(remade.map((row) => row.planting.id)).toEqual([planting.id]);
    const recounted = after.match.needs.filter((need) => !known.has(need));
    expect([...new Set(recounted.map((need) => need.booking.id))]).toEqual([booking.id]);
  });

  test("[L3] a bed ticked on a plan with every bed dug has its own plantings forecast again, and no others", () => {
    const farm = seededFarm(1, TYPICAL, SEASON);
    const allDug = provenPlan(withKeptBeds(farm, SEASON, []), SEASON);
    const [{ bed, plantings }] = winterBeds(farm, SEASON);
    const ticked = provenPlan(withKeptBeds(farm, SEASON, [bed.id]), SEASON, undefined, allDug);
    const known = new Set<unknown>(allDug.forecast.plantings);
    const remade = ticked.forecast.plantings.filter((row) => !known.has(row));
    expect(remade.map((row) => row.planting.id)).toEqual(plantings.map(({ kept }) => kept.planting.id));
  });

  test("[L3] after a change of the farm's own settings every planting is forecast again", () => {
    const farm = seededFarm(1, TYPICAL, SEASON);
    const before = provenPlan(farm, SEASON);
    const settings = { ...farm.farm, winter: { ...farm.farm.winter, winterSurvivalShare: 0.1 } };
    const after = provenPlan({ ...farm, farm: settings }, SEASON, undefined, before);
    const known = new Set<unknown>(before.forecast.plantings);
    expect(after.forecast.plantings.some((row) => known.has(row))).toBe(false);
  });
});
