import { createElement } from "react";
import { renderToStaticMarkup } from "react-dom/server";
import { expect, test } from "vitest";
import { seededFarm, TYPICAL } from "#demo/seeded-farm";
import { BuyInOrders } from "../../app/buying/buy-in-orders";
import { SurplusTable } from "../../app/buying/surplus-table";
import { provenPlan } from "../proven-plan";

const { buying, surplus, snapshot } = provenPlan(seededFarm(1, TYPICAL), 2027);

const bodyRows = (html: string): number =>
  [...html.matchAll(/<tbody>(.*?)<\/tbody>/gs)].reduce((sum, [, body]) => sum + body.split("<tr").length - 1, 0);

const slipLines = (html: string): number => html.split('class="slip-line"').length - 1;

const orders = (lines: typeof buying, isAllShown: boolean) =>
  renderToStaticMarkup(createElement(BuyInOrders, { farm: snapshot.farm, lines, now: 0, isAllShown }));

test("of hundreds of orders the hundred to order first are shown, with the count and the way to all of them", () => {
  expect(buying.length).toBeGreaterThan(200);
  const html = orders(buying, false);
  expect(slipLines(html)).toBe(100);
  expect(html).toContain(`These are the first 100 of ${buying.length} lines`);
  expect(html).toContain(`<a href="/buying?show=all">`);
  const days = buying.map(({ orderBy }) => orderBy);
  expect(Math.max(...days.slice(0, 100))).toBeLessThanOrEqual(Math.min(...days.slice(100)));
});

test("all are shown to who asks for all, and a short list is whole and says nothing of a rest", () => {
  expect(slipLines(orders(buying, true))).toBe(buying.length);
  for (const html of [orders(buying, true), orders(buying.slice(0, 100), false)])
    expect(html).not.toContain("Show all");
});

test("surplus too is shown by the first hundred lots, counted as a whole, and opened in full when asked for", () => {
  const lots = (isAllShown: boolean) => renderToStaticMarkup(createElement(SurplusTable, { surplus, isAllShown }));
  const count = Number(/<summary>(\d+) lots/.exec(lots(false))?.[1]);
  expect(count).toBeGreaterThan(200);
  expect([bodyRows(lots(false)), bodyRows(lots(true))]).toEqual([100, count]);
  expect(lots(true)).toContain("<details open");
});
