import { beforeAll, describe, expect, test } from "vitest";
import { demoSnapshot } from "#demo/demo-snapshot";
import { type Day, parseDay, toDay, toDayNumber, yearOf } from "#lib/domain/day";
import type { Booking } from "#lib/domain/records/booking";
import type { LossCause } from "#lib/domain/records/loss";
import { withShortClients } from "#lib/domain/short-clients";
import type { Snapshot } from "#lib/domain/snapshot";
import { eventReviews } from "#lib/plan/learning/review/event-review";
import { winterProposals } from "#lib/plan/learning/review/winter-proposals";
import { seasonLesson } from "#lib/plan/learning/season/season-lesson";
import { type CoolerLot, storedLots } from "#lib/plan/road/cooler";
import { finalCountsDue, sinceFinal } from "#lib/plan/road/final-count";
import { firstFrostDay } from "#lib/plan/road/first-frost";
import { frostDayOf } from "#lib/plan/road/forecast";
import type { Plan } from "#lib/plan/road/plan";
import { isOnTheWay, purchaseLines, stemsNotDelivered } from "#lib/plan/road/purchase-slips";
import { winterBeds } from "#lib/plan/winter/beds";
import { provenPlan } from "../proven-plan";

const JUNE = parseDay("2027-06-10");
const alone = demoSnapshot(2027);
let june: Snapshot;
beforeAll(() => {
  june = demoSnapshot(2027, JUNE);
});

/** Days late of the season's plantings that something was recorded of, on the mean. */
function meanDaysLate(snapshot: Snapshot, seasonYear: number): number {
  const crops = seasonLesson(snapshot, seasonYear)?.crops ?? [];
  return crops.reduce((sum, { daysLate }) => sum + daysLate, 0) / crops.length;
}

const ofYear = <T>(rows: readonly T[], dayOf: (row: T) => Day, year: number): T[] =>
  rows.filter((row) => yearOf(dayOf(row)) === year);

describe("the demo farm as it stands on 10 June 2027", () => {
  test("but for plants lost, orders and promises its own season is the one it has without the seasons before: same rows, same needs, same stems short, the same beds to choose from", () => {
    const unsettled = ({ finalOn: _, finalPieces: __, finalStems: ___, promises: ____, ...asked }: Booking) => asked;
    const own = june.bookings.filter(({ eventOn }) => eventOn.startsWith("2027"));
    expect(own.map(unsettled)).toEqual(alone.bookings.map(unsettled));
    expect(june.plantings.filter(({ seasonYear }) => seasonYear === 2027)).toEqual(alone.plantings);
    const bookings = june.bookings.map((booking) => ({ ...booking, promises: [] }));
    const before = { ...june, bookings, weather: alone.weather, losses: [], purchases: [] };
    const [a, b] = [provenPlan(before, 2027), provenPlan(alone, 2027)];
    const needsOf = ({ match }: Plan) =>
      match.needs.map(({ booking: { client }, role, stems }, index) => [client, role, stems, match.shortStems[index]]);
    expect(needsOf(a)).toEqual(needsOf(b));
    const names = (snapshot: Snapshot) => winterBeds(snapshot, 2027).map(({ bed }) => bed.name);
    expect(names(before)).toEqual(names(alone));
  });

  test("the two seasons before have plantings, bookings with names of their own, cuts, looks at buds and reviews; its own those up to yesterday", () => {
    for (const year of [2025, 2026, 2027]) {
      expect(june.plantings.filter(({ seasonYear }) => seasonYear === year).length).toBeGreaterThan(180);
      expect(ofYear(june.bookings, ({ eventOn }) => eventOn, year).length).toBeGreaterThan(20);
      expect(ofYear(june.cuts, ({ cutOn }) => cutOn, year).length).toBeGreaterThan(150);
      expect(ofYear(june.budLooks, ({ lookedOn }) => lookedOn, year).length).toBeGreaterThan(100);
      const reviews = eventReviews(provenPlan(june, year, frostDayOf(june.farm, year), null, toDayNumber(JUNE)));
      expect(reviews.filter(({ isReviewed }) => isReviewed).length).toBeGreaterThan(5);
    }
    for (const { cutOn } of june.cuts) expect(cutOn < JUNE).toBe(true);
    for (const { lookedOn } of june.budLooks) expect(lookedOn < JUNE).toBe(true);
    expect(june.weather && toDay(june.weather.firstDay + june.weather.lowC.length - 1)).toBe("2027-06-09");
    const short = withShortClients(june.bookings).map(({ client }) => client);
    expect(new Set(short).size).toBe(short.length);
    for (const { note } of june.bookings) expect(note).toMatch(/^Invented\./);
  });

  test("every cut was asked for, and made of a planting that stood in the bed that season; most came as asked and some short", () => {
    const places = new Set(
      june.plantings.map(({ seasonYear, bedId, varietyId }) => `${seasonYear} ${bedId} ${varietyId}`),
    );
    for (const { cutOn, bedId, varietyId, stemsCut, stemsAsked } of june.cuts) {
      expect(places).toContain(`${yearOf(cutOn)} ${bedId} ${varietyId}`);
      expect(stemsCut).toBeLessThanOrEqual(stemsAsked ?? 0);
    }
    const shortCount = june.cuts.filter(({ stemsCut, stemsAsked }) => stemsCut < (stemsAsked ?? 0)).length;
    expect(shortCount).toBeGreaterThan(june.cuts.length / 20);
    expect(shortCount).toBeLessThan(june.cuts.length / 2);
  });

  test("two years ago came late, last year did not, and this one runs a little late: that is what the records have shown", () => {
    expect(meanDaysLate(june, 2025)).toBeGreaterThan(3);
    expect(Math.abs(meanDaysLate(june, 2026))).toBeLessThan(2);
    expect(meanDaysLate(june, 2027)).toBeGreaterThan(1);
  });

  test("last year's frost came early, and no dahlia was cut after it", () => {
    const frost = june.weather && firstFrostDay(june.weather, 2026);
    expect(frost && toDay(frost) < `2026-${june.farm.frost.firstAutumnP50}`).toBe(true);
    const wintering = new Set(june.crops.filter(({ overwinters }) => overwinters).map(({ id }) => id));
    const dahlias = new Set(june.varieties.filter(({ cropId }) => wintering.has(cropId)).map(({ id }) => id));
    const late = june.cuts.filter(
      ({ cutOn, varietyId, stemsCut }) => dahlias.has(varietyId) && cutOn.startsWith("2026-1") && stemsCut > 0,
    );
    expect(late.length).toBeGreaterThan(0);
    for (const { cutOn } of late) expect(frost && toDayNumber(cutOn) < frost).toBe(true);
  });

  test("its store and its suppliers are in use: on Thursday 10 June one order is on the way, one came and one came a bunch short, and stems left the cooler, some of them dead", () => {
    const lines = purchaseLines(june);
    const inThreeWeeks = lines.filter(({ purchase }) => (purchase.arrivedOn ?? JUNE) >= "2027-05-20");
    expect(lines.filter(isOnTheWay).length).toBeGreaterThan(0);
    expect(inThreeWeeks.filter((line) => !isOnTheWay(line) && stemsNotDelivered(line) === 0).length).toBeGreaterThan(0);
    expect(inThreeWeeks.filter((line) => stemsNotDelivered(line) === line.purchase.bunchStems).length).toBe(1);
    for (const { purchase } of lines) {
      expect(purchase.orderedOn < JUNE).toBe(true);
      expect(purchase.arrivedOn === null).toBe(purchase.arrivesOn >= JUNE);
    }
    for (const year of [2025, 2026, 2027]) {
      const moves = ofYear(june.coolerMoves, ({ movedOn }) => movedOn, year);
      expect(moves.filter(({ kind }) => kind === "taken out").length).toBeGreaterThan(10);
      expect(moves.filter(({ kind }) => kind === "thrown away").length).toBeGreaterThan(1);
    }
    const today = toDayNumber(JUNE);
    const lots = storedLots({ ...provenPlan(june, 2027, frostDayOf(june.farm, 2027), null, today), today });
    const isMoved = ({ entries }: CoolerLot) => entries.some(({ kind }) => kind === "moved");
    expect(lots.filter((lot) => isMoved(lot) && lot.leftStems === 0).length).toBeGreaterThan(10);
    expect(lots.filter(({ leftStems }) => leftStems > 0).length).toBeGreaterThan(10);
  });

  test("no lot gave more than was cut of it", () => {
    for (const { varietyId, cutOn } of june.coolerMoves) {
      const isHere = (row: { varietyId: number; cutOn: Day }) => row.varietyId === varietyId && row.cutOn === cutOn;
      const outStems = june.coolerMoves.filter(isHere).reduce((sum, { stemCount }) => sum + stemCount, 0);
      expect(outStems).toBeLessThan(june.cuts.filter(isHere).reduce((sum, { stemsCut }) => sum + stemsCut, 0));
    }
  });

  test("whoever is married within three weeks is settled and promised what the plan covered; one has asked for two pieces more since, one is still to be asked", () => {
    const settled = june.bookings.filter(({ finalOn, eventOn }) => finalOn !== null && eventOn >= JUNE);
    expect(settled.map(({ client }) => client)).toEqual([
      "Fernacre wedding",
      "Withy Lane wedding",
      "Tithe Meadow wedding",
    ]);
    for (const { promises } of settled) expect(promises.length).toBeGreaterThan(0);
    expect(settled.flatMap((booking) => sinceFinal(booking, june.recipes)?.changed ?? [])).toEqual([
      { what: "Low centrepiece", was: 12, is: 14 },
    ]);
    expect(finalCountsDue(june.bookings, june.farm, JUNE).map(({ client }) => client)).toEqual([
      "Cressbank wedding",
      "Nettlewick wedding",
    ]);
    const past = june.bookings.filter(({ eventOn }) => eventOn < "2027");
    for (const { finalOn, promises } of past) expect([finalOn === null, promises.length > 0]).toEqual([false, true]);
  });

  test("plants were lost, clumps were counted after three winters in the ground and in store, and each season that is over has its frost", () => {
    const plantsOf = (cause: LossCause) =>
      new Set(june.losses.filter((row) => row.cause === cause).map(({ seenOn }) => yearOf(seenOn)));
    expect([plantsOf("winter in the ground"), plantsOf("winter in store"), plantsOf("voles")]).toEqual([
      new Set([2025, 2026, 2027]),
      new Set([2025, 2026, 2027]),
      new Set([2025, 2027]),
    ]);
    for (const loss of june.losses) {
      const stood = june.plantings.filter(
        ({ bedId, varietyId, seasonYear }) =>
          bedId === loss.bedId && varietyId === loss.varietyId && seasonYear === yearOf(loss.seenOn),
      );
      expect(stood.map(({ plantCount }) => plantCount)).toEqual([loss.plantsBefore]);
      expect(loss.cause === "winter in the ground").toBe(stood[0].treatment === "kept-in-ground");
      expect(loss.seenOn < JUNE).toBe(true);
    }
    expect(june.farm.killingFrosts.map((day) => yearOf(day))).toEqual([2025, 2026]);
    expect(winterProposals(june).map(({ part }) => part)).toEqual(["ground", "store"]);
  });

  test("what stood for longer than a season is the same plants, and was not there before it was planted", () => {
    const peonies = june.plantings.filter(({ plantedOn }) => plantedOn.startsWith("2021"));
    expect(new Set(peonies.map(({ seasonYear }) => seasonYear))).toEqual(new Set([2025, 2026, 2027]));
    for (const { plantedOn, seasonYear } of june.plantings) expect(yearOf(plantedOn)).toBeLessThanOrEqual(seasonYear);
  });
});

test("in winter greens are on the way, none of the season ahead is settled, and nothing of it stands in the cooler", () => {
  const november = demoSnapshot(2027, parseDay("2026-11-26"));
  expect([november.coolerStock.length, june.coolerStock.length]).toEqual([0, alone.coolerStock.length]);
  const today = toDayNumber(parseDay("2026-11-26"));
  const lots = storedLots({ ...provenPlan(november, 2026, frostDayOf(november.farm, 2026), null, today), today });
  expect(lots.filter(({ leftStems }) => leftStems > 0).map(({ crop }) => crop.name)).toEqual(["Eucalyptus"]);
  expect(lots.some(({ entries }) => entries.some(({ kind }) => kind === "moved"))).toBe(true);
  expect(
    purchaseLines(november)
      .filter(isOnTheWay)
      .map(({ crop, purchase }) => [crop.name, purchase.orderedOn, purchase.arrivesOn]),
  ).toEqual([["Eucalyptus", "2026-11-23", "2026-11-27"]]);
  expect(november.bookings.filter(({ eventOn, finalOn }) => finalOn !== null && eventOn > "2027")).toEqual([]);
});

test("the same day gives the same records, and before the season none of its own are there", () => {
  expect(demoSnapshot(2027, JUNE).cuts).toEqual(june.cuts);
  const november = demoSnapshot(2027, parseDay("2026-11-25"));
  expect(ofYear(november.cuts, ({ cutOn }) => cutOn, 2027)).toEqual([]);
  expect(ofYear(november.cuts, ({ cutOn }) => cutOn, 2026).length).toBeGreaterThan(150);
});
