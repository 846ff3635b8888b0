import { expect, test } from "vitest";
import { problemLines, read } from "./known-farm";

const HEAD = "client,event_on,role,planned_stems,cut_stems,bought_stems,thrown_away_stems\n";
const BOOKING = "client,event_on\nThe invented couple,2027-06-12\n";

test("reviews are read by the client and day of their booking, also one of the same upload", () => {
  const { problems, records } = read({
    "bookings.csv": BOOKING,
    "reviews.csv": `${HEAD}The invented couple,2027-06-12,focal,44,40,4,6\n`,
  });
  expect(problems).toEqual([]);
  expect(records.reviews).toEqual([
    {
      client: "The invented couple",
      eventOn: "2027-06-12",
      role: "focal",
      plannedStems: 44,
      cutStems: 40,
      boughtStems: 4,
      thrownAwayStems: 6,
    },
  ]);
});

test("a review of an unknown booking or role, of more thrown away than there was, or a second of the same says so", () => {
  expect(
    problemLines({
      "bookings.csv": BOOKING,
      "reviews.csv": [
        HEAD.trim(),
        "Nobody,2027-06-12,focal,44,40,4,6",
        "The invented couple,2027-06-12,fillet,44,40,4,6",
        "The invented couple,2027-06-12,line,44,40,4,45",
        "The invented couple,2027-06-12,filler,44,40,4,6",
        "The invented couple,2027-06-12,filler,44,40,4,7",
        "",
      ].join("\n"),
    }).map((line) => line.split(":", 2).join(":")),
  ).toEqual(["reviews.csv:2 client", "reviews.csv:3 role", "reviews.csv:4 thrown_away_stems", "reviews.csv:6 row"]);
});
