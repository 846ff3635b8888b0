import fc from "fast-check";
import { expect, test } from "vitest";
import { addDays, inFull, parseDay, withWeekday } from "#lib/domain/day";
import { readDay, readMonthDay } from "#lib/domain/read-day";

const said = (text: string, dateOrder?: "month first" | "day first") => {
  const reading = readDay(text, { dateOrder });
  return reading.ok ? reading.value : reading.message;
};

test("a day is read however people write it where it can be one day alone", () => {
  for (const text of [
    "2027-06-05",
    "2027-6-5",
    "2027/06/05",
    "2027-06-05 00:00:00",
    "2027-06-05T00:00:00.000Z",
    "5 June 2027",
    "Sat 5 June 2027",
    "Saturday, June 5th, 2027",
    "June 5 2027",
    "5-Jun-27",
    "5th of June, 2027",
    "05.06.2027",
  ])
    expect(said(text)).toBe("2027-06-05");
  for (const text of ["6/25/2027", "25/6/27", "25.06.2027", "25-06-2027"]) expect(said(text)).toBe("2027-06-25");
  expect(said("5/5/2027")).toBe("2027-05-05");
  expect(said("12 Sept 2027")).toBe("2027-09-12");
});

test("6/5/2027 is what the farm means by it, and is refused with both days where it has not said", () => {
  expect(said("6/5/2027", "month first")).toBe("2027-06-05");
  expect(said("6/5/2027", "day first")).toBe("2027-05-06");
  expect(said("6/25/2027", "day first")).toBe("2027-06-25");
  expect(said("6/5/2027")).toBe(
    '"6/5/2027" may be Saturday 5 June 2027 or Thursday 6 May 2027: write 2027-06-05 or 2027-05-06, or say on the Farm screen how dates are written',
  );
});

test("a weekday that is not the day's is refused with the one that is", () => {
  expect(said("Fri 5 June 2027")).toMatch(/is no such weekday: it is Saturday 5 June 2027/);
});

test("what is no way to write a day is left as it stands, for the day's own rule to refuse", () => {
  for (const text of ["", "soon", "June", "5 Juno 2027", "13/13/2027x", "2027-06", "June 2027", "5 Ma 2027"])
    expect(said(text)).toBe(text);
  expect(said("31 June 2027")).toBe("2027-06-31");
});

test("every day reads back from each way that the tool itself writes it", () => {
  fc.assert(
    fc.property(fc.integer({ min: 0, max: 80_000 }), (days) => {
      const day = addDays(parseDay("2000-01-01"), days % 36_000);
      expect(said(day)).toBe(day);
      expect(said(inFull(day))).toBe(day);
      expect(said(`${withWeekday(day)} ${day.slice(0, 4)}`)).toBe(day);
    }),
    { seed: 27 },
  );
});

test("a day of any year may be written with its month's name", () => {
  for (const text of ["18 Oct", "October 18", "18 October"])
    expect(readMonthDay(text)).toEqual({ ok: true, value: "10-18" });
  expect(readMonthDay("10-18")).toEqual({ ok: true, value: "10-18" });
});
