import { describe, expect, test } from "vitest";
import { demoSnapshot } from "#demo/demo-snapshot";
import { provenPlan } from "../proven-plan";
import { askedByOrder, soldShares, surplusByCrop } from "./season-facts";

/** What the demo sells beside its bookings, in whichever season it is loaded. */
describe.each([2027, 2028, 2030])("the standing orders of %i", (season) => {
  const snapshot = demoSnapshot(season);
  const planned = provenPlan(snapshot, season);

  test("standing orders of each kind take the season's surplus, and the farm sells 60 to 80 % of what it cuts, from April to October half of it in any month", () => {
    expect(new Set(snapshot.standingOrders.map(({ kind }) => kind))).toEqual(
      new Set(["subscription", "market", "florist"]),
    );
    const { all, byMonth } = soldShares(planned);
    expect(all).toBeGreaterThan(0.6);
    expect(all).toBeLessThan(0.8);
    for (const month of ["04", "05", "06", "07", "08", "09", "10"]) expect(byMonth(month), month).toBeGreaterThan(0.5);
  });

  test("buyers ask for what there is: standing orders go 10 to 15 % short, and none gets less than half of its stems", () => {
    const orders = askedByOrder(planned);
    expect(orders.length).toBe(snapshot.standingOrders.length);
    for (const { order, asked, short } of orders) expect(short, `${order.buyer} ${order.id}`).toBeLessThan(asked / 2);
    const sum = (of: "asked" | "short") => orders.reduce((total, order) => total + order[of], 0);
    expect(sum("short") / sum("asked")).toBeGreaterThan(0.1);
    expect(sum("short") / sum("asked")).toBeLessThan(0.15);
  });

  test("zinnias are the glut of August and September", () => {
    const [[crop, stems], [, second]] = surplusByCrop(planned, ["08", "09"]);
    expect(crop).toBe("Zinnia");
    expect(stems).toBeGreaterThan(2000);
    expect(stems).toBeGreaterThan(second);
  });
});
