import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { toDayNumber } from "#lib/domain/day";
import { eventDaysOf } from "#lib/domain/event-days";
import type { Snapshot } from "#lib/domain/snapshot";
import { type FrostAlarm, frostAlarm } from "#lib/plan/road/frost-alarm";
import { checkMatch } from "#lib/plan/road/match";
import type { PickLine } from "#lib/plan/road/pick-list";
import type { Plan } from "#lib/plan/road/plan";
import { alarmInWords, noRoomTitle } from "#lib/plan/words/frost-words";
import { booking, crop, curve, day, farm, focal, planting, snapshot, variety } from "../../small-farm";
import { anySeed } from "../any-farm";
import { anyGarden, on } from "./lived-season";

const number = (text: string) => toDayNumber(day(text));
const stemsOf = (lines: readonly PickLine[]) =>
  lines.map(({ booking: { client }, stems, bucketCount }) => [client, stems, bucketCount]);

/** Ten stems a day of a tender crop in the week of 7 June, cut on Monday, Wednesday, Thursday and Saturday; frost on the morning of Friday the 11th. */
const home = (bucketPlaces: number | null, given: Parameters<typeof snapshot>[0] = {}) =>
  snapshot({
    farm: farm({ bucketPlaces }),
    crops: [crop({ id: 1, name: "Dahlia", tender: true, bucketStems: { count: 10, mark: "own", source: null } })],
    curves: [curve()],
    bookings: [
      booking({ id: 1, client: "Ivy", eventOn: day("2027-06-12"), stemLines: focal(20) }),
      booking({ id: 2, client: "Fern", eventOn: day("2027-06-14"), stemLines: focal(20) }),
    ],
    ...given,
  });
const alarmOf = (snap: Snapshot): FrostAlarm => frostAlarm(on(snap, "2027-06-08"), number("2027-06-11"));

describe("ten stems fill a bucket: 20 stems are due for Ivy on Saturday, and 10 more can be cut on Thursday for Fern on Monday", () => {
  test("[T15] three places hold all, and so does a cooler of which nothing is said", () => {
    for (const places of [3, null]) {
      const alarm = alarmOf(home(places));
      expect(stemsOf(alarm.noRoom)).toEqual([]);
      expect(alarm.cutAhead.reduce((sum, { stems }) => sum + stems, 0)).toBe(30);
      expect(alarm.besideRoom).toBeNull();
    }
  });

  test("[T15] of two places Ivy's stems, which are due anyway, have both: Fern's ten find no room in the one bucket that would hold them, and all her 20 are lost", () => {
    const alarm = alarmOf(home(2));
    expect(stemsOf(alarm.noRoom)).toEqual([["Fern", 10, 1]]);
    expect(alarm.cutAhead.every(({ booking: { client } }) => client === "Ivy")).toBe(true);
    expect(alarm.stillLost.map(({ booking: { client }, stems }) => [client, stems])).toEqual([["Fern", 20]]);
    expect(alarmInWords(alarm)).toContain(
      "The cooler is full then: 10 more would keep until their event, if 1 more bucket found a cold place. 20 are lost all the same: 20 for Fern.",
    );
    expect(noRoomTitle(alarm.noRoom)).toBe("No room in the cooler: 10 stems in 1 bucket");
  });

  test("[T15] what lies in the cooler for nobody has its place to its last day of use", () => {
    const old = { id: 1, varietyId: 2, cutOn: day("2027-06-08"), stemCount: 3 };
    const white = { ...variety({ id: 2 }), cropId: 2 };
    const filled = (holdDays: number) =>
      home(3, {
        crops: [
          ...home(3).crops,
          crop({ id: 2, roles: ["foliage"], holdDays: { count: holdDays, mark: "own", source: null } }),
        ],
        varieties: [variety({ id: 1 }), white],
        coolerStock: [old],
      });
    expect(stemsOf(alarmOf(filled(9)).noRoom)).toEqual([["Fern", 10, 1]]);
    expect(stemsOf(alarmOf(filled(1)).noRoom)).toEqual([]);
  });
});

describe("for one wedding on Monday the 14th, 5 of Thursday's stems are due and 5 more can be cut", () => {
  test("[T15] they fill up the bucket that stands there anyway, so that they need no place of their own", () => {
    const bookings = [booking({ id: 1, client: "Ivy", eventOn: day("2027-06-14"), stemLines: focal(25) })];
    for (const places of [0, 1])
      expect(stemsOf(alarmOf(home(places, { bookings })).cutAhead)).toEqual([["Ivy", 10, 1]]);
  });
});

describe("two weddings on one Monday could each have a bucket of ten, and there is one place", () => {
  const bookings = [1, 2].map((id) =>
    booking({ id, client: `Client ${id}`, eventOn: day("2027-06-14"), stemLines: focal(10) }),
  );
  const cutFor = (of: typeof bookings, places = 1) =>
    alarmOf(home(places, { bookings: of, plantings: [planting({ id: 1, plantCount: 140 })] })).cutAhead.map(
      ({ booking: { client } }) => client,
    );

  test("[T15] the confirmed one has it before the held one, whichever was taken first", () => {
    const [first, second] = bookings;
    expect(cutFor([{ ...first, status: "held" }, second])).toEqual(["Client 2"]);
    expect(cutFor([first, { ...second, status: "held" }])).toEqual(["Client 1"]);
    expect(cutFor(bookings, 2)).toEqual(["Client 1", "Client 2"]);
    expect(cutFor(bookings, 0)).toEqual([]);
  });

  test("[T15] [M9] of two confirmed ones the one whose stems were promised", () => {
    const promises = focal(10);
    const [first, second] = bookings;
    expect(cutFor([first, { ...second, promises }])).toEqual(["Client 2"]);
    expect(cutFor([{ ...first, promises }, second])).toEqual(["Client 1"]);
  });
});

/** What stands in the cooler each night from a day on, in buckets, counted row by row; and how many of them would stand there without what is cut on top of what is due. */
function byNight(plan: Plan, alarm: FrostAlarm, today: number) {
  const { snapshot: snap } = plan;
  const all = new Map<string, { from: number; until: number; filled: number; due: number }>();
  const put = (key: string, from: number, until: number, filled: number, due = filled) => {
    const known = all.get(key) ?? { from: Math.max(from, today), until, filled: 0, due: 0 };
    all.set(key, { ...known, filled: known.filled + filled, due: known.due + due });
  };
  const keyOf = (plantingId: number, cutDay: number, bookingId: number) => `${plantingId} ${cutDay} ${bookingId}`;
  const due = new Map<string, number>();
  for (const {
    stand,
    cutDay,
    booking: { id },
    crop: { tender },
    stems,
  } of plan.pickList)
    if (stand.kind === "planting" && tender && cutDay >= today && cutDay <= alarm.eve)
      due.set(keyOf(stand.planting.planting.id, cutDay, id), stems);
  const forBooking = ({ booking: { id, eventOn }, cutDay }: Pick<PickLine, "booking" | "cutDay">) => {
    const { deliverDays } = eventDaysOf(
      snap.farm,
      snap.bookings.find((row) => row.id === id),
    );
    return [`${cutDay} ${id}`, cutDay, toDayNumber(eventOn) - deliverDays] as const;
  };
  const free = new Map(snap.coolerStock.map((stock) => [stock.id, stock.stemCount]));
  const { needs, supplies, servings } = alarm.match;
  for (const { stand, cutDay, needIndex, supplyIndex, stems } of servings) {
    const { crop: of } = supplies[supplyIndex];
    const isStanding = stand.kind === "planting";
    if (!isStanding) free.set(stand.stock.id, (free.get(stand.stock.id) ?? 0) - stems);
    if (isStanding && of.tender && cutDay >= today && cutDay <= alarm.eve) continue;
    const { booking: served, eventDay } = needs[needIndex];
    if (eventDay >= today) put(...forBooking({ booking: served, cutDay }), stems / of.bucketStems.count);
  }
  for (const line of alarm.cutAhead) {
    if (line.stand.kind !== "planting") continue;
    const share = 1 / line.crop.bucketStems.count;
    const isDue = due.get(keyOf(line.stand.planting.planting.id, line.cutDay, line.booking.id)) ?? 0;
    put(...forBooking(line), line.stems * share, Math.min(isDue, line.stems) * share);
  }
  for (const { id, varietyId, cutOn } of snap.coolerStock) {
    const supply = supplies.find(({ variety: { id: of } }) => of === varietyId);
    const stems = free.get(id) ?? 0;
    if (!supply || stems === 0) continue;
    const cutDay = toDayNumber(cutOn);
    const lastDay = cutDay + Math.floor(supply.hold.stretchDays);
    if (lastDay + 14 >= today) put(`${varietyId} in ${cutOn}`, cutDay, lastDay, stems / supply.crop.bucketStems.count);
  }
  return (night: number) => {
    const groups = [...all.values()].filter(({ from, until }) => from <= night && night < until);
    const buckets = (parts: readonly number[]) => parts.reduce((sum, part) => sum + Math.ceil(part - 1e-9), 0);
    return { all: buckets(groups.map(({ filled }) => filled)), anyway: buckets(groups.map((group) => group.due)) };
  };
}

const anyCooler = fc.record({
  snap: anyGarden,
  bucketPlaces: fc.integer({ min: 0, max: 6 }),
  bucketStems: fc.tuple(...[1, 2, 3].map(() => fc.integer({ min: 1, max: 12 }))),
  isOneSize: fc.boolean(),
  date: fc.integer({ min: 5, max: 14 }),
  nights: fc.integer({ min: 1, max: 5 }),
});

test("[T15] on any farm no night has more buckets than there are places but for those that stand there anyway, what finds no room meets a full night, and both make up what could be cut ahead without end of room", () => {
  let withoutRoom = 0;
  let onTop = 0;
  fc.assert(
    fc.property(anyCooler, ({ snap: made, bucketPlaces, bucketStems, isOneSize, date, nights }) => {
      const crops = made.crops.map((row, index) => {
        const count = bucketStems[isOneSize ? 0 : index];
        return { ...row, tender: true, bucketStems: { count, mark: "own" as const, source: null } };
      });
      const { frost } = farm();
      // A garden that has more in bloom, and nobody who only asks: so that there is something to cut ahead.
      const plantings = made.plantings.map((row) => ({ ...row, plantCount: row.plantCount * 3 }));
      const bookings = made.bookings.map((row) =>
        row.status === "confirmed" ? row : { ...row, status: "held" as const },
      );
      const snap = { ...made, crops, plantings, bookings, farm: { ...made.farm, frost, bucketPlaces } };
      const today = number(`2027-06-${String(date).padStart(2, "0")}`);
      const plan = on(snap, today);
      const alarm = frostAlarm(plan, today + nights);
      const endless = frostAlarm(on({ ...snap, farm: { ...snap.farm, bucketPlaces: null } }, today), today + nights);
      const stems = (lines: readonly PickLine[]) => lines.reduce((sum, line) => sum + line.stems, 0);
      expect(stems(alarm.cutAhead) + stems(alarm.noRoom)).toBe(stems(endless.cutAhead));
      expect(alarm.besideRoom ? checkMatch(alarm.besideRoom) : []).toEqual([]);
      const lost = (of: FrostAlarm) => (of.besideRoom ?? of.match).shortStems.reduce((sum, short) => sum + short, 0);
      expect(lost(alarm)).toBeGreaterThanOrEqual(lost(endless));
      expect(lost(alarm)).toBeLessThanOrEqual(lost(endless) + stems(alarm.noRoom));
      const standing = byNight(plan, alarm, today);
      for (let night = today; night < today + 20; night++) {
        const { all, anyway } = standing(night);
        expect(all).toBeLessThanOrEqual(Math.max(bucketPlaces, anyway));
        if (all > anyway) onTop++;
      }
      if (stems(alarm.noRoom) > 0) withoutRoom++;
      // Of buckets of several sizes a stem's part can be left over, so that a night is full with a bucket fewer than one counts.
      if (isOneSize)
        for (const { booking: served, cutDay } of alarm.noRoom) {
          const until = toDayNumber(served.eventOn) - eventDaysOf(snap.farm, served).deliverDays;
          const stay = Array.from({ length: until - cutDay }, (_, index) => standing(cutDay + index).all);
          expect(Math.max(...stay)).toBeGreaterThanOrEqual(bucketPlaces);
        }
    }),
    { ...anySeed, numRuns: 200 },
  );
  expect(withoutRoom).toBeGreaterThan(10);
  expect(onTop).toBeGreaterThan(20);
});
