import ICAL from "ical.js";
import { beforeAll, describe, expect, test } from "vitest";
import { seededFarm } from "#demo/seeded-farm";
import { toDay } from "#lib/domain/day";
import { byPickingDay, pickTotals } from "#lib/plan/road/pick-sheets";
import type { Plan } from "#lib/plan/road/plan";
import { calendarFile } from "#lib/sheets/calendar";
import { provenPlan } from "../proven-plan";
import { booking, focal, snapshot } from "../small-farm";

/**
 * The calendar file against RFC 5545, "Internet Calendaring and Scheduling Core Object Specification (iCalendar)",
 * https://www.rfc-editor.org/rfc/rfc5545, read back by ical.js, a parser that shares no code with the writer.
 */

const STAMP = "2026-11-25T08:00:00Z";
let season: Plan;
let file: string;
beforeAll(() => {
  season = provenPlan(seededFarm(3, { bedCount: 40, bookingCount: 25 }), 2027);
  file = calendarFile(season, STAMP);
});

const eventsOf = (text: string) =>
  new ICAL.Component(ICAL.parse(text)).getAllSubcomponents("vevent").map((part) => new ICAL.Event(part));

describe("the calendar file", () => {
  test("section 3.1: lines end in CRLF and hold at most 75 octets", () => {
    expect(file.split("\r\n").join("").includes("\n")).toBe(false);
    const longest = Math.max(...file.split("\r\n").map((line) => Buffer.byteLength(line)));
    expect(longest).toBeLessThanOrEqual(75);
  });

  test("sections 3.6 and 3.7: one VCALENDAR of version 2.0 with a PRODID; every VEVENT has a UID of its own, a DTSTAMP and a DTSTART", () => {
    const calendar = new ICAL.Component(ICAL.parse(file));
    expect(calendar.name).toBe("vcalendar");
    expect(calendar.getFirstPropertyValue("version")).toBe("2.0");
    expect(calendar.getFirstPropertyValue("prodid")).toBeTruthy();
    const events = calendar.getAllSubcomponents("vevent");
    expect(new Set(events.map((event) => event.getFirstPropertyValue("uid"))).size).toBe(events.length);
    for (const event of events)
      for (const name of ["uid", "dtstamp", "dtstart"]) expect(event.getFirstPropertyValue(name)).toBeTruthy();
  });

  test("read back, it has a day for each picking day with its stems, and a day for each booking that is cut for", () => {
    const events = eventsOf(file);
    const picking = events.filter((event) => event.uid.startsWith("picking-"));
    const days = byPickingDay(season.pickList);
    expect(picking.map((event) => [event.startDate.toString(), event.summary])).toEqual(
      days.map(({ cutDay, lines }) => [toDay(cutDay), `Pick ${pickTotals(lines).stems} stems`]),
    );
    const bookings = new Set(season.work.match.needs.map((need) => need.booking));
    const booked = events.filter((event) => event.uid.startsWith("event-"));
    expect(booked.map((event) => event.startDate.toString())).toEqual([...bookings].map(({ eventOn }) => eventOn));
    expect(events.every((event) => event.startDate.isDate)).toBe(true);
  });

  test("[M12] each booking that is cut for has its design day, and its delivery where that is not the event's own day", () => {
    const asks = { client: "Ash", stemLines: focal(5) };
    const bookings = [booking({ id: 1, ...asks }), booking({ id: 2, ...asks, client: "Elm", deliverDays: 1 })];
    const days = eventsOf(calendarFile(provenPlan(snapshot({ bookings }), 2027), STAMP))
      .filter(({ uid }) => /^(design|deliver)-/.test(uid))
      .map(({ uid, summary, startDate }) => `${uid.split("@")[0]} ${startDate} ${summary}`);
    expect(days).toEqual([
      "design-1 2027-06-11 Design: Ash",
      "design-2 2027-06-10 Design: Elm",
      "deliver-2 2027-06-11 Deliver: Elm",
    ]);
  });

  test("section 3.3.11: commas, semicolons, backslashes and line breaks in a client's name and note come back as they were", () => {
    const client = "Ash; Elm, & Oak \\ sons";
    const note = 'gate "B", ring twice;\nno lilies';
    const given = provenPlan(snapshot({ bookings: [booking({ id: 7, client, note, stemLines: focal(5) })] }), 2027);
    const event = eventsOf(calendarFile(given, STAMP)).find(({ uid }) => uid.startsWith("event-7@"));
    expect(event?.summary).toBe(`${client} (confirmed)`);
    expect(event?.description).toBe(note);
  });

  test("the same plan and stamp give the same file", () => {
    expect(calendarFile(season, STAMP)).toBe(file);
  });
});
