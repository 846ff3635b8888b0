import { expect, test } from "vitest";
import { reopenedTitle, standInWords, withoutDayInWords } from "#lib/plan/words/lapse-words";
import { booking, day } from "../../small-farm";

test("a booking says where it stands, and until when or since when", () => {
  const lapsesAfter = day("2026-12-11");
  const on = (today: string, given: Parameters<typeof booking>[0]) => standInWords(booking(given), day(today));
  expect(on("2026-12-11", { id: 1, status: "held", lapsesAfter })).toBe("held until Friday 11 December 2026");
  expect(on("2026-12-12", { id: 1, status: "enquiry", lapsesAfter })).toBe(
    "enquiry, lapsed after Friday 11 December 2026",
  );
  expect(on("2026-12-12", { id: 1, status: "enquiry" })).toBe("enquiry");
  expect(on("2026-12-12", { id: 1, status: "confirmed", lapsesAfter })).toBe("confirmed");
});

test("what lacks its day is counted by kind", () => {
  expect(withoutDayInWords([{ status: "enquiry" }])).toBe("1 enquiry has no day on which it lapses");
  expect(withoutDayInWords([{ status: "enquiry" }, { status: "held" }, { status: "enquiry" }])).toBe(
    "2 enquiries and 1 hold have no day on which they lapse",
  );
});

test("the list of changes names what was reopened", () => {
  expect(reopenedTitle({ client: "Ivy", status: "held" }, day("2026-12-11"))).toBe(
    "reopened the hold of Ivy until Friday 11 December 2026",
  );
});
