import { describe, expect, test } from "vitest";
import type { Crop } from "#lib/domain/records/crop";
import type { Farm } from "#lib/domain/records/farm-settings";
import { hasStretch, holdOf, holdWindow, isTooShort } from "#lib/plan/road/hold-window";
import { stretchedByBooking } from "#lib/plan/road/stretched";
import { unheldCrops } from "#lib/plan/road/unheld";
import { stretchInWords } from "#lib/plan/words/stretch-words";
import { unheldInWords } from "#lib/plan/words/unheld-words";
import { provenPlan } from "../../proven-plan";
import { booking, crop, day, farm, focal, snapshot } from "../../small-farm";
import { keptDays } from "./kept-days";

const sourced = (count: number) => ({ count, mark: "own" as const, source: null });

/** Days as good as fresh, and at a stretch, of a crop that keeps 6 in water, 9 at a stretch and 12 dry, up to 5 °C. */
function kept(store: Partial<Farm>, given: Partial<Crop> = {}): [number, number] {
  const stored = crop({
    ...{ id: 1, holdDays: sourced(6), stretchDays: sourced(9), dryHoldDays: sourced(12), holdUpToC: sourced(5) },
    ...given,
  });
  const settings = farm({ storesDry: false, ...store });
  const { days, stretchDays } = holdOf(stored, settings);
  expect([days, stretchDays]).toEqual(keptDays(stored, { farm: settings }).map((one) => expect.closeTo(one, 9)));
  return [days, stretchDays];
}

describe("how long cut stems keep", () => {
  test("[M10] in water 6 days and 9 at a stretch, dry 12; a stretch shorter than that is none", () => {
    expect(kept({ storeC: null })).toEqual([6, 9]);
    expect(kept({ storeC: null, storesDry: true })).toEqual([12, 12]);
    expect(kept({ storeC: null, storesDry: true }, { stretchDays: sourced(15) })).toEqual([12, 15]);
    expect(kept({ storeC: null }, { stretchDays: sourced(2) })).toEqual([6, 6]);
  });

  test("[M10] in a cooler at 1 or 5 °C the days stand; at 15 °C a third of them is left, at 25 °C a ninth", () => {
    expect(kept({ storeC: 1 })).toEqual([6, 9]);
    expect(kept({ storeC: 5 })).toEqual([6, 9]);
    expect(kept({ storeC: 15 })[0]).toBeCloseTo(2, 12);
    expect(kept({ storeC: 25 })[1]).toBeCloseTo(1, 12);
  });

  test("[M10] what cold hurts stands in the cool room, at 15 °C, or as cold as it bears where the room is colder still", () => {
    const tropical = { notColderC: sourced(10) };
    expect(kept({ storeC: 3, coolRoomC: 15 }, tropical)[0]).toBeCloseTo(2, 12);
    expect(kept({ storeC: 3, coolRoomC: 8 }, tropical)).toEqual(kept({ storeC: 10 }));
    expect(kept({ storeC: 12, coolRoomC: 15 }, tropical)).toEqual(kept({ storeC: 12 }));
    expect(kept({ storeC: null, coolRoomC: 15 }, tropical)).toEqual([6, 9]);
  });

  test("[M10] a colder store never takes a day away from what cold does not hurt, whatever the crop's figures", () => {
    for (let upToC = -5; upToC <= 15; upToC += 5)
      for (let storeC = -5; storeC < 40; storeC++) {
        const figures = { holdUpToC: sourced(upToC), notColderC: sourced(-5) };
        expect(kept({ storeC }, figures)[0]).toBeGreaterThanOrEqual(kept({ storeC: storeC + 1 }, figures)[0]);
      }
  });

  test("[M1] a window reaches back whole days, a stretch with it; where a crop keeps less than the lead days it is empty", () => {
    const window = (days: number, stretchDays: number) => {
      const { earliest, latest } = holdWindow(100, 2, { days, stretchDays });
      return [earliest, latest];
    };
    expect(window(3.9, 3.9)).toEqual([97, 98]);
    expect(window(3, 5.5)).toEqual([95, 98]);
    expect(window(1, 2)).toEqual([98, 98]);
    expect(window(1, 1.9)).toEqual([99, 98]);
    expect([2, 1.9].map((days) => isTooShort({ days, stretchDays: days }, 2))).toEqual([false, true]);
    expect([3.9, 4].map((stretchDays) => hasStretch({ days: 3, stretchDays }))).toEqual([false, true]);
  });
});

describe("a stretch in the match", () => {
  /** Twenty stems of a $3 crop that keeps 3 days and 5 at a stretch, ten cut five days and ten three days before 12 June. */
  const planned = (bookings: Parameters<typeof booking>[0][]) =>
    provenPlan(
      snapshot({
        crops: [crop({ id: 1, holdDays: sourced(3), stretchDays: sourced(5) })],
        plantings: [],
        coolerStock: [
          { id: 1, varietyId: 1, cutOn: day("2027-06-07"), stemCount: 10 },
          { id: 2, varietyId: 1, cutOn: day("2027-06-09"), stemCount: 10 },
        ],
        bookings: bookings.map((given) => booking(given)),
      }),
      2027,
    );

  test("[M3] [M4] ten wanted take the fresh ones; fifteen take five at a stretch, each at half of $3, and go short of none", () => {
    const ten = planned([{ id: 1, stemLines: focal(10) }]);
    expect(ten.match.servings.map(({ stems, cutDay }) => [stems, ten.match.needs[0].eventDay - cutDay])).toEqual([
      [10, 3],
    ]);
    expect(ten.match.solution.totalCost).toBe(10 * 8);
    const fifteen = planned([{ id: 1, stemLines: focal(15) }]);
    expect(fifteen.match.shortStems[0]).toBe(0);
    expect(fifteen.match.solution.totalCost).toBe(10 * 8 + 5 * 150);
    expect(fifteen.pickList.map(({ stems, heldDays, isStretched }) => [stems, heldDays, isStretched])).toEqual([
      [5, 5, true],
      [10, 3, false],
    ]);
    const [stretched] = [...stretchedByBooking(fifteen.snapshot, fifteen.match)];
    expect(stretched).toEqual([1, { stems: 5, cents: 5 * 150 }]);
    expect(stretchInWords(stretched[1])).toBe(
      "5 stems are held at a stretch, longer than they keep as good as fresh: $7.50 is counted for it.",
    );
    expect(stretchInWords({ stems: 1, cents: 0 })).toBe(
      "1 stem is held at a stretch, longer than it keeps as good as fresh.",
    );
  });

  test("[M3] where a firm booking and an enquiry want ten each on one day, the stretch falls to the enquiry, at 0.3 of its cost", () => {
    const { match } = planned([
      { id: 1, status: "enquiry", stemLines: focal(10) },
      { id: 2, status: "confirmed", stemLines: focal(10) },
    ]);
    const got = match.servings.map(({ needIndex, cutDay }) => [
      match.needs[needIndex].booking.id,
      match.needs[needIndex].eventDay - cutDay,
    ]);
    expect(got.sort()).toEqual([
      [1, 5],
      [2, 3],
    ]);
    expect(match.solution.totalCost).toBe(10 * 8 + 10 * 45);
  });

  test("[M4] where the named crop is cheap to buy in and another will do, that other is still held at a stretch: short costs a cent more than the worst fit", () => {
    const cheap = provenPlan(
      snapshot({
        crops: [
          crop({ id: 1, holdDays: sourced(3), stretchDays: sourced(5), buyInCents: sourced(400) }),
          crop({ id: 2, buyInCents: sourced(1) }),
          crop({ id: 3, buyInCents: sourced(400) }),
        ],
        plantings: [],
        coolerStock: [{ id: 1, varietyId: 1, cutOn: day("2027-06-07"), stemCount: 10 }],
        bookings: [booking({ id: 1, stemLines: focal(12, { cropId: 2 }) })],
      }),
      2027,
    );
    expect(cheap.match.shortStems[0]).toBe(2);
    expect(cheap.match.solution.totalCost).toBe(10 * (200 + 6) + 2 * (25 + 200 + 1));
  });
});

test("[M1] a crop that keeps less than the lead days is told with its stems and how to mend it, and others are not", () => {
  const given = snapshot({
    crops: [crop({ id: 1, name: "Crested celosia", holdDays: sourced(1.5) }), crop({ id: 2 })],
    bookings: [booking({ id: 1, stemLines: focal(10) })],
  });
  const { match } = provenPlan(given, 2027);
  expect(match.shortStems[0]).toBe(10);
  const [unheld, ...others] = unheldCrops(given, match);
  expect(others).toEqual([]);
  expect(unheld.stems).toBe(match.supplies[0].stems.reduce((sum, stems) => sum + stems, 0));
  expect(unheldInWords(unheld, given.farm)).toEqual({
    place: "Crested celosia",
    message:
      "it keeps 1.5 days, and your last cut is 2 days before an event: none of its 70 stems can serve one. Write on its crop how long yours keeps, or cut nearer the event.",
  });
});
