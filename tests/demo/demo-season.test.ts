import { describe, expect, test } from "vitest";
import { demoSeasonOn, movedToSeason } from "#demo/demo-season";
import { readDemoSheets } from "#demo/demo-sheets";
import { demoSnapshot } from "#demo/demo-snapshot";
import { isoWeekday, isoWeekOf, monthDayOf, parseDay, toDayNumber } from "#lib/domain/day";
import { STATUSES } from "#lib/domain/words";
import { loadLinearSolver } from "#lib/maths/linear-programme";
import { coverageByBooking } from "#lib/plan/road/coverage";
import { checkMatch } from "#lib/plan/road/match";
import { windowHolders } from "#lib/plan/road/window-holders";
import { winterBeds } from "#lib/plan/winter/beds";
import { chosen } from "../plan/winter/chosen";
import { provenPlan } from "../proven-plan";
import { allKept, bookingCount, coveredShare, gapsBetween, shortStems, stemsShortFor } from "./season-facts";

describe("the sheets", () => {
  const snapshot = demoSnapshot();

  test("the importer finds nothing wrong in them", () => {
    const { problems, rowCount, cleanRowCount } = readDemoSheets();
    expect(problems).toEqual([]);
    expect(cleanRowCount).toBe(rowCount);
    expect(rowCount).toBeGreaterThan(450);
  });

  test("farm and bookings say that they are invented", () => {
    expect(snapshot.farm.isInvented).toBe(true);
    expect(snapshot.farm.name).toContain("(invented)");
    expect(snapshot.farm.zone).toBe("7a");
    for (const { note } of snapshot.bookings) expect(note).toMatch(/^Invented\./);
  });

  test("a farm of real size: 46 to 60 beds, 20 crops and more, many dahlias, 40 to 45 bookings from April to November", () => {
    expect(snapshot.beds.length).toBeGreaterThanOrEqual(46);
    expect(snapshot.beds.length).toBeLessThanOrEqual(60);
    const grown = snapshot.varieties.filter(({ id }) => snapshot.plantings.some(({ varietyId }) => varietyId === id));
    expect(new Set(grown.map(({ cropId }) => cropId)).size).toBeGreaterThanOrEqual(20);
    const wintering = new Set(snapshot.crops.filter(({ overwinters }) => overwinters).map(({ id }) => id));
    const dahlias = grown.filter(({ cropId }) => wintering.has(cropId));
    expect(dahlias.length).toBeGreaterThanOrEqual(20);
    expect(new Set(dahlias.map(({ colour }) => colour)).size).toBeGreaterThanOrEqual(12);
    expect(snapshot.bookings.length).toBeGreaterThanOrEqual(40);
    expect(snapshot.bookings.length).toBeLessThanOrEqual(45);
    for (const { eventOn } of snapshot.bookings) {
      expect(eventOn >= "2027-04-01").toBe(true);
      expect(eventOn <= "2027-11-30").toBe(true);
    }
    expect(new Set(snapshot.bookings.map(({ eventOn }) => eventOn.slice(5, 7))).size).toBe(8);
  });

  test("every status, pieces, stems by name, crops not wanted, cooler stock and the curves of the farm itself occur", () => {
    expect(new Set(snapshot.bookings.map(({ status }) => status))).toEqual(new Set(STATUSES));
    expect(snapshot.bookings.filter(({ pieces }) => pieces.length > 0).length).toBeGreaterThan(30);
    expect(snapshot.bookings.filter(({ unacceptableCropIds }) => unacceptableCropIds.length > 0).length).toBe(3);
    const lines = snapshot.bookings.flatMap(({ stemLines }) => stemLines);
    expect(lines.filter(({ cropId }) => cropId !== null).length).toBeGreaterThanOrEqual(5);
    expect(lines.some(({ cropOnly }) => cropOnly)).toBe(true);
    expect(snapshot.coolerStock.length).toBeGreaterThan(0);
    expect(snapshot.curves.filter(({ timingOrigin }) => timingOrigin.mark === "own").length).toBe(2);
  });

  test("a sprayed bed, wet soil, voles and a virus stand in it, the last three among the dahlias", () => {
    expect(snapshot.beds.filter(({ noEntryFrom }) => noEntryFrom !== null).length).toBe(1);
    const forbidden = winterBeds(snapshot, 2027).flatMap((bed) => bed.forbidden);
    expect(forbidden.sort()).toEqual(["virus or gall", "vole damage", "wet soil"]);
  });
});

/** The facts the demo is made to show; they must hold in whichever season it is loaded. */
describe.each([2027, 2028, 2030])("the season of %i", (season) => {
  const snapshot = demoSnapshot(season);
  const planned = provenPlan(snapshot, season);
  const summer = ["06-05", "07-11"] as const;

  test("the match is proved and every planting has a curve", () => {
    expect(checkMatch(planned.match)).toEqual([]);
    expect(planned.problems).toEqual([]);
  });

  test("a farm well run: 80 to 95 % of all stems are covered, every booking in part, five and more in full", () => {
    expect(coveredShare(planned)).toBeGreaterThan(0.8);
    expect(coveredShare(planned)).toBeLessThan(0.95);
    const coverage = [...coverageByBooking(planned.match, planned.gaps).values()];
    expect(coverage.filter((row) => row.shortStems === 0).length).toBeGreaterThanOrEqual(5);
    for (const row of coverage) expect(row.shortStems).toBeLessThan(row.needStems * 0.6);
  });

  test("when the peonies have ended, 300 to 450 focal stems are short in 3 to 5 bookings of June and early July", () => {
    const gaps = gapsBetween(planned, "focal", ...summer);
    expect(shortStems(gaps)).toBeGreaterThanOrEqual(300);
    expect(shortStems(gaps)).toBeLessThanOrEqual(450);
    expect(bookingCount(gaps)).toBeGreaterThanOrEqual(3);
    expect(bookingCount(gaps)).toBeLessThanOrEqual(5);
  });

  test("dahlias kept in the ground would close nine tenths of it, and blue stays short", () => {
    const kept = gapsBetween(provenPlan(allKept(snapshot), season), "focal", ...summer);
    expect(shortStems(kept)).toBeLessThan(shortStems(gapsBetween(planned, "focal", ...summer)) * 0.15);
    expect(shortStems(kept)).toBeGreaterThan(20);
    expect(new Set(kept.map(({ need }) => need.colours[0]))).toEqual(new Set(["blue"]));
  });

  test("frost takes the dahlias of the last October booking, and an early frost those of others too", () => {
    const october = (frostDay?: number) =>
      gapsBetween(provenPlan(snapshot, season, frostDay), "focal", "10-04", "11-02");
    expect(bookingCount(october())).toBe(1);
    expect(shortStems(october())).toBeGreaterThanOrEqual(40);
    const early = october(toDayNumber(parseDay(`${season}-${snapshot.farm.frost.firstAutumnP10}`)));
    expect(bookingCount(early)).toBeGreaterThanOrEqual(2);
    expect(shortStems(early)).toBeGreaterThan(shortStems(october()) + 50);
    const late = october(toDayNumber(parseDay(`${season}-${snapshot.farm.frost.firstAutumnP90}`)));
    expect(shortStems(late)).toBe(0);
  });

  test("two bookings of one Saturday fight for the same dahlias: the later one goes short of what is promised to the other", () => {
    const first = snapshot.bookings.find(({ client }) => client.startsWith("Swale House"));
    const later = snapshot.bookings.find(({ client }) => client.startsWith("Osier Bank"));
    expect(first?.eventOn).toBe(later?.eventOn);
    const focal = planned.gaps.filter(({ need }) => need.role === "focal");
    expect(shortStems(focal.filter(({ need }) => need.booking.id === first?.id))).toBe(0);
    const lost = focal.filter(({ need }) => need.booking.id === later?.id);
    expect(stemsShortFor({ gaps: lost }, "promised")).toBeGreaterThan(20);
    const holders = lost.flatMap(({ need }) =>
      windowHolders(planned.match, planned.match.needs.indexOf(need)).map(({ booking }) => booking.id),
    );
    expect(holders).toContain(first?.id);
  });

  test("every reason for a gap occurs, and in July focals are in bloom but not in plum", () => {
    for (const reason of ["promised", "hold window", "not in bloom"] as const)
      expect(stemsShortFor(planned, reason), reason).toBeGreaterThan(20);
    expect(stemsShortFor(planned, "colours")).toBeGreaterThan(300);
    const plum = gapsBetween(planned, "focal", ...summer).filter(({ need }) => need.colours[0] === "plum");
    expect(stemsShortFor({ gaps: plum }, "colours")).toBeGreaterThan(40);
  });

  test("each role but the focal is covered to three quarters and more from spring to autumn", () => {
    for (const role of ["secondary", "line", "filler", "foliage", "accent"] as const) {
      const needs = planned.match.needs.filter((need) => need.role === role);
      const asked = needs.reduce((sum, need) => sum + need.stems, 0);
      expect(shortStems(planned.gaps.filter(({ need }) => need.role === role)), role).toBeLessThan(asked / 4);
    }
  });
});

test("four to seven beds are worth keeping in the ground, none of them with a flag", async () => {
  const snapshot = demoSnapshot();
  const choice = chosen(snapshot, await loadLinearSolver());
  expect(choice.status).toBe("optimal");
  const kept = "keptBedIds" in choice ? choice.keptBedIds : [];
  expect(kept.length).toBeGreaterThanOrEqual(4);
  expect(kept.length).toBeLessThanOrEqual(7);
  expect(snapshot.beds.filter(({ id, flags }) => kept.includes(id) && flags.length > 0)).toEqual([]);
});

describe("moved to another season", () => {
  const { records } = readDemoSheets();

  test.each([2026, 2028, 2030, 2033])("in %i events keep week and weekday, plantings month and day", (season) => {
    const moved = movedToSeason(records, season);
    const weekAndDay = (day: Parameters<typeof isoWeekOf>[0]) => `${isoWeekOf(day).slice(4)} ${isoWeekday(day)}`;
    expect(moved.bookings?.map(({ eventOn }) => weekAndDay(eventOn))).toEqual(
      records.bookings?.map(({ eventOn }) => weekAndDay(eventOn)),
    );
    expect(new Set(moved.bookings?.map(({ eventOn }) => eventOn.slice(0, 4)))).toEqual(new Set([String(season)]));
    expect(moved.coolerStock?.map(({ cutOn }) => weekAndDay(cutOn))).toEqual(
      records.coolerStock?.map(({ cutOn }) => weekAndDay(cutOn)),
    );
    expect(moved.plantings?.map(({ plantedOn }) => monthDayOf(plantedOn))).toEqual(
      records.plantings?.map(({ plantedOn }) => monthDayOf(plantedOn)),
    );
    expect(moved.plantings?.every(({ seasonYear }) => seasonYear === season)).toBe(true);
  });

  test("a planting of the autumn before stays in the autumn before", () => {
    const years = (season: number) =>
      new Set(movedToSeason(records, season).plantings?.map(({ plantedOn }) => Number(plantedOn.slice(0, 4)) - season));
    expect(years(2031)).toEqual(years(2027));
    expect(years(2031).has(-1)).toBe(true);
  });

  test("the season it is written for changes nothing", () => {
    expect(movedToSeason(records, 2027)).toBe(records);
  });
});

test.each([
  ["2027-01-01", 2027],
  ["2027-03-31", 2027],
  ["2027-04-01", 2027],
  ["2027-06-15", 2027],
  ["2027-10-31", 2027],
  ["2027-11-01", 2028],
  ["2026-11-25", 2027],
  ["2027-12-31", 2028],
])("a demo loaded on %s is of season %i", (today, season) => {
  expect(demoSeasonOn(parseDay(today))).toBe(season);
});
