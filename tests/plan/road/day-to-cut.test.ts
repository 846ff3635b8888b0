import fc from "fast-check";
import { expect, test } from "vitest";
import { toDay } from "#lib/domain/day";
import type { Cut } from "#lib/domain/records/cut";
import type { StandingOrder } from "#lib/domain/records/standing-order";
import { daysNotRecorded, dayToCut } from "#lib/plan/road/day-to-cut";
import { splitCut } from "#lib/plan/road/split-cut";
import { booking, day, farm, focal, planting, snapshot } from "../../small-farm";
import { anySeed } from "../any-farm";
import { anySeason, lived, on } from "./lived-season";

test("[T6] of nine stems asked for two weddings, seven are five and two, eleven leave two for nobody, none is none for either", () => {
  const asked = [
    { bookingId: 4, stemsToCut: 5 },
    { bookingId: 2, stemsToCut: 4 },
  ];
  const stems = (cut: number) => splitCut(asked, cut).map(({ bookingId, stemsCut }) => [bookingId, stemsCut]);
  expect(stems(9)).toEqual([
    [4, 5],
    [2, 4],
  ]);
  expect(stems(7)).toEqual([
    [4, 5],
    [2, 2],
  ]);
  expect(stems(11)).toEqual([
    [4, 5],
    [2, 4],
    [null, 2],
  ]);
  expect(stems(0)).toEqual([
    [4, 0],
    [2, 0],
  ]);
  expect(splitCut(asked, 11).map(({ stemsAsked }) => stemsAsked)).toEqual([5, 4, 0]);
});

test("[T6] what standing orders ask for is recorded without a booking, in one part with what is over", () => {
  const asked = [
    { bookingId: 4, stemsToCut: 5 },
    { bookingId: null, stemsToCut: 3 },
    { bookingId: null, stemsToCut: 2 },
  ];
  const nobody = (cut: number) => splitCut(asked, cut).filter(({ bookingId }) => bookingId === null);
  expect(nobody(10)).toEqual([{ bookingId: null, stemsCut: 5, stemsAsked: 5 }]);
  expect(nobody(12)).toEqual([{ bookingId: null, stemsCut: 7, stemsAsked: 5 }]);
  expect(nobody(0)).toEqual([{ bookingId: null, stemsCut: 0, stemsAsked: 5 }]);
});

test("[T6] parts sum to what was cut, name every booking, and none gets more than was asked for it", () => {
  const anyRow = fc.record({
    asked: fc.uniqueArray(fc.record({ bookingId: fc.integer({ min: 1, max: 40 }), stemsToCut: fc.nat(30) }), {
      selector: ({ bookingId }) => bookingId,
      maxLength: 6,
    }),
    stemsCut: fc.nat(200),
  });
  fc.assert(
    fc.property(anyRow, ({ asked, stemsCut }) => {
      const parts = splitCut(asked, stemsCut);
      expect(parts.reduce((sum, part) => sum + part.stemsCut, 0)).toBe(stemsCut);
      expect(parts.filter(({ bookingId }) => bookingId !== null).map(({ bookingId }) => bookingId)).toEqual(
        asked.map(({ bookingId }) => bookingId),
      );
      for (const part of parts) if (part.bookingId !== null) expect(part.stemsCut).toBeLessThanOrEqual(part.stemsAsked);
    }),
    { ...anySeed, numRuns: 100 },
  );
});

test("[T10] what a second one counts of a row fills what the first left, then is nobody's; what lists asked is the most that any did", () => {
  const asked = [
    { bookingId: 4, stemsToCut: 5 },
    { bookingId: 2, stemsToCut: 4 },
  ];
  const first = splitCut(asked, 7);
  const second = splitCut(asked, 4, first);
  expect(second.map(({ bookingId, stemsCut, stemsAsked }) => [bookingId, stemsCut, stemsAsked])).toEqual([
    [4, 5, 5],
    [2, 4, 4],
    [null, 2, 0],
  ]);
  const more = splitCut([{ bookingId: 4, stemsToCut: 8 }], 3, second);
  expect(more).toEqual([{ bookingId: 4, stemsCut: 8, stemsAsked: 8 }]);
});

test("[T10] counts of one list give each booking the same in whichever order they come, and as much as one count of them all", () => {
  const anyCounts = fc.record({
    asked: fc.uniqueArray(fc.record({ bookingId: fc.integer({ min: 1, max: 9 }), stemsToCut: fc.nat(30) }), {
      selector: ({ bookingId }) => bookingId,
      minLength: 1,
      maxLength: 5,
    }),
    counts: fc.array(fc.nat(20), { minLength: 1, maxLength: 6 }),
  });
  fc.assert(
    fc.property(anyCounts, ({ asked, counts }) => {
      const inTurn = (order: readonly number[]) =>
        order.reduce<ReturnType<typeof splitCut>>((recorded, stems) => {
          const parts = splitCut(asked, stems, recorded);
          const named = new Set(parts.map(({ bookingId }) => bookingId));
          return [...parts, ...recorded.filter(({ bookingId }) => !named.has(bookingId))];
        }, []);
      const atOnce = splitCut(
        asked,
        counts.reduce((sum, stems) => sum + stems, 0),
      );
      expect(inTurn(counts)).toEqual(atOnce);
      expect(inTurn(counts.toReversed())).toEqual(atOnce);
    }),
    { ...anySeed, numRuns: 100 },
  );
});

const FARM = snapshot({
  farm: farm({ pickingWeekdays: [1, 2, 3, 4, 5, 6, 7] }),
  plantings: [planting({ id: 1, plantCount: 70 })],
  bookings: [
    booking({ id: 1, client: "Later", eventOn: day("2027-06-13"), spareShare: 0, stemLines: focal(3) }),
    booking({ id: 2, client: "Sooner", eventOn: day("2027-06-12"), spareShare: 0, stemLines: focal(5) }),
  ],
});

test("a row to cut is one bed and variety for all weddings, the sooner first; a recorded one is done with what was asked", () => {
  const first = on(FARM, "2027-06-01").pickList[0];
  const today = toDay(first.cutDay);
  const made = on(FARM, today);
  const lines = made.pickList.filter(({ cutDay }) => cutDay === first.cutDay);
  const { open, done } = dayToCut(FARM, lines, today);
  expect(done).toEqual([]);
  expect(open).toHaveLength(1);
  const events = open[0].parts.map(({ booking: { eventOn } }) => eventOn);
  expect(events).toEqual([...events].sort());
  expect(open[0].stemsToCut).toBe(lines.reduce((sum, { stemsToCut }) => sum + stemsToCut, 0));

  const cuts = splitCut(open[0].parts, open[0].stemsToCut).map(
    (part, index): Cut => ({
      ...{ id: index + 1, cutOn: today, bedId: 1, varietyId: 1 },
      ...{ goodStems: null, restStands: false },
      ...part,
    }),
  );
  const saved = { ...FARM, cuts };
  const after = on(saved, today);
  const evening = dayToCut(
    saved,
    after.pickList.filter(({ cutDay }) => cutDay === first.cutDay),
    today,
  );
  expect(evening.open).toEqual([]);
  expect(evening.done).toMatchObject([{ place: "B1", stemsCut: open[0].stemsToCut, stemsAsked: open[0].stemsToCut }]);
});

test("[SO2] in a row that a standing order shares, weddings come first, also one of a later day", () => {
  const market: StandingOrder = {
    ...{ id: 1, buyer: "Market", kind: "market", weekday: 6, firstOn: day("2027-06-12"), lastOn: day("2027-06-12") },
    ...{ role: "focal", cropId: null, recipeId: null, colours: [], askedCount: 3, stemCents: 90 },
  };
  const farm = { ...FARM, standingOrders: [market] };
  const made = on(farm, "2027-06-01");
  const clients = [...new Set(made.pickList.map(({ cutDay }) => cutDay))].flatMap((cutDay) =>
    dayToCut(
      farm,
      made.pickList.filter((line) => line.cutDay === cutDay),
      toDay(cutDay),
    ).open.map(({ parts }) => parts.map(({ booking: { client } }) => client)),
  );
  const shared = clients.filter((names) => names.includes("Market") && names.length > 1);
  expect(shared.length).toBeGreaterThan(0);
  for (const names of shared) expect(names.at(-1)).toBe("Market");
});

test("[T1] days behind with something not recorded are told, the latest first, with the stems that count as planned", () => {
  fc.assert(
    fc.property(anySeason, ({ snap, seed, dayCount }) => {
      const { cuts, today } = lived(snap, seed, dayCount);
      const { pickList } = on({ ...snap, cuts }, today);
      const days = daysNotRecorded(pickList, day("2027-05-01"), toDay(today));
      const counted = pickList.filter(
        ({ stand, cutDay }) =>
          stand.kind === "planting" && !stand.isRecorded && cutDay < today && toDay(cutDay) >= "2027-05-01",
      );
      expect(days.map(({ day: one }) => one)).toEqual(
        [...new Set(counted.map(({ cutDay }) => cutDay))].sort((a, b) => b - a),
      );
      expect(days.reduce((sum, { stemsToCut }) => sum + stemsToCut, 0)).toBe(
        counted.reduce((sum, { stemsToCut }) => sum + stemsToCut, 0),
      );
    }),
    { ...anySeed, numRuns: 20 },
  );
});
