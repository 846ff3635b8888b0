import { beforeAll, describe, expect, test } from "vitest";
import { isoWeekday, yearOf } from "#lib/domain/day";
import type { Booking } from "#lib/domain/records/booking";
import type { Snapshot } from "#lib/domain/snapshot";
import type { Status } from "#lib/domain/words";
import { type LinearSolver, loadLinearSolver } from "#lib/maths/linear-programme";
import { type ExpectedBooking, isExpected } from "#lib/plan/road/claim";
import { expectedBookings, withExpectedBookings } from "#lib/plan/winter/expected-bookings";
import { winterFutures } from "#lib/plan/winter/futures";
import { provenPlan } from "../../proven-plan";
import { booking, day, farm, snapshot } from "../../small-farm";
import { chosen } from "./chosen";
import { allowedChoices, costOf, SEASON, winterFarm } from "./farm";

const expecting = (given: Snapshot, expectedSaturdayCount: number): Snapshot => ({
  ...given,
  farm: { ...given.farm, winter: { ...given.farm.winter, expectedSaturdayCount } },
});

/** The same booking, as if it were there. */
const asReal = ({ likeBookingId: _, ...row }: ExpectedBooking, status: Status): Booking => ({ ...row, status });

const NOVEMBER = day("2026-11-26");

let solver: LinearSolver;
beforeAll(async () => {
  solver = await loadLinearSolver();
});

describe("bookings still to come", () => {
  const booked = snapshot({
    farm: farm(),
    bookings: [
      booking({ id: 3, eventOn: day("2027-06-12"), stemLines: focal(40) }),
      booking({ id: 5, eventOn: day("2026-09-19"), stemLines: focal(90) }),
      booking({ id: 7, eventOn: day("2027-08-14"), status: "cancelled", stemLines: focal(500) }),
      booking({ id: 8, eventOn: day("2024-07-06"), stemLines: focal(700) }),
    ],
  });

  function focal(stemCount: number) {
    return [{ role: "focal" as const, cropId: null, cropOnly: false, asks: [], colours: [], stemCount }];
  }

  test("[K12] two of the 25 free Saturdays from 20 April to 18 October 2027: the 7th and the 19th, each like the nearest booking of this season or the last, as enquiries", () => {
    // 24 April to 16 October are 26 Saturdays; 12 June is booked, and that of 14 August is cancelled.
    const expected = expectedBookings(expecting(booked, 2), 2027, NOVEMBER);
    expect(expected.map(({ id, eventOn, status, stemLines }) => [id, eventOn, status, stemLines[0].stemCount])).toEqual(
      [
        [9, "2027-06-05", "enquiry", 40],
        [10, "2027-09-04", "enquiry", 90],
      ],
    );
  });

  test("[K12] from a day in June on the two stand on the Saturdays that are left, none of them gone by", () => {
    const expected = expectedBookings(expecting(booked, 2), 2027, day("2027-06-20"));
    // 26 June to 16 October are 17 Saturdays: the 5th and the 13th.
    expect(expected.map(({ eventOn }) => eventOn)).toEqual(["2027-07-24", "2027-09-18"]);
  });

  test("[K12] each stem short for one costs its price by the weight that the farm says, 30 or 60 of a hundred", () => {
    const short = (expectedWeightShare: number) => {
      const said = expecting({ ...booked, plantings: [] }, 2);
      const winter = { ...said.farm.winter, expectedWeightShare };
      const reckoned = withExpectedBookings({ ...said, farm: { ...said.farm, winter } }, 2027, NOVEMBER);
      return provenPlan(reckoned, 2027).match.solution.totalCost;
    };
    // 40 and 90 stems at $3.00.
    expect(short(0.6) - short(0.3)).toBe(130 * (180 - 90));
  });

  test("[K12] none said, or none booked to go by: the farm itself; more said than there are: all free Saturdays, each once", () => {
    expect(withExpectedBookings(booked, 2027, NOVEMBER)).toBe(booked);
    const bare = expecting(snapshot({ bookings: [] }), 5);
    expect(withExpectedBookings(bare, 2027, NOVEMBER)).toBe(bare);
    const all = expectedBookings(expecting(booked, 60), 2027, NOVEMBER);
    expect(all).toHaveLength(25);
    expect(new Set(all.map(({ eventOn }) => eventOn)).size).toBe(25);
    expect(all.every(({ eventOn }) => isoWeekday(eventOn) === 6 && yearOf(eventOn) === 2027)).toBe(true);
    expect(all.map(({ eventOn }) => eventOn)).not.toContain("2027-06-12");
  });

  test("[K12] the farm is left as it was, and asked again it is known as the same one", () => {
    const farmNow = expecting(booked, 3);
    const before = JSON.stringify(farmNow);
    const reckoned = withExpectedBookings(farmNow, 2027, NOVEMBER);
    expect(JSON.stringify(farmNow)).toBe(before);
    expect(withExpectedBookings(farmNow, 2027, NOVEMBER)).toBe(reckoned);
    expect(reckoned.bookings.slice(0, farmNow.bookings.length)).toEqual(farmNow.bookings);
  });

  test("[K12] weighed as a hold, or as a confirmed booking, they cost in every choice what such bookings would", () => {
    for (const [seed, status] of [
      [711, "held"],
      [712, "confirmed"],
      [713, "enquiry"],
    ] as const) {
      const given = expecting(winterFarm(seed, 14, 8), 4);
      const winter = { ...given.farm.winter, expectedWeightShare: given.farm.statusWeights[status] };
      const reckoned = withExpectedBookings({ ...given, farm: { ...given.farm, winter } }, SEASON, NOVEMBER);
      const real = {
        ...reckoned,
        bookings: reckoned.bookings.map((row) => (isExpected(row) ? asReal(row, status) : row)),
      };
      expect(real.bookings.filter(isExpected)).toEqual([]);
      const [ofExpected, ofReal] = [winterFutures(reckoned, SEASON), winterFutures(real, SEASON)];
      for (const isKept of allowedChoices(ofExpected)) expect(costOf(ofExpected, isKept)).toBe(costOf(ofReal, isKept));
    }
  });

  test("[K12] [K4] on 8 farms the choice with Saturdays to come is the best of every subset tried, and proved", () => {
    for (let seed = 701; seed <= 708; seed++) {
      const reckoned = withExpectedBookings(expecting(winterFarm(seed, 14, 8), 4), SEASON, NOVEMBER);
      expect(reckoned.bookings).toHaveLength(12);
      const futures = winterFutures(reckoned, SEASON);
      const tried = allowedChoices(futures).map((isKept) => costOf(futures, isKept));
      const choice = chosen(reckoned, solver);
      if (tried.length === 0) expect(choice.status).toBe("infeasible");
      else expect(choice.status === "optimal" && choice.totalCents).toBe(Math.min(...tried));
    }
  });
});
