import { describe, expect, test } from "vitest";
import type { BookingForm } from "../../app/bookings/editor/draft";
import { parseBookingForm } from "../../app/bookings/editor/parse-form";

const form = (given: Partial<BookingForm> = {}): BookingForm => ({
  client: "Test client",
  status: "held",
  eventOn: "2027-06-12",
  palette: "blush, cream",
  sparePercent: "10",
  unacceptableCropIds: [],
  pieces: [],
  stemLines: [],
  note: "",
  ...given,
});
const stems = (stemCount: string) =>
  form({ stemLines: [{ role: "focal", cropId: null, cropOnly: false, colours: "", stemCount }] });
const problemsOf = (given: BookingForm) => {
  const parsed = parseBookingForm(given);
  return parsed.ok ? [] : parsed.problems.map(({ place, message }) => `${place}: ${message}`);
};

describe("the booking form", () => {
  test("what is typed well comes out as a draft: colours in order, spare as a share, counts as numbers", () => {
    expect(parseBookingForm(stems("12.5"))).toMatchObject({
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
    expect(parseBookingForm(stems("1,200"))).toMatchObject({ parsed: { stemLines: [{ stemCount: 1200 }] } });
    expect(problemsOf(stems("1,5"))).toEqual([
      'stemLines[0].stemCount: "1,5" has a comma: write 1.5 for a decimal or 15 for a whole',
    ]);
  });

  test("every problem at once, each at its place", () => {
    const bad = form({
      client: " ",
      eventOn: "2027-02-30",
      palette: "blush, mauve",
      sparePercent: "lots",
      pieces: [{ recipeId: 1, pieceCount: "", colours: "" }],
    });
    expect(problemsOf(bad).map((problem) => problem.split(":")[0])).toEqual([
      "client",
      "eventOn",
      "palette",
      "sparePercent",
      "pieces[0].pieceCount",
    ]);
  });
});
