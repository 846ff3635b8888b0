import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { toDay } from "#lib/domain/day";
import type { Booking } from "#lib/domain/records/booking";
import type { Snapshot } from "#lib/domain/snapshot";
import { withDraft } from "#lib/plan/road/draft";
import { checkMatch, type Match } from "#lib/plan/road/match";
import { takenToday } from "#lib/plan/road/taken-on";
import { booking, day, focal, snapshot } from "../../small-farm";
import { anySeed } from "../any-farm";
import { anySeason, lived, on, shortOf } from "./lived-season";
import { TEN_A_DAY } from "./ten-a-day";

/** Stems of a booking that were cut before a day, as [when cut, stems, recorded]. */
const cutBefore = ({ servings, needs }: Match, bookingId: number, before: number) =>
  servings
    .filter(({ needIndex, cutDay }) => needs[needIndex].booking.id === bookingId && cutDay < before)
    .map(({ cutDay, stems, stand }) => ({
      day: toDay(cutDay),
      stems,
      isRecorded: stand.kind === "cooler" || stand.isRecorded === true,
    }));

describe("a wedding of 40 on Friday 11 June, for which Monday to Thursday could cut 10 each", () => {
  const wedding = (given: Partial<Booking> = {}) =>
    booking({ id: 1, eventOn: day("2027-06-11"), stemLines: focal(40), ...given });
  const shortWhenTaken = (takenOn: string | null) =>
    shortOf(
      on({ ...TEN_A_DAY, bookings: [wedding({ takenOn: takenOn === null ? null : day(takenOn) })] }, "2027-06-10"),
    );

  test("[T7] known all season it has them all; taken on Wednesday it has the 10 of Wednesday and those of Thursday", () => {
    expect(shortWhenTaken(null)).toEqual([0]);
    expect(shortWhenTaken("2027-05-02")).toEqual([0]);
    expect(shortWhenTaken("2027-06-09")).toEqual([20]);
    expect(shortWhenTaken("2027-06-10")).toEqual([30]);
  });

  test("[T7] what was recorded as cut for it before it was taken is its own all the same", () => {
    const cuts = [
      {
        ...{ id: 1, cutOn: day("2027-06-08"), bedId: 1, varietyId: 1, bookingId: 1 },
        ...{ stemsCut: 10, stemsAsked: null, goodStems: null, restStands: false },
      },
    ];
    const bookings = [wedding({ takenOn: day("2027-06-10") })];
    expect(shortOf(on({ ...TEN_A_DAY, bookings, cuts }, "2027-06-10"))).toEqual([20]);
  });

  test("[T7] taken late it takes nothing of what was cut for another before", () => {
    const first = booking({ id: 2, client: "First", eventOn: day("2027-06-12"), stemLines: focal(30) });
    const late = wedding({ takenOn: day("2027-06-10") });
    const { match } = on({ ...TEN_A_DAY, bookings: [late, first] }, "2027-06-10");
    // Wednesday's ten were cut for the first; Thursday's go to the earlier event, and Friday's to the first.
    expect(match.needs.map((need, index) => [need.booking.client, match.shortStems[index]])).toEqual([
      ["Client 1", 30],
      ["First", 10],
    ]);
    const wednesday = cutBefore(match, 2, match.needs[1].eventDay - 2);
    expect(wednesday).toEqual([{ day: "2027-06-09", stems: 10, isRecorded: false }]);
  });
});

test("[T7] over lived seasons no booking has a stem that was cut, and not recorded, before it was taken", () => {
  const season = fc.record({ season: anySeason, late: fc.array(fc.nat(30), { minLength: 8, maxLength: 8 }) });
  let had = 0;
  fc.assert(
    fc.property(season, ({ season: { snap, seed, dayCount }, late }) => {
      const { cuts, today } = lived(snap, seed, dayCount);
      const bookings = snap.bookings.map((row, at) => ({ ...row, takenOn: toDay(today - late[at]) }));
      const { match } = on({ ...snap, bookings, cuts }, today);
      bookings.forEach((row, at) => {
        const before = cutBefore(match, row.id, today - late[at]);
        expect(before.filter(({ isRecorded }) => !isRecorded)).toEqual([]);
        had += before.length;
      });
    }),
    { ...anySeed, numRuns: 60 },
  );
  expect(had).toBeGreaterThan(0);
});

describe("a draft within the season", () => {
  /** What a match says of every need. */
  const said = ({ needs, shortStems, solution }: Match) => [
    solution.totalCost,
    needs.map(({ booking: { client, eventOn }, kind, stems }, at) => [client, eventOn, kind, stems, shortStems[at]]),
  ];
  const withRow = (snap: Snapshot, row: Booking): Snapshot => ({
    ...snap,
    bookings: [...snap.bookings.filter(({ id }) => id !== row.id), row].sort((a, b) => a.id - b.id),
  });
  /** Its draft and the saved booking, each as it stands in the match of that day. */
  const draftAndSaved = (snap: Snapshot, row: Booking, today: number): [unknown, unknown] => {
    const isNew = snap.bookings.every(({ id }) => id !== row.id);
    const draft = takenToday(snap, row, isNew ? null : row.id, toDay(today));
    const { match } = withDraft(on(snap, today), draft, isNew ? null : row.id);
    expect(checkMatch(match)).toEqual([]);
    return [said(match), said(on(withRow(snap, { ...draft, id: row.id }), today).match)];
  };

  test("[L2] [T7] new, changed, cancelled, reopened or moved, it says what it will say when it is saved", () => {
    const some = fc.record({ season: anySeason, which: fc.nat(7), move: fc.integer({ min: -6, max: 6 }) });
    fc.assert(
      fc.property(some, ({ season: { snap, seed, dayCount }, which, move }) => {
        const { cuts, today } = lived(snap, seed, dayCount);
        const farmNow = { ...snap, cuts };
        const old = snap.bookings[which % Math.max(1, snap.bookings.length)];
        const added = booking({ id: 99, client: "New", eventOn: toDay(today + 3), stemLines: focal(9) });
        const changes: Booking[] = old
          ? [
              added,
              { ...old, stemLines: [...old.stemLines, ...focal(7)] },
              { ...old, status: old.status === "cancelled" ? "confirmed" : "cancelled" },
              { ...old, eventOn: toDay(today + move) },
            ]
          : [added];
        for (const row of changes) {
          const [draft, saved] = draftAndSaved(farmNow, row, today);
          expect(draft).toEqual(saved);
        }
      }),
      { ...anySeed, numRuns: 60 },
    );
  });
});

test("[T7] a booking is taken anew when it is brought forward or taken back, and not when it is changed or put off", () => {
  const old = booking({ id: 1, takenOn: day("2027-02-01") });
  const cancelled = booking({ id: 2, status: "cancelled", takenOn: null });
  const saved = (draft: Booking, id: number | null = draft.id) =>
    takenToday(snapshot({ bookings: [old, cancelled] }), draft, id, day("2027-06-10")).takenOn;
  expect(saved(booking({ id: 3 }), null)).toBe("2027-06-10");
  expect(saved(booking({ id: 3, takenOn: day("2027-06-01") }), null)).toBe("2027-06-01");
  expect(saved({ ...old, stemLines: focal(9) })).toBe("2027-02-01");
  expect(saved({ ...old, eventOn: day("2027-06-20") })).toBe("2027-02-01");
  expect(saved({ ...old, eventOn: day("2027-06-11") })).toBe("2027-06-10");
  expect(saved({ ...old, eventOn: day("2027-06-11"), takenOn: day("2027-06-08") })).toBe("2027-06-08");
  expect(saved({ ...cancelled, status: "held" })).toBe("2027-06-10");
  expect(saved({ ...old, status: "cancelled" })).toBe("2027-02-01");
});
