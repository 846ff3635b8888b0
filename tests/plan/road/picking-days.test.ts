import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { toDay, toDayNumber, weekdayOfDayNumber } from "#lib/domain/day";
import { pickingDays } from "#lib/plan/road/picking-days";
import { bed, day } from "../../small-farm";

const MON_WED_THU_SAT = [1, 3, 4, 6];
const openBed = bed({ id: 1 });
const next = (text: string, weekdays = MON_WED_THU_SAT, inBed = openBed) =>
  toDay(pickingDays(weekdays)(toDayNumber(day(text)), inBed));

describe("the next picking day", () => {
  /** 7 June 2027 is a Monday. */
  test.each([
    ["2027-06-07", "2027-06-07"],
    ["2027-06-08", "2027-06-09"],
    ["2027-06-10", "2027-06-10"],
    ["2027-06-11", "2027-06-12"],
    ["2027-06-13", "2027-06-14"],
  ])("picking on Mon, Wed, Thu and Sat, what opens on %s is cut on %s", (opens, cut) => {
    expect(next(opens)).toBe(cut);
  });

  test("picking on Saturdays alone, what opens on a Sunday waits six days", () => {
    expect(next("2027-06-13", [6])).toBe("2027-06-19");
  });

  test("[F6] a bed sprayed on Monday and closed until Thursday is not cut on Monday or Wednesday but on Thursday", () => {
    const sprayed = bed({ id: 1, noEntryFrom: day("2027-06-07"), noEntryUntil: day("2027-06-10") });
    expect(next("2027-06-07", MON_WED_THU_SAT, sprayed)).toBe("2027-06-10");
    expect(next("2027-06-06", MON_WED_THU_SAT, sprayed)).toBe("2027-06-10");
    expect(next("2027-06-05", MON_WED_THU_SAT, sprayed)).toBe("2027-06-05");
    expect(next("2027-06-10", MON_WED_THU_SAT, sprayed)).toBe("2027-06-10");
  });

  test("[F6] it is the first picking day that is neither before nor inside the label's interval, on any farm", () => {
    const anyDay = fc.integer({ min: 20_900, max: 21_100 });
    const weekdays = fc.uniqueArray(fc.integer({ min: 1, max: 7 }), { minLength: 1 });
    const spray = fc.option(fc.tuple(anyDay, fc.integer({ min: 1, max: 30 })));
    fc.assert(
      fc.property(anyDay, weekdays, spray, (opens, picks, closed) => {
        const [from, until] = closed ? [closed[0], closed[0] + closed[1]] : [Number.NaN, Number.NaN];
        const sprayed = closed ? { noEntryFrom: toDay(from), noEntryUntil: toDay(until) } : openBed;
        const isOpen = (dayNumber: number) =>
          picks.includes(weekdayOfDayNumber(dayNumber)) && !(dayNumber >= from && dayNumber < until);
        let first = opens;
        while (!isOpen(first)) first++;
        expect(pickingDays(picks)(opens, sprayed)).toBe(first);
      }),
      { seed: 20270607, numRuns: 1000 },
    );
  });
});
