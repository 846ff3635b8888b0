import { expect, test } from "vitest";
import { addressOf, formIn, isUnasked, readEnquiry } from "../../app/enquiry/asked-enquiry";
import { weekBookings } from "../../app/enquiry/week-bookings";
import { booking, day, farm, snapshot } from "../small-farm";

const asked = (form: Record<string, string>) => readEnquiry(formIn(form), farm());
const wrongIn = (form: Record<string, string>) => {
  const read = asked(form);
  return read.ok ? [] : read.problems.map(({ place, message }) => `${place}: ${message}`);
};
const whole = { stemCount: "120", colours: "blush, cream", role: "focal", eventOn: "2027-06-19" };

test("a question is its stems, its colours in their order, its role and its day; the role is focal unless said", () => {
  const parsed = { stemCount: 120, colours: ["blush", "cream"], role: "focal", eventOn: "2027-06-19" };
  expect(asked(whole)).toEqual({ ok: true, parsed });
  expect(formIn({ stemCount: "120" }).role).toBe("focal");
  expect(asked({ ...whole, colours: "" })).toEqual({ ok: true, parsed: { ...parsed, colours: [] } });
});

test("no stem, half a stem, a colour that is none, a day that is none and one outside the seasons are each met with a word", () => {
  expect(wrongIn({ ...whole, stemCount: "0" })).toEqual(["stemCount: more than 0 stems"]);
  expect(wrongIn({ ...whole, stemCount: "2.5" })[0]).toMatch(/^stemCount: "2.5" is not a whole number: write 3/);
  expect(wrongIn({ ...whole, colours: "blsh" })[0]).toMatch(/did you mean "blush"/);
  expect(wrongIn({ ...whole, eventOn: "2027-02-30" })).toHaveLength(1);
  expect(wrongIn({ ...whole, eventOn: "1989-06-19" })).toEqual(["eventOn: choose a day from 1990 to 2200"]);
  expect(wrongIn({}).map((problem) => problem.split(":")[0])).toEqual(["stemCount", "eventOn"]);
});

test("a question's address leads back to it, and what is no question is an empty one", () => {
  const query = Object.fromEntries(new URL(addressOf(whole), "http://farm").searchParams);
  expect(formIn(query)).toEqual(whole);
  for (const odd of [null, 7, [], { stemCount: ["1"], colours: {}, eventOn: "x".repeat(500) }])
    expect(isUnasked(formIn(odd))).toBe(true);
  expect(isUnasked(formIn({ role: "foliage" }))).toBe(true);
});

test("a week's bookings are those from Monday to Sunday, by day, without the cancelled", () => {
  const on = (id: number, eventOn: string, status: "held" | "cancelled" = "held") =>
    booking({ id, client: `Client ${id}`, eventOn: day(eventOn), status });
  const { bookings } = snapshot({
    farm: farm(),
    bookings: [
      on(1, "2027-06-20"),
      on(2, "2027-06-14"),
      on(3, "2027-06-21"),
      on(4, "2027-06-19", "cancelled"),
      on(5, "2027-06-13"),
    ],
  });
  const ids = weekBookings(
    { ...snapshot({ farm: farm() }), bookings },
    day("2027-06-01"),
  )(day("2027-06-19")).map(({ id }) => id);
  expect(ids).toEqual([2, 1]);
});
