import { describe, expect, test } from "vitest";
import { type Day, toDay } from "#lib/domain/day";
import type { Cut } from "#lib/domain/records/cut";
import type { StandingOrder } from "#lib/domain/records/standing-order";
import type { Snapshot } from "#lib/domain/snapshot";
import { deliveryRows } from "#lib/plan/road/order-rows";
import type { Plan } from "#lib/plan/road/plan";
import type { VarietySupply } from "#lib/plan/road/supply";
import { provenPlan } from "../../proven-plan";
import { booking, crop, curve, day, farm, focal, monthDay, planting, snapshot } from "../../small-farm";
import { on, shortOf } from "./lived-season";

/** 70 stems in the week from Monday 7 June, ten a day, cut each day; the first wedding wants 20, the second 40. */
const FARM = snapshot({
  farm: farm({ pickingWeekdays: [1, 2, 3, 4, 5, 6, 7], leadDays: 1 }),
  crops: [crop({ id: 1, holdDays: { count: 4, mark: "own", source: null } })],
  curves: [curve({ stemsPerPlantByWeek: [1], anchor: { kind: "day-of-year", firstCut: monthDay("06-07") } })],
  plantings: [planting({ id: 1, plantCount: 70, aliveShare: 1, gradeOutShare: 0 })],
  bookings: [
    booking({ id: 1, eventOn: day("2027-06-11"), spareShare: 0, stemLines: focal(20) }),
    booking({ id: 2, eventOn: day("2027-06-13"), spareShare: 0, stemLines: focal(40) }),
  ],
});

const cut = (given: Partial<Cut>): Cut => ({
  id: 1,
  cutOn: day("2027-06-09"),
  bedId: 1,
  varietyId: 1,
  bookingId: 1,
  stemsCut: 0,
  stemsAsked: 10,
  goodStems: null,
  restStands: false,
  ...given,
});

const given = ({ match }: Plan, bookingId: number, isOf: (cutDay: Day, isRecorded: boolean) => boolean = () => true) =>
  match.servings.reduce((sum, { needIndex, cutDay, stand, stems }) => {
    const isRecorded = stand.kind === "planting" && stand.isRecorded === true;
    return match.needs[needIndex].booking.id === bookingId && isOf(toDay(cutDay), isRecorded) ? sum + stems : sum;
  }, 0);

/** Stems of a day that are nobody's own. */
const suppliedOn = (supplies: readonly VarietySupply[], on: string): number[] =>
  supplies
    .filter(({ bookingId }) => bookingId === undefined)
    .flatMap(({ days, stems }) => days.flatMap((one, at) => (toDay(one) === on ? [stems[at]] : [])));

describe("a season of 70 stems, ten a day, for two weddings of 20 and 40", () => {
  test("without a day nobody is short, and a plan made in spring says the same", () => {
    expect(shortOf(on(FARM, "2027-03-01"))).toEqual(shortOf(provenPlan(FARM, 2027)));
    expect(shortOf(on(FARM, "2027-03-01"))).toEqual([0, 0]);
  });

  test("[T1] days behind without a record count as cut as planned, and what nobody was given is gone", () => {
    const behind = on(FARM, "2027-06-12");
    expect(shortOf(behind)).toEqual([0, 0]);
    expect(given(behind, 1, (_, isRecorded) => isRecorded)).toBe(0);
    const late = { ...FARM, bookings: [FARM.bookings[0]] };
    expect(on(late, "2027-06-13").surplus.map(({ cutDay }) => toDay(cutDay))).toEqual(["2027-06-13"]);
  });

  test("[T1] a recorded 0 is none: the first wedding goes short of what no later day can give", () => {
    const none = ["2027-06-07", "2027-06-08", "2027-06-09"].map((cutOn, index) =>
      cut({ id: index + 1, cutOn: day(cutOn) }),
    );
    const { match } = on({ ...FARM, cuts: none }, "2027-06-10");
    // Thursday, Friday and Saturday give ten each, to one or the other.
    expect([...match.shortStems].reduce((sum, stems) => sum + stems, 0)).toBe(60 - 30);
  });

  test("[T2] what was cut for a wedding stays its own, however dear the other's stems are", () => {
    const forSecond = cut({ bookingId: 2, stemsCut: 10 });
    const { match } = on({ ...FARM, cuts: [forSecond] }, "2027-06-10");
    expect(given({ match } as Plan, 2, (cutOn) => cutOn === "2027-06-09")).toBe(10);
    const own = match.supplies.filter(({ bookingId }) => bookingId === 2);
    expect(own.flatMap(({ stems }) => [...stems])).toContain(10);
  });

  test("[T2] what was cut for a wedding on its very morning serves it, though the list would be closed by then", () => {
    const first = { ...FARM.bookings[0], stemLines: focal(50) };
    const short = { ...FARM, bookings: [first] };
    expect(shortOf(on(short, "2027-06-11"))).toEqual([10]);
    const late = cut({ cutOn: day("2027-06-11"), stemsCut: 10 });
    expect(shortOf(on({ ...short, cuts: [late] }, "2027-06-12"))).toEqual([0]);
  });

  test("[T2] stems cut for a wedding go before any other, so that none are asked for twice", () => {
    for (const cutOn of ["2027-06-09", "2027-06-10"]) {
      const record = cut({ cutOn: day(cutOn), stemsCut: 10 });
      expect(given(on({ ...FARM, cuts: [record] }, cutOn), 1, (_, isRecorded) => isRecorded)).toBe(10);
    }
  });

  test("[T2] good stems are those counted, else what the planting's share leaves, and serve as such", () => {
    const graded = { ...FARM, plantings: [{ ...FARM.plantings[0], gradeOutShare: 0.2 }] };
    const lots = (record: Cut) =>
      on({ ...graded, cuts: [record] }, "2027-06-09").match.supplies.flatMap(({ bookingId, stems }) =>
        bookingId === 1 ? [...stems] : [],
      );
    expect(lots(cut({ stemsCut: 9 }))).toContain(7);
    expect(lots(cut({ stemsCut: 9, goodStems: 9 }))).toContain(9);
  });

  test("[T3] fewer than asked is all there was; as many as asked leaves what else is forecast", () => {
    const standing = (record: Cut) =>
      on({ ...FARM, cuts: [record] }, "2027-06-09")
        .match.supplies.filter(({ bookingId }) => bookingId === undefined)
        .flatMap(({ days, stems }) => days.flatMap((one, at) => (toDay(one) === "2027-06-09" ? [stems[at]] : [])));
    expect(standing(cut({ stemsCut: 4, stemsAsked: 4 }))).toEqual([6]);
    expect(standing(cut({ stemsCut: 4, stemsAsked: 5 }))).toEqual([]);
    expect(standing(cut({ stemsCut: 4, stemsAsked: null }))).toEqual([]);
  });

  test("[T3] what is cut between two picking days is missing on the next", () => {
    const weekly = {
      ...FARM,
      farm: farm({ pickingWeekdays: [1, 4], leadDays: 1 }),
      crops: [crop({ id: 1, fieldDays: { count: 4, mark: "own", source: null } })],
    };
    const onThursday = (cuts: Cut[]) =>
      on({ ...weekly, cuts }, "2027-06-09")
        .match.supplies.filter(({ bookingId }) => bookingId === undefined)
        .flatMap(({ days, stems }) => days.flatMap((one, at) => (toDay(one) === "2027-06-10" ? [stems[at]] : [])));
    expect(onThursday([])).toEqual([30]);
    expect(onThursday([cut({ cutOn: day("2027-06-08"), stemsCut: 12, stemsAsked: null })])).toEqual([18]);
  });

  test("[T2] a cancelled booking's stems go to whoever needs them", () => {
    const cuts = [cut({ stemsCut: 10 })];
    const [first, second] = FARM.bookings;
    const cancelled = { ...FARM, bookings: [{ ...first, status: "cancelled" as const }, second], cuts };
    const { match } = on(cancelled, "2027-06-10");
    expect(suppliedOn(match.supplies, "2027-06-09")).toEqual([10]);
  });
});

test("[T1] [SO2] an order that went out on the 12th with 5 of its 10 stays at 5 when a wedding gives its old stems up for fresher ones", () => {
  const order: StandingOrder = {
    ...{
      id: 1,
      buyer: "A florist",
      kind: "florist",
      weekday: 6,
      firstOn: day("2027-06-12"),
      lastOn: day("2027-06-12"),
    },
    ...{ role: "focal", cropId: null, recipeId: null, colours: [], askedCount: 10, stemCents: 120 },
  };
  const snap: Snapshot = {
    ...FARM,
    crops: [crop({ id: 1, holdDays: { count: 40, mark: "own", source: null } })],
    curves: [{ ...FARM.curves[0], stemsPerPlantByWeek: [0.001] }],
    bookings: [booking({ id: 1, eventOn: day("2027-06-18"), spareShare: 0, stemLines: focal(25) })],
    coolerStock: [{ id: 1, varietyId: 1, cutOn: day("2027-06-09"), stemCount: 30 }],
    standingOrders: [order],
    cuts: [cut({ cutOn: day("2027-06-15"), bookingId: null, stemsCut: 40 })],
  };
  for (const today of ["2027-06-12", "2027-06-14", "2027-06-16", "2027-06-17", "2027-06-19"]) {
    const { orders } = on(snap, today);
    expect(orders && deliveryRows(orders, 2027).map(({ gotStems }) => gotStems), today).toEqual([5]);
  }
});
