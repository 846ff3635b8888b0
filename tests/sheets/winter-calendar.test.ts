import ICAL from "ical.js";
import Papa from "papaparse";
import { describe, expect, test } from "vitest";
import { parseDay } from "#lib/domain/day";
import { winterBeds } from "#lib/plan/winter/beds";
import { winterWorksheet } from "#lib/plan/winter/worksheet";
import { taskInWords } from "#lib/plan/words/task-words";
import { winterCalendar } from "#lib/sheets/winter-calendar";
import { winterCsv } from "#lib/sheets/winter-csv";
import { SEASON, winterFarm } from "../plan/winter/farm";

const STAMP = "2026-10-01T08:00:00Z";
const farm = winterFarm(5, 12, 4);
const kept = winterBeds(farm, SEASON)
  .slice(0, 3)
  .map(({ bed }) => bed.id);
const sheet = winterWorksheet(farm, SEASON, kept, parseDay("2026-10-01"));

/** The file as another program reads it. */
const eventsOf = (file: string) =>
  new ICAL.Component(ICAL.parse(file)).getAllSubcomponents("vevent").map((component) => new ICAL.Event(component));

describe("the winter's calendar file, read back", () => {
  const file = winterCalendar(sheet, { name: "Hill, Farm; North", units: "us" }, SEASON, STAMP);
  const events = eventsOf(file);

  test("has an all-day event for each day of work, on that day", () => {
    expect(events.map(({ startDate }) => startDate.toString())).toEqual([
      ...new Set(sheet.tasks.map(({ day }) => day)),
    ]);
    expect(events.every(({ startDate }) => startDate.isDate)).toBe(true);
  });

  test("names every bed and task of its day, a line each", () => {
    for (const event of events) {
      const ofDay = sheet.tasks.filter(({ day }) => day === event.startDate.toString());
      const lines = event.description.split("\n");
      expect(lines.length).toBe(ofDay.length);
      ofDay.forEach((task, index) => {
        expect(lines[index].startsWith(`${task.bedName} (${task.fate}): ${taskInWords(task)}`)).toBe(true);
      });
    }
  });

  test("says leaves in the farm's units: 1 cubic metre is 1.3 cubic yards", () => {
    const leaves = sheet.tasks.find(
      ({ leafCubicMetres }) => leafCubicMetres > 0 && leafCubicMetres.toFixed(1) !== "5.0",
    );
    const metres = leaves?.leafCubicMetres ?? 0;
    expect(metres).toBeGreaterThan(0);
    const metric = winterCalendar(sheet, { name: "Hill", units: "metric" }, SEASON, STAMP);
    const text = (of: string) =>
      eventsOf(of)
        .map(({ description }) => description)
        .join("\n");
    expect(text(file)).toContain(`${(metres * 1.30795).toFixed(1)} cubic yards of leaves`);
    expect(text(metric)).toContain(`${metres.toFixed(1)} cubic metres of leaves`);
  });

  test("keeps an event's UID, so that a calendar that reads it again does not double it", () => {
    const again = eventsOf(winterCalendar(sheet, { name: "Other", units: "metric" }, SEASON, "2026-11-01T08:00:00Z"));
    expect(again.map(({ uid }) => uid)).toEqual(events.map(({ uid }) => uid));
    expect(new Set(events.map(({ uid }) => uid)).size).toBe(events.length);
  });
});

test("the winter's CSV, read by another parser, has a row a task, and its hours, leaves and tarps sum to the worksheet's", () => {
  const { data, errors } = Papa.parse<Record<string, string>>(winterCsv(sheet), { header: true, skipEmptyLines: true });
  expect(errors).toEqual([]);
  expect(data.map((row) => `${row.day} ${row.bed} ${row.fate}`)).toEqual(
    sheet.tasks.map(({ day, bedName, fate }) => `${day} ${bedName} ${fate}`),
  );
  const sum = (column: string) => data.reduce((total, row) => total + Number(row[column]), 0);
  expect(sum("hours")).toBeCloseTo(sheet.totals.hours, 1);
  expect(sum("leaf_cubic_metres")).toBeCloseTo(sheet.totals.leafCubicMetres, 1);
  expect(sum("tarp_square_metres")).toBeCloseTo(sheet.totals.tarpSquareMetres, 1);
  expect(sum("clumps")).toBe(sheet.totals.keptClumpCount + sheet.totals.dugClumpCount);
});
