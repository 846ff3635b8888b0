import { describe, expect, test } from "vitest";
import { seededFarm } from "#demo/seeded-farm";
import { checkMatch } from "#lib/plan/road/match";
import type { Plan } from "#lib/plan/road/plan";
import { comparison, winterCents } from "#lib/plan/what-if/comparison";
import { applyChanges } from "#lib/plan/what-if/what-if";
import { winterTotals } from "#lib/plan/what-if/winter";
import { provenPlan } from "../../proven-plan";
import { booking, crop, curve, day, focal, planting, snapshot } from "../../small-farm";

/**
 * 70 stems in the week of 7 June, 30 of them in reach of the 12th and the 13th. Bookings of 60, confirmed, and of 50, held: the first
 * gets 30, and 30 and 50 are short: 8 bunches of 10 at 3.00 a stem.
 */
const before = snapshot({
  bookings: [
    booking({ id: 1, stemLines: focal(60) }),
    booking({ id: 2, status: "held", eventOn: day("2027-06-13"), stemLines: focal(50) }),
  ],
});
const planned = (plantCount: number): Plan =>
  provenPlan({ ...before, plantings: [planting({ id: 1, plantCount })] }, 2027);

describe("plans side by side", () => {
  test("[W6] with four times the plants nothing is short: 80 stems fewer, 240.00 less to buy in, both bookings covered", () => {
    const plans = [planned(70), planned(280)];
    for (const { match } of plans) expect(checkMatch(match)).toEqual([]);
    const { totals, differences, bookings } = comparison(plans);
    const all = { winter: null, bookingCount: 2 };
    expect(totals).toEqual([
      { ...all, shortStems: 80, focalShortStems: 80, buyInCents: 24_000, coveredBookingCount: 0 },
      { ...all, shortStems: 0, focalShortStems: 0, buyInCents: 0, coveredBookingCount: 2 },
    ]);
    const none = { winter: null, bookingCount: 0 };
    expect(differences).toEqual([
      { ...none, shortStems: 0, focalShortStems: 0, buyInCents: 0, coveredBookingCount: 0 },
      { ...none, shortStems: -80, focalShortStems: -80, buyInCents: -24_000, coveredBookingCount: 2 },
    ]);
    expect(bookings.map(({ bookingId, shortStems }) => [bookingId, ...shortStems])).toEqual([
      [1, 30, 0],
      [2, 50, 0],
    ]);
  });

  test("[W6] a booking that one plan does not have is null there, and a week that one does not reach is zeros", () => {
    const { snapshot: without } = applyChanges(before, 2027, [
      { kind: "booking-moved", bookingId: 2, eventOn: day("2027-07-10") },
      { kind: "booking-dropped", bookingId: 1 },
    ]);
    const { bookings, weeks } = comparison([provenPlan(before, 2027), provenPlan(without, 2027)]);
    expect(bookings.map(({ bookingId, shortStems }) => [bookingId, shortStems[1]])).toEqual([
      [1, null],
      [2, 50],
    ]);
    const july = weeks.find(({ monday }) => monday === "2027-07-05");
    expect(july?.focal.map(({ needStems }) => needStems)).toEqual([0, 50]);
  });

  test("[W6] over invented farms totals are those of each plan by itself", () => {
    for (const seed of [1, 2, 3]) {
      const farm = seededFarm(seed, { bedCount: 30, bookingCount: 25 });
      const shifted = applyChanges(farm, 2027, [{ kind: "season-shifted", days: 14, cropId: null }]).snapshot;
      const plans = [provenPlan(farm, 2027), provenPlan(shifted, 2027)];
      const { totals, weeks, bookings } = comparison(plans, ({ frostDay }) => ({
        labourCents: frostDay,
        materialCents: 7,
        replacementCents: -5,
        freeBedCents: 0,
      }));
      plans.forEach((one, index) => {
        const focalOfWeeks = one.weeks.map(({ roles }) => roles[0]);
        expect(weeks.reduce((sum, { focal: roles }) => sum + roles[index].shortStems, 0)).toBe(
          totals[index].focalShortStems,
        );
        expect(focalOfWeeks.reduce((sum, { needStems }) => sum + needStems, 0)).toBe(
          weeks.reduce((sum, { focal: roles }) => sum + roles[index].needStems, 0),
        );
        expect(totals[index].buyInCents).toBe(one.buying.reduce((sum, { costCents }) => sum + costCents, 0));
        expect(totals[index].shortStems).toBe(
          bookings.reduce((sum, { shortStems }) => sum + (shortStems[index] ?? 0), 0),
        );
        expect(winterCents(totals[index].winter)).toBe(one.frostDay + 2);
        expect(weeks.reduce((sum, { all }) => sum + all[index].shortStems, 0)).toBe(totals[index].shortStems);
        expect(weeks.reduce((sum, { all }) => sum + all[index].needStems, 0)).toBe(
          one.weeks.reduce((sum, { roles }) => roles.reduce((inAll, { needStems }) => inAll + needStems, sum), 0),
        );
      });
    }
  });

  test("[W6] keeping a bed of 70 dahlias on 18 m²: 28.80 to cover it and 9.00 of tarp, in place of 162.22 to lift and 28.00 to store it", () => {
    const dahlias = snapshot({
      crops: [crop({ id: 1, overwinters: true })],
      curves: [curve({ treatment: "spring-planted" }), curve({ id: 2, treatment: "kept-in-ground" })],
      plantings: [planting({ id: 1, treatment: "spring-planted" })],
    });
    const kept = applyChanges(dahlias, 2027, [{ kind: "bed-kept", bedId: 1 }]).snapshot;
    const { totals, differences } = comparison([provenPlan(dahlias, 2027), provenPlan(kept, 2027)], winterTotals);
    /** 70 clumps: 70/30 h lifted, 70/14 h divided, 70/90 h replanted, at 20.00; 40 cents each to store. 18 m²: 0.08 h and 50 cents each. */
    const dug = { labourCents: Math.round((70 / 30 + 70 / 14 + 70 / 90) * 2000), materialCents: 2800 };
    expect(totals.map(({ winter }) => winter)).toMatchObject([dug, { labourCents: 2880, materialCents: 900 }]);
    expect(differences[1].winter).toMatchObject({ labourCents: 2880 - dug.labourCents, materialCents: -1900 });
  });

  test("takes one plan to four", () => {
    const one = provenPlan(before, 2027);
    expect(() => comparison([])).toThrow(RangeError);
    expect(() => comparison([one, one, one, one, one])).toThrow(RangeError);
    expect(comparison([one, one, one, one]).totals).toHaveLength(4);
  });
});
