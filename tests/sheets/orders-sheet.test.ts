import { expect, test } from "vitest";
import { problemLines, read } from "./known-farm";

const HEAD = "buyer,kind,weekday,from,to,role,crop,recipe,colours,count,stem_cents\n";

test("standing orders are read by the names of crop and piece, a florist's list of stems where the sheet says no more", () => {
  const { problems, records } = read({
    "orders.csv":
      "buyer,weekday,from,to,role,count,stem_cents\nInvented florist,Friday,2027-07-02,2027-09-24,focal,40,120\n",
  });
  expect(problems).toEqual([]);
  const list = { buyer: "Invented florist", kind: "florist", weekday: 5, firstOn: "2027-07-02", lastOn: "2027-09-24" };
  expect(records.standingOrders).toEqual([
    { ...list, role: "focal", crop: null, recipe: null, colours: [], askedCount: 40, stemCents: 120 },
  ]);
  const named = read({
    "orders.csv": `${HEAD}Box,subscription,wed,2027-07-01,2027-08-31,,dahlia,bridal bouquet,blush / cream,12,90\n`,
  });
  expect(named.records.standingOrders).toMatchObject([
    { kind: "subscription", role: null, crop: "Dahlia", recipe: "Bridal bouquet", colours: ["blush", "cream"] },
  ]);
});

test("an order of an unknown crop or piece, of stems and a piece at once or of neither, or whose days are turned round, says so", () => {
  const row = (from: string, what: string) => `Box,market,Sat,${from},2027-08-31,${what},,12,90`;
  expect(
    problemLines({
      "orders.csv": [
        HEAD.trim(),
        row("2027-07-01", "focal,Dalia,"),
        row("2027-07-01", ",,Bridal boquet"),
        row("2027-07-01", "focal,,Bridal bouquet"),
        row("2027-07-01", ",,"),
        row("2027-09-01", "focal,,"),
        "",
      ].join("\n"),
    }).map((line) => line.split(":", 2).join(":")),
  ).toEqual(["orders.csv:2 crop", "orders.csv:3 recipe", "orders.csv:4 role", "orders.csv:5 role", "orders.csv:6 to"]);
});
