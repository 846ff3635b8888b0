import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { toDay, weekdayOfDayNumber } from "#lib/domain/day";
import type { Cut } from "#lib/domain/records/cut";
import type { Snapshot } from "#lib/domain/snapshot";
import { watchedPlantings } from "#lib/plan/learning/season/watched-plantings";
import { dayToCut } from "#lib/plan/road/day-to-cut";
import { frostDayOf, type PlantingForecast } from "#lib/plan/road/forecast";
import { isOpenBed } from "#lib/plan/road/picking-days";
import type { Plan } from "#lib/plan/road/plan";
import { cannotWait, waitsInWords, waitsWhen } from "#lib/plan/words/waits-words";
import { booking, crop, curve, day, farm, focal, monthDay, planting, snapshot } from "../../small-farm";
import { anySeed } from "../any-farm";
import { anyGarden, daysOf, on, onceEach, shortOf } from "./lived-season";

/** Ten stems a day in the week from Monday 7 June, cut on Monday, Wednesday, Thursday and Saturday; they keep two days in the field and ten in water. */
const FARM = snapshot({
  farm: farm({ pickingWeekdays: [1, 3, 4, 6], leadDays: 1 }),
  crops: [crop({ id: 1, holdDays: { count: 10, mark: "own", source: null } })],
  curves: [curve({ stemsPerPlantByWeek: [1], anchor: { kind: "day-of-year", firstCut: monthDay("06-07") } })],
  plantings: [planting({ id: 1, plantCount: 70, aliveShare: 1, gradeOutShare: 0 })],
  bookings: [booking({ id: 1, eventOn: day("2027-06-14"), spareShare: 0, stemLines: focal(60) })],
});

const left = (given: Partial<Cut> = {}): Cut => ({
  ...{ id: 1, cutOn: day("2027-06-09"), bedId: 1, varietyId: 1, bookingId: 1 },
  ...{ stemsCut: 0, stemsAsked: 20, goodStems: null, restStands: true },
  ...given,
});

/** What stands, not cut yet, by bed, variety and picking day. */
function standing({ match }: Plan): Map<string, number> {
  const stems = new Map<string, number>();
  for (const { lots, days } of match.supplies.filter(({ bookingId }) => bookingId === undefined))
    lots.forEach((ofDay, index) => {
      for (const { stand, stems: ofLot } of ofDay) {
        if (stand.kind !== "planting" || stand.isRecorded) continue;
        const { bedId, varietyId } = stand.planting.planting;
        const key = `${bedId} ${varietyId} ${toDay(days[index])}`;
        stems.set(key, (stems.get(key) ?? 0) + ofLot);
      }
    });
  return stems;
}
const on9 = (cuts: readonly Cut[]) => on({ ...FARM, cuts: [...cuts] }, "2027-06-09");

describe("twenty stems that stand on Wednesday the 9th, ten of which opened on Tuesday", () => {
  test("[T14] left, they stand on Thursday beside its ten, and nobody is short", () => {
    const plan = on9([left()]);
    expect([...standing(plan)]).toEqual([
      ["1 1 2027-06-10", 30],
      ["1 1 2027-06-12", 20],
      ["1 1 2027-06-14", 10],
    ]);
    expect(shortOf(plan)).toEqual(shortOf(on9([])));
  });

  test("[T14] of eight cut and the rest left, twelve wait; cut as asked on Thursday, all is as if it had come on the day", () => {
    const eight = left({ stemsCut: 8 });
    expect(standing(on9([eight])).get("1 1 2027-06-10")).toBe(22);
    const thursday = left({ id: 2, cutOn: day("2027-06-10"), stemsCut: 22, stemsAsked: 22, restStands: false });
    expect(shortOf(on({ ...FARM, cuts: [eight, thursday] }, "2027-06-11"))).toEqual(shortOf(on9([])));
  });

  test("[T14] left on Thursday again, none that opened before keeps until Saturday, only what opened on Thursday does", () => {
    const again = left({ id: 2, cutOn: day("2027-06-10"), stemsAsked: 30 });
    const plan = on({ ...FARM, cuts: [left(), again] }, "2027-06-10");
    expect([...standing(plan)]).toEqual([
      ["1 1 2027-06-12", 30],
      ["1 1 2027-06-14", 10],
    ]);
  });

  test("[T14] nothing that is not recorded on Thursday counts as lost: it counts as cut as planned", () => {
    expect(shortOf(on({ ...FARM, cuts: [left()] }, "2027-06-11"))).toEqual(shortOf(on9([])));
    const none = left({ restStands: false });
    expect(shortOf(on({ ...FARM, cuts: [none] }, "2027-06-11"))[0]).toBe(shortOf(on9([]))[0] + 20);
  });

  test("[T14] in a bed that was sprayed they wait for the day it is open, and by then have faded", () => {
    const beds = [{ ...FARM.beds[0], noEntryFrom: day("2027-06-10"), noEntryUntil: day("2027-06-12") }];
    const plan = on({ ...FARM, beds, cuts: [left()] }, "2027-06-09");
    expect([...standing(plan)].filter(([key]) => key < "1 1 2027-06-12")).toEqual([]);
    const closed = on({ ...FARM, beds }, "2027-06-09");
    expect(standing(plan).get("1 1 2027-06-12")).toBe(standing(closed).get("1 1 2027-06-12"));
  });

  test("[T14] neither what was left nor the next record says what was ready", () => {
    const cuts = [left(), left({ id: 2, cutOn: day("2027-06-10"), stemsCut: 12, stemsAsked: null, restStands: false })];
    const later = left({ id: 3, cutOn: day("2027-06-12"), stemsCut: 9, stemsAsked: null, restStands: false });
    const seen = (all: readonly Cut[]) => watchedPlantings({ ...FARM, cuts: [...all] }, 2027)[0].watched.cuts;
    expect(seen(cuts)).toEqual([]);
    expect(seen([...cuts, later]).map(({ stems }) => stems)).toEqual([9]);
  });
});

test("[T14] a row says when it is cut if it is left, what fades by then, and for whom it is too late", () => {
  const waitsOf = (given: Partial<Snapshot>, today = "2027-06-09") => {
    const farmThen = { ...FARM, ...given };
    const lines = on(farmThen, today).pickList.filter(({ cutDay }) => toDay(cutDay) === today);
    const { waits } = dayToCut(farmThen, lines, day(today)).open[0];
    if (!waits) throw new Error("no row");
    return [waits.isOfUse ? waitsWhen(waits, day(today)) : null, waitsInWords(waits)];
  };
  expect(waitsOf({})).toEqual(["Tomorrow", null]);
  expect(waitsOf({}, "2027-06-10")).toEqual(["On Sat 12 Jun", null]);
  const soon = [{ ...FARM.bookings[0], eventOn: day("2027-06-10") }];
  expect(waitsOf({ bookings: soon })).toEqual([null, "Cannot wait: Thu 10 Jun is too late for Client 1."]);
  const mondays = farm({ pickingWeekdays: [3], leadDays: 1 });
  expect(waitsOf({ farm: mondays })).toEqual([
    null,
    "Cannot wait: Wed 16 Jun is the next picking day, and these do not keep in the field until then.",
  ]);
  const everyOther = farm({ pickingWeekdays: [3, 5], leadDays: 1 });
  expect(waitsOf({ farm: everyOther })).toEqual([
    "On Fri 11 Jun",
    "If it waits: 20 of 30 stems fade before Fri 11 Jun.",
  ]);
});

test("a list of which most rows cannot wait says so once, with whose and why; a short list, and one of which most can, leaves it to the rows", () => {
  const row = (name: string, isOfUse: boolean, client = "Ash") => ({
    name,
    waits: { until: day("2027-06-12"), stems: 10, waitingStems: 10, tooLate: isOfUse ? [] : [client], isOfUse },
  });
  const [a, b, c] = [row("A", false), row("B", false, "Elm"), row("C", false)];
  expect(cannotWait([a, b, c])).toEqual({
    lead: "None of these 3 rows can wait for another picking day.",
    reasons: [
      { why: "Sat 12 Jun is too late for Ash", names: ["A", "C"] },
      { why: "Sat 12 Jun is too late for Elm", names: ["B"] },
    ],
  });
  expect(cannotWait([a, b, c, row("D", true)])?.lead).toBe(
    "3 of these 4 rows cannot wait for another picking day; the one that can has a button for it.",
  );
  expect(cannotWait([a, b, c, row("D", true), row("E", true)])?.lead).toContain("those that can have a button");
  expect(cannotWait([a, b])).toBeNull();
  expect(cannotWait([a, b, c, row("D", true), row("E", true), row("F", true)])).toBeNull();
});

test("[T14] on any farm, counted bloom by bloom: what was left and keeps stands on the next picking day, and nothing else moves", () => {
  fc.assert(
    fc.property(anyGarden, fc.nat(), fc.nat(), fc.double({ min: 0, max: 1, noNaN: true }), (snap, at, which, share) => {
      const days = daysOf(on(snap, "2027-01-01"));
      if (days.length === 0) return;
      const today = days[at % days.length];
      const before = on(snap, today);
      const rows = before.pickList.filter(({ stand, cutDay }) => stand.kind === "planting" && cutDay === today);
      if (rows.length === 0) return;
      const { stand, booking: forWhom, stemsToCut } = rows[which % rows.length];
      if (stand.kind !== "planting") return;
      const { planting: row, bed } = stand.planting;
      const good = Math.floor(share * stemsToCut);
      const cuts = onceEach([
        {
          ...{
            cutOn: toDay(today),
            bedId: bed.id,
            varietyId: row.varietyId,
            bookingId: forWhom.id > 0 ? forWhom.id : null,
          },
          ...{ stemsCut: good, stemsAsked: stemsToCut, goodStems: good, restStands: true },
        },
      ]);
      const place = (on: number) => `${bed.id} ${row.varietyId} ${toDay(on)}`;
      const [was, is] = [standing(before), standing(on({ ...snap, cuts }, today))];
      const until = nextDay(snap, stand.planting, today);
      const stood = was.get(place(today)) ?? 0;
      const waiting = Math.min(Math.max(0, stood - good), keeps(snap, stand.planting, today, until, stood));
      const expected = new Map(was);
      expected.delete(place(today));
      if (waiting > 0) expected.set(place(until), (was.get(place(until)) ?? 0) + waiting);
      const told = (stems: Map<string, number>) => [...stems].filter(([, count]) => count > 0).sort();
      expect(told(is)).toEqual(told(expected));
    }),
    { ...anySeed, numRuns: 150 },
  );
});

/** The next picking day that the bed is open on, day by day. */
function nextDay({ farm: { pickingWeekdays } }: Snapshot, { bed }: PlantingForecast, today: number): number {
  let next = today + 1;
  while (!pickingWeekdays.includes(weekdayOfDayNumber(next)) || !isOpenBed(bed, next)) next++;
  return next;
}

/** Bloom by bloom: those that were waiting for today's cut and are still within their field days on that day, as a share of all that were. */
function keeps(snap: Snapshot, forecast: PlantingForecast, today: number, until: number, usable: number): number {
  const { crop: ofCrop, openingStems, opensFrom, planting: row } = forecast;
  if (ofCrop.tender && until >= frostDayOf(snap.farm, row.seasonYear)) return 0;
  let [all, fresh] = [0, 0];
  openingStems.forEach((stems, index) => {
    const opened = opensFrom + index;
    const isCutToday = opened === today || (opened < today && nextDay(snap, forecast, opened - 1) === today);
    if (!isCutToday || today - opened > ofCrop.fieldDays.count) return;
    for (let stem = 0; stem < stems; stem++) {
      all++;
      if (until - opened <= ofCrop.fieldDays.count) fresh++;
    }
  });
  return all === 0 ? 0 : Math.floor((usable * fresh) / all);
}
