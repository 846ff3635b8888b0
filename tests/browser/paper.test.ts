import { describe, expect, test } from "vitest";
import { demoBrowser } from "./demo-browser";

const { open } = demoBrowser();

/** Pages of a PDF: every page object names its type. */
const pageCount = (pdf: Buffer): number => (pdf.toString("latin1").match(/\/Type\s*\/Page\b(?!s)/g) ?? []).length;

/** Rows on a full page, at the least. */
const ROWS_A_PAGE = 25;

describe.each(["Letter", "A4"] as const)("on %s", (format) => {
  const pagesOf = async (path: string) => {
    const page = await open(path);
    const rows = await page.locator("tr.pick-line").count();
    const pages = pageCount(await page.pdf({ format, preferCSSPageSize: false }));
    await page.close();
    return { rows, pages };
  };

  test.each([
    { what: "the fullest picking day of the demo", path: "/picking/print?day=2027-09-02", least: 100 },
    { what: "a day of June", path: "/picking/print?day=2027-06-10", least: 50 },
    { what: "all of a booking", path: "/picking/print?booking=20", least: 20 },
  ])("$what, of $least rows or more, takes a page for each 25 at the most", async ({ path, least }) => {
    const { rows, pages } = await pagesOf(path);
    expect(rows).toBeGreaterThanOrEqual(least);
    expect(pages).toBeGreaterThan(0);
    expect(pages).toBeLessThanOrEqual(Math.ceil(rows / ROWS_A_PAGE));
  });

  test.each(["2027-W33", "2027-W35", "2027-W36"])("a full week, %s, takes 4 pages at the most", async (week) => {
    const { rows, pages } = await pagesOf(`/picking/print?week=${week}`);
    expect(rows).toBeGreaterThanOrEqual(100);
    expect(pages).toBeGreaterThan(0);
    expect(pages).toBeLessThanOrEqual(4);
  });

  test("the winter worksheet takes 6 pages at the most", async () => {
    const { pages } = await pagesOf("/keep-or-dig/worksheet");
    expect(pages).toBeGreaterThan(0);
    expect(pages).toBeLessThanOrEqual(6);
  });

  test("an empty booking takes one page", async () => {
    const page = await open("/bookings/new");
    expect(pageCount(await page.pdf({ format, preferCSSPageSize: false }))).toBe(1);
    await page.close();
  });
});

test.each(["/bookings", "/bookings/1", "/bookings/new", "/bookings/review", "/farm", "/farm/recipes/1", "/beds/grid"])(
  "%s carries no button and no bar of the screen on paper",
  async (path) => {
    const page = await open(path);
    const pressed = page.locator("main :is(button:not(.quiet), .button, .short-bar)").filter({ visible: true });
    expect(await pressed.count()).toBeGreaterThan(0);
    await page.emulateMedia({ media: "print" });
    expect(await pressed.allTextContents()).toEqual([]);
    await page.close();
  },
);
