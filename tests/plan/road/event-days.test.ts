import { describe, expect, test } from "vitest";
import { toDay, toDayNumber } from "#lib/domain/day";
import { eventDaysOf } from "#lib/domain/event-days";
import type { Booking } from "#lib/domain/records/booking";
import type { Farm } from "#lib/domain/records/farm-settings";
import type { Snapshot } from "#lib/domain/snapshot";
import { planLoad } from "#lib/plan/road/capacity";
import { cutTooEarly, unheldCrops } from "#lib/plan/road/unheld";
import { provenPlan } from "../../proven-plan";
import { booking, crop, day, farm, focal, snapshot } from "../../small-farm";
import { eventDaysBySpec } from "./event-days-by-spec";

/** Last cut on Thursday, designed on Friday and delivered on Saturday, for a wedding on a Saturday. */
const HABIT = { leadDays: 2, wornLaterDays: 0, designDays: 1, deliverDays: 0 };
const OWN = { leadDays: null, designDays: null, deliverDays: null };

describe("the days of an event", () => {
  test("[M12] a booking that says nothing goes by the farm's habit", () => {
    expect(eventDaysOf(HABIT, OWN)).toEqual({ deliverDays: 0, designDays: 1, leadDays: 2, wornLeadDays: 2 });
  });

  test("[M12] delivered on Thursday for a Saturday, it is designed on Wednesday and cut by Tuesday", () => {
    const days = eventDaysOf(HABIT, { ...OWN, deliverDays: 2 });
    expect(days).toEqual({ deliverDays: 2, designDays: 3, leadDays: 4, wornLeadDays: 4 });
  });

  test("[M12] designed on Wednesday it is cut by Tuesday and delivered when the farm does", () => {
    expect(eventDaysOf(HABIT, { ...OWN, designDays: 3 })).toMatchObject({ leadDays: 4, deliverDays: 0 });
  });

  test("[M12] cut on the morning of the event it is designed that day, and not on the day before", () => {
    expect(eventDaysOf(HABIT, { ...OWN, leadDays: 0 })).toMatchObject({ designDays: 0, deliverDays: 0 });
  });

  test("[M12] what is worn may be cut a day later, but never after the design", () => {
    const later = { ...HABIT, wornLaterDays: 1 };
    expect(eventDaysOf(later, OWN).wornLeadDays).toBe(1);
    expect(eventDaysOf({ ...later, wornLaterDays: 5 }, OWN).wornLeadDays).toBe(1);
    expect(eventDaysOf({ ...later, leadDays: 1 }, OWN).wornLeadDays).toBe(1);
    expect(eventDaysOf(later, { ...OWN, deliverDays: 2 }).wornLeadDays).toBe(3);
  });

  test("[M12] for every habit and every booking of up to four days they are those of the rule read case by case, and in order", () => {
    let seen = 0;
    const ordered = [0, 1, 2, 3, 4].flatMap((leadDays) =>
      [0, 1, 2, 3, 4].flatMap((designDays) =>
        [0, 1, 2, 3, 4].flatMap((deliverDays) =>
          leadDays >= designDays && designDays >= deliverDays ? [{ leadDays, designDays, deliverDays }] : [],
        ),
      ),
    );
    const kinds = [0, 1, 2, 3, 4, 5, 6, 7];
    for (const days of ordered)
      for (const wornLaterDays of [0, 1, 3])
        for (const own of ordered)
          for (const kind of kinds) {
            const habit = { ...days, wornLaterDays };
            const said = {
              leadDays: kind & 1 ? own.leadDays : null,
              designDays: kind & 2 ? own.designDays : null,
              deliverDays: kind & 4 ? own.deliverDays : null,
            };
            const found = eventDaysOf(habit, said);
            const isOrdered =
              found.leadDays >= found.wornLeadDays &&
              found.wornLeadDays >= found.designDays &&
              found.designDays >= found.deliverDays &&
              found.deliverDays >= 0;
            if (!isOrdered || JSON.stringify(found) !== JSON.stringify(sorted(eventDaysBySpec(habit, said))))
              expect({ habit, said, found }).toEqual(eventDaysBySpec(habit, said));
            seen++;
          }
    expect(seen).toBe(35 * 3 * 35 * 8);
  });
});

const sorted = ({ deliverDays, designDays, leadDays, wornLeadDays }: ReturnType<typeof eventDaysBySpec>) => ({
  ...{ deliverDays, designDays, leadDays, wornLeadDays },
});

const EVERY_DAY = [1, 2, 3, 4, 5, 6, 7];

/** 10 stems a day from Monday 7 to Sunday 13 June, which keep three days. */
const planned = (own: Partial<Booking>, habit: Partial<Farm> = {}, given: Partial<Snapshot> = {}) =>
  provenPlan(
    snapshot({
      farm: farm({ pickingWeekdays: EVERY_DAY, ...habit }),
      crops: [crop({ id: 1, holdDays: { count: 3, mark: "own", source: null } })],
      bookings: [booking({ id: 1, eventOn: day("2027-06-12"), stemLines: focal(40), ...own })],
      ...given,
    }),
    2027,
  );
const cutOn = ({ match }: ReturnType<typeof planned>) =>
  match.servings.map(({ cutDay, stems }) => [toDay(cutDay).slice(5), stems]).sort();
const focalWorn = focal(40, { asks: ["out of water"] });

describe("40 stems for Saturday 12 June, of a flower that keeps three days and gives ten a day", () => {
  test("[M1] [M12] are cut on Wednesday and Thursday by habit, 20 of them short", () => {
    expect(cutOn(planned({}))).toEqual([
      ["06-09", 10],
      ["06-10", 10],
    ]);
  });

  test("[M12] cut by Wednesday, for a delivery on Friday, there are ten; cut by the day itself there are 40", () => {
    expect(cutOn(planned({ deliverDays: 1 }))).toEqual([["06-09", 10]]);
    expect(cutOn(planned({ leadDays: 3 }))).toEqual([["06-09", 10]]);
    expect(cutOn(planned({ leadDays: 0 })).map(([, stems]) => stems)).toEqual([10, 10, 10, 10]);
  });

  test("[M12] where they are worn, and the farm cuts those a day later, Friday's ten come too; for other stems they do not", () => {
    expect(cutOn(planned({ stemLines: focalWorn }, { wornLaterDays: 1 }))).toHaveLength(3);
    expect(cutOn(planned({}, { wornLaterDays: 1 }))).toHaveLength(2);
    expect(cutOn(planned({ stemLines: focalWorn }))).toHaveLength(2);
  });

  test("[M12] the last cut on the Tuesday leaves none that keeps: the gap says that they bloom outside the hold window", () => {
    const { gaps } = planned({ leadDays: 4 });
    expect(gaps[0].shortStems).toBe(40);
    expect(gaps[0].reasons).toEqual([{ reason: "hold window", stems: 40 }]);
  });

  test("[M12] an event that moves a week takes its days along", () => {
    const moved = planned({ eventOn: day("2027-06-13"), deliverDays: 1 });
    expect(cutOn(moved)).toEqual([["06-10", 10]]);
  });

  test("[B1] [M12] what is short arrives on its own last-cut day, and is ordered as many days sooner; what is worn a day later", () => {
    const arrival = (made: ReturnType<typeof planned>) =>
      made.buying.map(({ gap: { need }, orderBy }) => [toDay(need.eventDay - need.leadDays), toDay(orderBy)]);
    expect(arrival(planned({}))).toEqual([["2027-06-10", "2027-05-22"]]);
    expect(arrival(planned({ leadDays: 5 }))).toEqual([["2027-06-07", "2027-05-19"]]);
    expect(arrival(planned({ stemLines: focalWorn }, { wornLaterDays: 1 }))).toEqual([["2027-06-11", "2027-05-23"]]);
  });

  test("[C2] [C3] [M12] are made up in the week of their design day, and stand in the cooler until they are delivered", () => {
    const load = planLoad(planned({ eventOn: day("2027-06-09"), designDays: 3, leadDays: 3 }));
    expect([...load.benchStems.keys()].map(toDay)).toEqual(["2027-05-31"]);
    const nights = (own: Partial<Booking>) => [...planLoad(planned(own)).bucketsStanding.keys()].sort().map(toDay);
    expect(nights({})).toEqual(["2027-06-09", "2027-06-10", "2027-06-11"]);
    expect(nights({ leadDays: 3, deliverDays: 2 })).toEqual(["2027-06-09"]);
  });

  test("[M1] [M12] a last cut of its own that is longer ago than the flower keeps is told at the booking; the farm's own is told on Season", () => {
    const lost = (own: Partial<Booking>, habit: Partial<Farm> = {}) => {
      const { match, snapshot: of } = planned(own, habit);
      return cutTooEarly(of.farm, match, 1).map((row) => [row.crop.id, row.hold.stretchDays]);
    };
    expect(lost({})).toEqual([]);
    expect(lost({ leadDays: 3 })).toEqual([]);
    expect(lost({ leadDays: 4 })).toEqual([[1, 3]]);
    expect(lost({ deliverDays: 2 })).toEqual([[1, 3]]);
    expect(lost({}, { leadDays: 4 })).toEqual([]);
  });

  test("[M1] a flower that keeps for less than the farm's last cut is told of, and whether what is cut later can have it", () => {
    const crops = [crop({ id: 1, holdDays: { count: 1, mark: "own", source: null } })];
    const told = (own: Partial<Booking>) => {
      const made = planned(own, {}, { crops });
      return unheldCrops(made.snapshot, made.match).map(({ servesSome }) => servesSome);
    };
    expect(told({})).toEqual([false]);
    expect(told({ leadDays: 1 })).toEqual([true]);
  });
});

test("[SO1] [M12] a standing order is delivered on its weekday, whenever the farm delivers events", () => {
  const order = {
    ...{
      id: 1,
      buyer: "Fern",
      kind: "florist" as const,
      weekday: 6,
      role: "focal" as const,
      cropId: null,
      recipeId: null,
    },
    ...{ firstOn: day("2027-06-07"), lastOn: day("2027-06-13"), askedCount: 100, stemCents: 100, colours: [] },
  };
  const cutDays = (habit: Partial<Farm>) =>
    planned({}, habit, { bookings: [], standingOrders: [order] })
      .orders?.match.servings.map(({ cutDay }) => toDay(cutDay).slice(5))
      .sort();
  expect(cutDays({})).toEqual(["06-09", "06-10"]);
  expect(cutDays({ leadDays: 3, designDays: 2, deliverDays: 1 })).toEqual(["06-09", "06-10"]);
});

test("[L3] a farm whose habit changes is planned as if afresh", () => {
  const given = snapshot({ bookings: [booking({ id: 1, stemLines: focal(40) })] });
  const before = provenPlan(given, 2027);
  const later = { ...given, farm: { ...given.farm, leadDays: 3, designDays: 2 } };
  const [again, afresh] = [provenPlan(later, 2027, before.frostDay, before), provenPlan(later, 2027)];
  expect(again.match.needs).toEqual(afresh.match.needs);
  expect(again.match.needs[0].leadDays).toBe(3);
  expect(toDayNumber(day("2027-06-12")) - again.match.needs[0].leadDays).toBe(toDayNumber(day("2027-06-09")));
});
