import { expect, test } from "vitest";
import type { Booking } from "#lib/domain/records/booking";
import { withShortClients } from "#lib/domain/short-clients";
import { booking, day } from "../small-farm";

const short = (...rows: (readonly [client: string, eventOn?: string])[]) =>
  withShortClients(
    rows.map(([client, eventOn = "2027-06-19"], index) => booking({ id: index + 1, client, eventOn: day(eventOn) })),
  ).map(({ client }) => client);

test("a client is the first word of the name, without an article", () => {
  expect(
    short(["Rosamund Ashgrove & Tom Weir"], ["The Millrace wedding"], ["  An  Owlcote christening"], [""]),
  ).toEqual(["Rosamund", "Millrace", "Owlcote", "client"]);
});

test("two who would be called the same are told apart by the day, and on one day by their order", () => {
  expect(short(["Anna Weir"], ["Anna Hill", "2027-07-03"], ["Anna Low", "2027-07-03"], ["Bea"])).toEqual([
    "Anna, 19 Jun",
    "Anna, 3 Jul (1)",
    "Anna, 3 Jul (2)",
    "Bea",
  ]);
});

test("all else of a booking stays as it is, except that the note is gone", () => {
  const own: Booking = booking({ id: 1, client: "Anna Weir", note: "call 555 after six" });
  expect(withShortClients([own])).toEqual([{ ...own, client: "Anna", note: "" }]);
});
