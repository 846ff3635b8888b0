import fc from "fast-check";
import { expect, test } from "vitest";
import { COLOURS } from "#lib/domain/words";
import { aboutCount, aboutStems } from "../../app/dates/about-stems";
import { askedDay } from "../../app/dates/asked-day";
import { weekBookings } from "../../app/dates/week-bookings";
import { booking, day, farm, snapshot } from "../small-farm";

const open = (...stems: number[]) => ({
  focalStems: stems.reduce((sum, one) => sum + one, 0),
  byColour: stems.map((one, index) => ({ colour: COLOURS[index], stems: one })),
});

test("63 stems are said as about 65, the largest colour first", () => {
  expect(aboutStems(open(22, 41))).toEqual({
    stems: 65,
    byColour: [
      { colour: "cream", stems: 40 },
      { colour: "white", stems: 25 },
    ],
  });
});

test("a count alone, without its colours, is said in the same steps: 0, 9, about 65 and about 410", () => {
  expect([0, 9, 63, 412].map(aboutCount)).toEqual([0, 9, 65, 410]);
});

test("fewer than twenty stems are said to the stem", () => {
  expect(aboutStems(open(3, 4)).byColour.map(({ stems }) => stems)).toEqual([4, 3]);
});

test("the colours said sum to the whole, which is never more than five off", () => {
  fc.assert(
    fc.property(fc.array(fc.nat(400), { maxLength: COLOURS.length }), (stems) => {
      const given = open(...stems);
      const said = aboutStems(given);
      expect(said.byColour.reduce((sum, one) => sum + one.stems, 0)).toBe(said.stems);
      expect(Math.abs(said.stems - given.focalStems)).toBeLessThanOrEqual(5);
    }),
    { seed: 20270619 },
  );
});

test("a day asked for is a day, or what was typed and why it is none", () => {
  expect(askedDay({ on: "2027-06-19" })).toEqual({ kind: "day", day: "2027-06-19" });
  expect(askedDay({})).toEqual({ kind: "none" });
  expect(askedDay({ on: "2027-02-30" })).toMatchObject({ kind: "refused", typed: "2027-02-30" });
  expect(askedDay({ on: "1989-06-19" })).toMatchObject({ kind: "refused", message: "choose a day from 1990 to 2200" });
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
  const ids = weekBookings({ ...snapshot({ farm: farm() }), bookings })(day("2027-06-19")).map(({ id }) => id);
  expect(ids).toEqual([2, 1]);
});
