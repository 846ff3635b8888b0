import { describe, expect, it } from "vitest";
import { toDay, toDayNumber } from "#lib/domain/day";
import type { Cut } from "#lib/domain/records/cut";
import { readyStems } from "#lib/plan/learning/season/ready-stems";
import { seasonLesson, weeksAhead } from "#lib/plan/learning/season/season-lesson";
import { watchedPlantings } from "#lib/plan/learning/season/watched-plantings";
import { frostDayOf } from "#lib/plan/road/forecast";
import { grown } from "#lib/plan/road/grown";
import { cropLessonInWords, seenInWords } from "#lib/plan/words/season-lesson-words";
import { bed, crop, curve, day, farm, planting, snapshot, variety } from "../../../small-farm";

/** Three beds of one crop, a hundred plants each, that bloom from 7 June for six weeks. */
const FARM = snapshot({
  farm: farm({ pickingWeekdays: [1, 4] }),
  crops: [crop({ id: 1, name: "Dahlia", fieldDays: { count: 7, mark: "own", source: null } })],
  varieties: [1, 2, 3].map((id) => variety({ id })),
  curves: [curve({ stemsPerPlantByWeek: [1, 1, 1, 1, 1, 1], firstCutSpreadDays: 8, yieldSpread: 0.3 })],
  beds: [1, 2, 3].map((id) => bed({ id })),
  plantings: [1, 2, 3].map((id) => planting({ id, bedId: id, varietyId: id, plantCount: 100 })),
});

const cut = (given: Partial<Cut> & Pick<Cut, "id" | "cutOn" | "stemsCut">): Cut => ({
  bedId: 1,
  varietyId: 1,
  bookingId: null,
  stemsAsked: null,
  goodStems: null,
  restStands: false,
  ...given,
});

/** What the beds 1 and 2 give when they are six days late, every picking day of June, all that is ready. */
const SIX_DAYS_LATE: Cut[] = grown(FARM, 2027)
  .slice(0, 2)
  .flatMap((row) => {
    const ready = readyStems(row, FARM.farm, frostDayOf(FARM.farm, 2027));
    return Array.from({ length: 24 }, (_, index) => toDayNumber(day("2027-06-07")) + index).flatMap((cutOn) => {
      const isPicked = [1, 4].includes(((cutOn + 3) % 7) + 1);
      return isPicked
        ? [
            cut({
              id: cutOn * 10 + row.bed.id,
              cutOn: toDay(cutOn),
              stemsCut: Math.round(ready(cutOn, 6)),
              bedId: row.bed.id,
              varietyId: row.variety.id,
            }),
          ]
        : [];
    });
  });

describe("what a season has taught", () => {
  it("[O3] is nothing while nothing was recorded", () => {
    expect(seasonLesson(FARM, 2027)).toBeNull();
    expect(seasonLesson({ ...FARM, cuts: SIX_DAYS_LATE }, 2028)).toBeNull();
  });

  it("[O3] is that the crop runs six days late, in words, where two beds of three did", () => {
    const lesson = seasonLesson({ ...FARM, cuts: SIX_DAYS_LATE }, 2027);
    const [dahlia] = lesson?.crops ?? [];
    expect(Math.round(lesson?.plantings.get(1)?.daysLate ?? 0)).toBe(6);
    expect(cropLessonInWords({ daysLate: 6.2, yieldFactor: 0.92 })).toBe(
      "6 days late, 0.9 times as many stems per plant as expected",
    );
    expect(cropLessonInWords({ daysLate: -1, yieldFactor: 1.01 })).toBe("1 day early, stems per plant as expected");
    expect(seenInWords(dahlia)).toBe("seen in 2 of 3 beds");
    expect(dahlia.daysLate).toBeGreaterThan(4);
    expect(dahlia.daysLate).toBeLessThan(6.5);
    // The third bed, of which nothing was seen, is believed late too, though less surely.
    const third = lesson?.plantings.get(3);
    expect(third?.daysLate).toBeGreaterThan(2);
    expect(third?.daysLateSpread).toBeGreaterThan(lesson?.plantings.get(1)?.daysLateSpread ?? 0);
  });

  it("[O3] does not hang on the order in which cuts were written down", () => {
    const told = (cuts: readonly Cut[]) =>
      [...(seasonLesson({ ...FARM, cuts }, 2027)?.plantings.values() ?? [])].map((one) => one.daysLate.toFixed(9));
    expect(told([...SIX_DAYS_LATE].reverse())).toEqual(told(SIX_DAYS_LATE));
  });

  it("[O2] cuts of a day for two bookings are one record, and fill their lists together", () => {
    const of = (cuts: Cut[]) => watchedPlantings({ ...FARM, cuts }, 2027)[0].watched.cuts;
    const cutOn = day("2027-06-14");
    const day14 = toDayNumber(cutOn);
    const first = cut({ id: 1, cutOn, stemsCut: 10, stemsAsked: 10, bookingId: 1 });
    expect(of([first, cut({ id: 2, cutOn, stemsCut: 6, stemsAsked: 9, bookingId: 2 })])).toEqual([
      { day: day14, stems: 16, says: "all that was ready" },
    ]);
    expect(of([first, cut({ id: 2, cutOn, stemsCut: 9, stemsAsked: 9, bookingId: 2 })])).toEqual([
      { day: day14, stems: 19, says: "at least" },
    ]);
    expect(of([cut({ id: 1, cutOn, stemsCut: 16 })])).toEqual([{ day: day14, stems: 16, says: "all that was ready" }]);
    expect(of([cut({ id: 1, cutOn, stemsCut: 16, goodStems: 12 })])).toEqual([
      { day: day14, stems: 12, says: "all that was ready" },
    ]);
  });

  it("[O4] the weeks ahead follow: late beds give more of their stems later", () => {
    const learned = { ...FARM, cuts: SIX_DAYS_LATE };
    const lesson = seasonLesson(learned, 2027);
    if (!lesson) throw new RangeError("nothing was learned");
    const weeks = weeksAhead(lesson, learned, toDayNumber(day("2027-07-05"))).get("focal") ?? [];
    expect(weeks).toHaveLength(4);
    for (const { lowStems, meanStems, highStems } of weeks) {
      expect(lowStems).toBeLessThanOrEqual(meanStems);
      expect(meanStems).toBeLessThanOrEqual(highStems);
    }
    // Without delay nothing would open from 19 July on; six days late, three beds give about six sevenths of 300 stems.
    expect(weeks[2].meanStems).toBeGreaterThan(120);
  });
});
