import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { addDays, daysBetween, isoWeekday, toDay, toDayNumber } from "#lib/domain/day";
import type { Cut } from "#lib/domain/records/cut";
import { shortWeeks } from "#lib/plan/road/short-weeks";
import { cutsBehind, gapsAhead, seasonSums, weeksBehind, weeksGone } from "#lib/plan/road/to-come";
import { cutsInWords, eventsInWords, weeksGoneInWords } from "#lib/plan/words/to-come-words";
import { booking, curve, day, focal, planting, snapshot } from "../../small-farm";
import { anySeed } from "../any-farm";
import { anyGarden, lived, on } from "./lived-season";

/** Ten stems a day of the week of 7 June and of the next; a wedding of 30 on each Saturday, the second of 300. */
const farm = snapshot({
  curves: [curve({ stemsPerPlantByWeek: [1, 1] })],
  plantings: [planting({ id: 1, plantCount: 70 })],
  bookings: [
    booking({ id: 1, eventOn: day("2027-06-12"), stemLines: focal(20) }),
    booking({ id: 2, eventOn: day("2027-06-19"), stemLines: focal(300) }),
  ],
});

describe("what is behind and what is still to come", () => {
  test("[G7] a wedding of Saturday the 12th is still to come on its day and behind on Sunday; its week is behind on Monday", () => {
    const sums = (today: string) => seasonSums(on(farm, today));
    expect(sums("2027-06-12").behind.bookingCount).toBe(0);
    expect(sums("2027-06-13").behind).toEqual({ bookingCount: 1, fullBookingCount: 1, needStems: 20, shortStems: 0 });
    expect(sums("2027-06-13").ahead).toMatchObject({ bookingCount: 1, fullBookingCount: 0, needStems: 300 });
    expect(weeksGone(on(farm, "2027-06-13"))).toBe(0);
    expect(weeksBehind(on(farm, "2027-06-14"))).toMatchObject([{ week: "2027-W23", bookingCount: 1, needStems: 20 }]);
  });

  test("[G7] without a day nothing is behind", () => {
    const plan = { ...on(farm, "2027-01-01"), today: null };
    expect([weeksGone(plan), gapsAhead(plan).length, seasonSums(plan).behind.bookingCount]).toEqual([0, 1, 0]);
  });

  test("[G7] of 20 stems for the 12th 9 were recorded on Wednesday: those are cut, and the other 11 are not recorded", () => {
    const wednesday: Cut = {
      ...{ id: 1, cutOn: day("2027-06-09"), bedId: 1, varietyId: 1, bookingId: 1 },
      ...{ stemsCut: 9, stemsAsked: 9, goodStems: 9, restStands: false },
    };
    const plan = on({ ...farm, cuts: [wednesday] }, "2027-06-14");
    expect(cutsBehind(plan)).toEqual({ cutStems: 9, notRecordedStems: 11 });
    expect(weeksBehind(plan)[0]).toMatchObject({ cutStems: 9, notRecordedStems: 11 });
    expect(cutsInWords(cutsBehind(plan))).toBe("9 stems cut, 11 more not recorded: they count as cut as planned");
  });

  test("[G7] on any lived season both parts sum to the season, weeks to what is behind them, and gaps ahead are those that weeks ahead are short of", () => {
    fc.assert(
      fc.property(anyGarden, fc.integer(), fc.integer({ min: 0, max: 20 }), (snap, seed, dayCount) => {
        const past = lived(snap, seed, dayCount);
        const plan = on({ ...snap, cuts: past.cuts }, past.today);
        const { behind, ahead } = seasonSums(plan);
        const { needs, shortStems } = plan.match;
        expect(behind.needStems + ahead.needStems).toBe(needs.reduce((sum, { stems }) => sum + stems, 0));
        expect(behind.shortStems + ahead.shortStems).toBe(shortStems.reduce((sum, stems) => sum + stems, 0));
        expect(behind.bookingCount + ahead.bookingCount).toBe(new Set(needs.map(({ booking: { id } }) => id)).size);
        // By hand: each need is looked at by its day's own text.
        const today = toDay(past.today);
        const shortBehind = needs.reduce(
          (sum, { booking: { eventOn } }, index) => sum + (eventOn < today ? shortStems[index] : 0),
          0,
        );
        expect(behind.shortStems).toBe(shortBehind);
        const monday = addDays(today, 1 - isoWeekday(today));
        const gone = weeksBehind(plan);
        expect(gone.every((week) => daysBetween(week.monday, monday) >= 7)).toBe(true);
        expect(gone.reduce((sum, week) => sum + week.needStems, 0)).toBe(
          needs.reduce((sum, { booking: { eventOn }, stems }) => sum + (eventOn < monday ? stems : 0), 0),
        );
        const allGaps = gapsAhead(plan).reduce((sum, gap) => sum + gap.shortStems, 0);
        expect(allGaps).toBe(ahead.shortStems);
        expect(shortWeeks(plan).reduce((sum, week) => sum + week.shortStems, 0)).toBe(allGaps);
        const { cutStems } = cutsBehind(plan);
        const cut = past.cuts.filter(({ cutOn }) => toDayNumber(cutOn) < past.today);
        expect(cutStems).toBe(cut.reduce((sum, row) => sum + row.stemsCut, 0));
      }),
      { ...anySeed, numRuns: 60 },
    );
  });
});

test("what is behind is told with its numbers, and what is not is left out", () => {
  expect(weeksGoneInWords(1)).toBe("1 week gone by");
  expect(cutsInWords({ cutStems: 0, notRecordedStems: 0 })).toBe("nothing was to be cut");
  expect(cutsInWords({ cutStems: 0, notRecordedStems: 4 })).toBe("4 stems not recorded: they count as cut as planned");
  expect(cutsInWords({ cutStems: 1200, notRecordedStems: 0 })).toBe("1,200 stems cut");
  expect(eventsInWords({ bookingCount: 2, fullBookingCount: 1, needStems: 320, shortStems: 12 })).toBe(
    "2 bookings, 320 stems asked, 12 short",
  );
});
