import { createElement } from "react";
import { renderToStaticMarkup } from "react-dom/server";
import { expect, test } from "vitest";
import { seededFarm, TYPICAL } from "#demo/seeded-farm";
import { buyingSlips, buyingTotals } from "#lib/plan/road/buying-slips";
import { inWholes } from "#lib/plan/words/numbers";
import { BuyInOrders } from "../../app/buying/buy-in-orders";
import { SurplusTable } from "../../app/buying/surplus-table";
import { provenPlan } from "../proven-plan";

const { buying, surplus, work } = provenPlan(seededFarm(1, TYPICAL), 2027);

const bodyRows = (html: string): number =>
  [...html.matchAll(/<tbody>(.*?)<\/tbody>/gs)].reduce((sum, [, body]) => sum + body.split("<tr").length - 1, 0);

const slipLines = (html: string): number => html.split('class="slip-line"').length - 1;

const orders = (lines: typeof buying, isAllShown: boolean, now = 0) =>
  renderToStaticMarkup(createElement(BuyInOrders, { lines, now, isAllShown }));

test("of hundreds of orders the slips to order first are shown, each whole, until a hundred lines are there, with the count and the way to all of them", () => {
  expect(buying.length).toBeGreaterThan(200);
  const html = orders(buying, false);
  const sizes = buyingSlips(buying).map(({ lines }) => lines.length);
  const upTo = (slipCount: number) => sizes.slice(0, slipCount).reduce((sum, size) => sum + size, 0);
  const slipCount = sizes.findIndex((_, index) => upTo(index + 1) >= 100) + 1;
  expect(slipLines(html)).toBe(upTo(slipCount));
  expect(html).toContain(`These are the first ${upTo(slipCount)} of ${buying.length} lines`);
  expect(html).toContain(`<a href="/buying?show=all">`);
});

test("bunches, costs and the sums of months are of all orders, however few are shown", () => {
  const sums = (html: string) => [
    ...[...html.matchAll(/<summary>(.*?)<\/summary>/gs)].map(([, sum]) => sum),
    /<b class="great[^>]*>(.*?)<\/b>/s.exec(html)?.[1],
    /<ul class="leaders">.*?<\/ul>/s.exec(html)?.[0],
  ];
  const lastOrder = Math.max(...buying.map(({ orderBy }) => orderBy));
  for (const now of [0, lastOrder]) expect(sums(orders(buying, false, now))).toEqual(sums(orders(buying, true, now)));
  const { bunchCount } = buyingTotals(buying.filter(({ orderBy }) => orderBy < lastOrder));
  expect(sums(orders(buying, false, lastOrder))).toContain(`${inWholes(bunchCount)} bunches`);
});

test("all are shown to who asks for all, and a short list is whole and says nothing of a rest", () => {
  expect(slipLines(orders(buying, true))).toBe(buying.length);
  for (const html of [orders(buying, true), orders(buying.slice(0, 90), false)]) expect(html).not.toContain("Show all");
});

test("surplus too is shown by the first hundred lots, counted as a whole, and opened in full when asked for", () => {
  const lots = (isAllShown: boolean) =>
    renderToStaticMarkup(createElement(SurplusTable, { surplus, over: work.over, isAllShown }));
  const count = Number(/<summary>(\d+) lots/.exec(lots(false))?.[1]);
  expect(count).toBeGreaterThan(200);
  expect([bodyRows(lots(false)), bodyRows(lots(true))]).toEqual([100, count]);
  expect(lots(true)).toContain("<details open");
  const stemsOf = (rows: typeof surplus) => rows.reduce((sum, { stems }) => sum + stems, 0);
  expect(lots(true)).toContain(
    `Beside them ${inWholes(stemsOf(work.over) - stemsOf(surplus))} stems will bloom too few`,
  );
});
