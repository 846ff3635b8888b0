import { expect, test } from "vitest";
import {
  clockInWords,
  closedByAnswer,
  farmDayNow,
  isAnswered,
  isBeforeFirstPicking,
  isClosed,
} from "#lib/domain/list-age";
import { day } from "../small-farm";

test("a list of last evening, or of before five, is older than the day's first picking; one of this morning is not", () => {
  const now = "2027-06-10T07:10";
  expect(isBeforeFirstPicking("2027-06-09T20:30", now)).toBe(true);
  expect(isBeforeFirstPicking("2027-06-10T04:40", now)).toBe(true);
  expect(isBeforeFirstPicking("2027-06-10T05:00", now)).toBe(false);
  expect(isBeforeFirstPicking("2027-06-10T06:30", now)).toBe(false);
  expect(isBeforeFirstPicking("2027-06-10T03:00", "2027-06-10T04:00")).toBe(false);
  expect(isBeforeFirstPicking("2027-06-09T20:30", "2027-06-10T04:00")).toBe(true);
});

test("a list by a clock that is ahead is not old, and its day is the farm's day", () => {
  expect(isBeforeFirstPicking("2027-06-11T08:00", "2027-06-10T07:00")).toBe(false);
  expect(farmDayNow(day("2027-06-11"), "2027-06-11T08:00", "2027-06-10T07:00")).toBe("2027-06-11");
});

test("the farm's day goes on by the nights that have passed on the phone", () => {
  expect(farmDayNow(day("2027-06-10"), "2026-11-26T23:50", "2026-11-27T00:10")).toBe("2027-06-11");
  expect(farmDayNow(day("2027-06-10"), "2026-11-26T05:00", "2026-11-26T23:59")).toBe("2027-06-10");
});

test("a bed is closed from the day of a planned spray until the label's interval is over", () => {
  const spray = { noEntryFrom: "2027-06-11", noEntryUntil: "2027-06-14" };
  const days = ["2027-06-10", "2027-06-11", "2027-06-13", "2027-06-14"].map(day);
  expect(days.map((one) => isClosed(spray, one))).toEqual([false, true, true, false]);
  expect(isClosed({ noEntryFrom: null, noEntryUntil: null }, day("2027-06-11"))).toBe(false);
});

test("a bed that somebody has said was sprayed stays closed that day, also when the farm is heard of again; the next day an old list is asked about anew", () => {
  const answer = { asOf: "2027-06-09T18:05:00Z", on: "2027-06-10", bedIds: [3] };
  const [seven, eight, tomorrow] = ["2027-06-10T07:00", "2027-06-10T08:00", "2027-06-11T07:00"];
  expect([isAnswered(answer, answer.asOf, seven), closedByAnswer(answer, seven)]).toEqual([true, [3]]);
  expect([isAnswered(answer, "2027-06-10T08:00:00Z", eight), closedByAnswer(answer, eight)]).toEqual([false, [3]]);
  expect([isAnswered(answer, answer.asOf, tomorrow), closedByAnswer(answer, tomorrow)]).toEqual([false, []]);
  expect([isAnswered(null, answer.asOf, seven), closedByAnswer(null, seven)]).toEqual([false, []]);
});

test("a time of today is said as a time, another with its day", () => {
  expect(clockInWords("2027-06-10T06:40", "2027-06-10T07:00")).toBe("06:40");
  expect(clockInWords("2027-06-09T18:05", "2027-06-10T07:00")).toBe("Wed 9 Jun, 18:05");
});
