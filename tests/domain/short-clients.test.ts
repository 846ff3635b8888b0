import { expect, test } from "vitest";
import type { Booking } from "#lib/domain/records/booking";
import type { StandingOrder } from "#lib/domain/records/standing-order";
import { withShortBuyers, withShortClients } from "#lib/domain/short-clients";
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

test("buyers are called in the same way, told apart by the first day of their orders", () => {
  const order = (id: number, buyer: string, firstOn: string) =>
    ({ id, buyer, firstOn: day(firstOn), stemCents: 90 }) as StandingOrder;
  const short = withShortBuyers([order(1, "Hill & Daughters", "2027-05-01"), order(2, "The Hill stall", "2027-06-01")]);
  expect(short.map(({ buyer, stemCents }) => [buyer, stemCents])).toEqual([
    ["Hill, 1 May", 90],
    ["Hill, 1 Jun", 90],
  ]);
});

test("several orders of one buyer keep one name", () => {
  const order = (id: number, buyer: string, firstOn: string) =>
    ({ id, buyer, firstOn: day(firstOn), stemCents: 90 }) as StandingOrder;
  const names = (orders: StandingOrder[]) => withShortBuyers(orders).map(({ buyer }) => buyer);
  expect(names([order(1, "Weir florist", "2027-05-01"), order(2, "Weir florist ", "2027-04-01")])).toEqual([
    "Weir",
    "Weir",
  ]);
  expect(
    names([
      order(1, "Weir florist", "2027-05-01"),
      order(2, "Weir Co-op", "2027-06-01"),
      order(3, "Weir florist", "2027-04-01"),
    ]),
  ).toEqual(["Weir, 1 Apr", "Weir, 1 Jun", "Weir, 1 Apr"]);
});
