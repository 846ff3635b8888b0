import { describe, expect, test } from "vitest";
import type { BookingForm } from "../../app/bookings/editor/draft";
import { parseBookingForm } from "../../app/bookings/editor/parse-form";
import { typedBooking, typedFocal } from "./typed-booking";

const METRIC = { units: "metric" } as const;
const form = (given: Partial<BookingForm> = {}) =>
  typedBooking({ palette: "blush, cream", spareShare: "10", ...given });
const stems = (stemCount: string) => form({ stemLines: typedFocal(stemCount) });
const problemsOf = (given: BookingForm) => {
  const parsed = parseBookingForm(given, METRIC);
  return parsed.ok ? [] : parsed.problems.map(({ place, message }) => `${place}: ${message}`);
};

describe("the booking form", () => {
  test("what is typed well comes out as a draft: colours in order, spare as a share, counts as numbers", () => {
    expect(parseBookingForm(stems("12.5"), METRIC)).toMatchObject({
      ok: true,
      parsed: { palette: ["blush", "cream"], spareShare: 0.1, stemLines: [{ stemCount: 12.5 }] },
    });
  });

  test.each(["1,5", "0x10", "1e999", "twelve", "", "-3"])("%s stems are refused at their own field", (typed) => {
    const [problem, ...rest] = problemsOf(stems(typed));
    expect(rest).toEqual([]);
    expect(problem).toMatch(/^stemLines\[0\]\.stemCount: /);
  });

  test("a count is read as in a file: 1,200 is twelve hundred, and a comma that parts nothing is refused with its mend", () => {
    expect(parseBookingForm(stems("1,200"), METRIC)).toMatchObject({ parsed: { stemLines: [{ stemCount: 1200 }] } });
    expect(problemsOf(stems("1,5"))).toEqual([
      'stemLines[0].stemCount: "1,5" has a comma: write 1.5 for a decimal or 15 for a whole',
    ]);
  });

  test("every problem at once, each at its place", () => {
    const bad = form({
      client: " ",
      eventOn: "2027-02-30",
      palette: "blush, mauve",
      spareShare: "lots",
      pieces: [{ recipeId: 1, pieceCount: "", colours: "" }],
    });
    expect(problemsOf(bad).map((problem) => problem.split(":")[0])).toEqual([
      "client",
      "eventOn",
      "palette",
      "spareShare",
      "pieces[0].pieceCount",
    ]);
  });
});

describe("the days of an event", () => {
  test("[M12] left as usual are not the booking's own; chosen they are, and nothing typed is lost", () => {
    expect(parseBookingForm(form(), METRIC)).toMatchObject({
      parsed: { leadDays: null, designDays: null, deliverDays: null },
    });
    expect(parseBookingForm(form({ leadDays: "4", designDays: "2", deliverDays: "2" }), METRIC)).toMatchObject({
      parsed: { leadDays: 4, designDays: 2, deliverDays: 2 },
    });
  });

  test("that cannot be are refused at their field: a cut after the delivery, a design after it, a delivery after the event", () => {
    expect(problemsOf(form({ leadDays: "1", deliverDays: "2" }))).toEqual([
      "leadDays: the last cut is after the delivery: choose an earlier cut or a later delivery",
    ]);
    expect(problemsOf(form({ leadDays: "1", designDays: "2" }))).toEqual([
      "leadDays: the last cut is after the design day: choose an earlier cut or a later design day",
    ]);
    expect(problemsOf(form({ designDays: "0", deliverDays: "1" }))).toEqual([
      "designDays: the design is after the delivery: choose an earlier design day or a later delivery",
    ]);
    expect(problemsOf(form({ deliverDays: "-1" }))).toEqual(["deliverDays: days cannot be negative"]);
    expect(problemsOf(form({ deliverDays: "Friday" }))[0]).toMatch(/^deliverDays: /);
    expect(problemsOf(form({ leadDays: "15" }))).toEqual(["leadDays: at most 14 days"]);
  });
});

describe("a form that no hand typed costs work by its size alone", () => {
  const lengthOf = (given: BookingForm) => JSON.stringify(parseBookingForm(given, METRIC)).length;

  test("20,000 bad colours give one short problem", () => {
    expect(problemsOf(form({ palette: "x,".repeat(20_000) }))).toEqual([
      "palette: name each colour once: at most 400 letters",
    ]);
    expect(problemsOf(form({ palette: "x,".repeat(200) }))).toHaveLength(1);
  });

  test("20,000 bad pieces are refused as too many; of 500, each field has one problem at most", () => {
    const pieces = (count: number) =>
      form({ pieces: Array(count).fill({ recipeId: 1, pieceCount: "x", colours: "mauve,puce,ecru" }) });
    expect(problemsOf(pieces(20_000))).toEqual(["pieces: at most 500 lines"]);
    expect(problemsOf(pieces(500))).toHaveLength(1000);
    expect(lengthOf(pieces(500))).toBeLessThan(200_000);
  });

  test("a day that nobody chose is asked for in the words of the form", () => {
    expect(problemsOf(form({ eventOn: "" }))).toEqual(["eventOn: choose the day of the event"]);
  });

  test("an event is in a season that can be planned", () => {
    for (const eventOn of ["9000-12-31", "1989-12-31", "2201-01-01"])
      expect(problemsOf(form({ eventOn }))).toEqual(["eventOn: choose a day from 1990 to 2200"]);
  });
});
