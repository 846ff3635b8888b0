import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { toDay, toDayNumber } from "#lib/domain/day";
import type { Booking } from "#lib/domain/records/booking";
import type { Snapshot } from "#lib/domain/snapshot";
import { askedThen } from "#lib/plan/road/asked-then";
import { stemsCutUnrecorded } from "#lib/plan/road/cut-unrecorded";
import { withDraft } from "#lib/plan/road/draft";
import { needs } from "#lib/plan/road/needs";
import { takenToday } from "#lib/plan/road/taken-on";
import { unrecordedInWords } from "#lib/plan/words/unrecorded-words";
import { booking, day, focal, snapshot } from "../../small-farm";
import { anySeed } from "../any-farm";
import { anySeason, lived, on, shortOf } from "./lived-season";
import { TEN_A_DAY } from "./ten-a-day";

const wedding = (given: Partial<Booking> = {}) =>
  booking({ id: 1, eventOn: day("2027-06-11"), stemLines: focal(40), ...given });

describe("a wedding on Friday 11 June, for which Monday to Thursday could cut 10 each", () => {
  test("[T7] taken for 20, of which Wednesday gives 10, and made larger to 40 on Thursday it has of the days before what it asked for then, as typed and as saved", () => {
    const today = toDayNumber(day("2027-06-10"));
    const small = on({ ...TEN_A_DAY, bookings: [wedding({ stemLines: focal(20) })] }, today);
    const larger = { ...takenToday(small.snapshot, wedding({ stemLines: focal(40) }), 1, toDay(today)), id: 1 };
    expect(larger.askedBefore).toEqual([{ until: "2027-06-10", role: "focal", stems: 20 }]);
    const saved = on({ ...TEN_A_DAY, bookings: [larger] }, today);
    expect([[...withDraft(small, larger, 1).match.shortStems], shortOf(saved)]).toEqual([[20], [20]]);
    expect(stemsCutUnrecorded(saved.match, today, 1)).toBe(10);
    expect(unrecordedInWords(10, 40)).toContain("10 of its 40 stems count as cut, as planned, on days that nobody");
    expect(unrecordedInWords(0, 40)).toBeNull();
    // What was recorded as cut is its own, however much it asked for then.
    const recorded = {
      ...{ id: 1, cutOn: day("2027-06-09"), bedId: 1, varietyId: 1, bookingId: 1 },
      ...{ stemsCut: 30, stemsAsked: null, goodStems: null, restStands: false },
    };
    expect(shortOf(on({ ...TEN_A_DAY, bookings: [larger], cuts: [recorded] }, today))).toEqual([0]);
  });

  test("[T7] needs of a role are taken to have grown alike: of 34 cream and 170 of any colour, of which 102 were asked for until Thursday, 17 and 85; from that day on all, and before an earlier day what was asked for then", () => {
    const askedBefore = [
      { until: day("2027-06-10"), role: "focal" as const, stems: 102 },
      { until: day("2027-06-08"), role: "focal" as const, stems: 6 },
    ];
    const stemLines = [...focal(34, { colours: ["cream"] }), ...focal(170), ...focal(9, { role: "filler" })];
    const asked = needs(snapshot({ bookings: [wedding({ stemLines, askedBefore })] }), 2027);
    const then = (on: string) => askedThen(asked, toDayNumber(day(on))).map(({ role, stems }) => `${role} ${stems}`);
    expect(then("2027-06-10").sort()).toEqual(["filler 9", "focal 17", "focal 85"]);
    expect(then("2027-06-08").sort()).toEqual(["filler 9", "focal 1", "focal 5"]);
    expect(then("2027-06-11").sort()).toEqual(["filler 9", "focal 170", "focal 34"]);
    const [first] = askedThen(asked, toDayNumber(day("2027-06-10")));
    expect(askedThen(asked, toDayNumber(day("2027-06-10")))[0]).toBe(first);
  });

  test("[T7] made larger twice on a day it keeps what it asked for as the day began; made smaller, or long before its event, it keeps nothing; of a role that it never asked for it had none", () => {
    const farmOf = (row: Booking) => snapshot({ bookings: [row] });
    const asked = (row: Booking, stems: number, today: string, more: Booking["stemLines"] = []) => ({
      ...takenToday(farmOf(row), { ...row, stemLines: [...focal(stems), ...more] }, 1, day(today)),
      id: 1,
    });
    const second = asked(asked(wedding({ stemLines: focal(10) }), 20, "2027-06-09"), 30, "2027-06-09");
    const third = asked(second, 40, "2027-06-10", focal(5, { role: "filler" }));
    expect(second.askedBefore).toEqual([{ until: "2027-06-09", role: "focal", stems: 10 }]);
    expect(third.askedBefore).toEqual([
      { until: "2027-06-09", role: "focal", stems: 10 },
      { until: "2027-06-10", role: "focal", stems: 30 },
      { until: "2027-06-10", role: "filler", stems: 0 },
    ]);
    expect(asked(wedding(), 20, "2027-06-09").askedBefore).toEqual([]);
    expect(asked(wedding(), 80, "2027-02-09").askedBefore).toEqual([]);
    const gone = { ...third, status: "cancelled" as const };
    expect(takenToday(farmOf(gone), { ...gone, status: "held" }, 1, day("2027-06-10")).askedBefore).toEqual([]);
  });
});

test("[T7] over lived seasons, whoever is made larger on a day, what was cut and kept by then, for whom, is as it was the moment before, and the next day lies on top of it", () => {
  const season = fc.record({ season: anySeason, which: fc.nat(7), factor: fc.integer({ min: 2, max: 4 }) });
  let behindCount = 0;
  fc.assert(
    fc.property(season, ({ season: { snap: made, seed, dayCount }, which, factor }) => {
      // A line a role, so that a role's stems are of one need: which of several was made larger is not kept.
      const bookings = made.bookings.map((row) => ({
        ...row,
        pieces: [],
        stemLines: [...new Map(row.stemLines.map((line) => [line.role, line])).values()],
      }));
      const { cuts, today } = lived({ ...made, bookings }, seed, dayCount);
      const before = { ...made, bookings, cuts };
      const old = bookings[which % Math.max(1, bookings.length)];
      if (!old) return;
      const stemLines = old.stemLines.map((line) => ({ ...line, stemCount: line.stemCount * factor }));
      const draft = takenToday(before, { ...old, stemLines }, old.id, toDay(today));
      const after = { ...before, bookings: bookings.map((row) => (row === old ? { ...draft, id: old.id } : row)) };
      const behind = (snap: Snapshot, on: number) => supplyOn(snap, on).filter(({ day: cutDay }) => cutDay < today);
      expect(behind(after, today)).toEqual(behind(before, today));
      behindCount += behind(after, today).filter(({ bookingId }) => bookingId === old.id).length;
      // On the next day all that was cut before the day it was made larger is still as it was.
      expect(behind(after, today + 1)).toEqual(behind(before, today + 1));
    }),
    { ...anySeed, numRuns: 120 },
  );
  expect(behindCount).toBeGreaterThan(10);
});

/** What was cut, by variety, whose it is, and day. */
const supplyOn = (snap: Snapshot, today: number) =>
  on(snap, today).match.supplies.flatMap(({ variety, bookingId, days, stems }) =>
    days.flatMap((cutDay, at) =>
      cutDay < today && stems[at] > 0 ? [{ variety: variety.id, bookingId, day: cutDay, stems: stems[at] }] : [],
    ),
  );
