import { createElement } from "react";
import { renderToStaticMarkup } from "react-dom/server";
import { expect, test } from "vitest";
import { type Column, Table } from "../../app/ui/table";

type Row = { name: string; stems: number };

const columns: readonly Column<Row>[] = [
  { head: "Crop", kind: "name", cell: ({ name }) => name, foot: "In all" },
  { head: "Short", unit: "stems", kind: "number", cell: ({ stems }) => stems, foot: 12 },
  { head: "Take out", kind: "tool", cell: () => "button" },
];
const rows = [
  { name: "Dahlia", stems: 12 },
  { name: "Rose", stems: 0 },
];
const render = (given: Partial<Parameters<typeof Table<Row>>[0]> = {}) =>
  renderToStaticMarkup(
    createElement(Table<Row>, { caption: "By crop", columns, rows, keyOf: ({ name }: Row) => name, ...given }),
  );

test("a table has its caption, a heading for each column with its unit, and each row is named by its own heading", () => {
  const html = render();
  expect(html).toContain("<caption>By crop</caption>");
  expect([...html.matchAll(/<th scope="col"[^>]*>(.*?)<\/th>/g)].map(([, head]) => head)).toEqual([
    "Crop",
    "Short, stems",
    '<span class="visually-hidden">Take out</span>',
  ]);
  expect([...html.matchAll(/<th scope="row">(.*?)<\/th>/g)].map(([, name]) => name)).toEqual([
    "Dahlia",
    "Rose",
    "In all",
  ]);
});

test("numbers and their heading carry the class that sets them right, and totals stand in a foot of their own", () => {
  const html = render();
  expect(html).toContain('<th scope="col" class="number">Short, stems</th>');
  expect(html).toMatch(/<tfoot>.*<td class="number" data-label="Short">12<\/td>.*<\/tfoot>/);
});

test("on a phone each cell knows its heading, but for names and tools, which need none", () => {
  const html = render();
  expect(html).toContain('data-label="Short"');
  expect(html).not.toContain('data-label="Crop"');
  expect(html).not.toContain('data-label="Take out"');
});

test("a row with nothing to show says so across the columns it cannot fill", () => {
  const html = render({ insteadOf: ({ stems }) => (stems === 0 ? { from: 1, words: "no curve" } : null) });
  expect(html).toContain('<th scope="row">Rose</th><td colSpan="2">no curve</td>');
});

test("groups stand under a heading over all columns", () => {
  const html = render({ groups: [{ title: "June", rows }] });
  expect(html).toContain('<tr class="group-head"><th scope="rowgroup" colSpan="3">June</th></tr>');
});

test("a drawing can stand in a heading's place: readers still hear the heading", () => {
  const html = render({ columns: [{ ...columns[0], headShown: "Mar Apr May" }] });
  expect(html).toContain('<span class="visually-hidden">Crop</span>Mar Apr May</th>');
});

test("rows in two lines need no words before their cells", () => {
  expect(render({ isInLines: true })).toContain('<table class="lines-on-phone">');
});
