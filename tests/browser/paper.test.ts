import { describe, expect, test } from "vitest";
import { demoBrowser } from "./demo-browser";

const { open } = demoBrowser();

/** Pages of a PDF: every page object names its type. */
const pageCount = (pdf: Buffer): number => (pdf.toString("latin1").match(/\/Type\s*\/Page\b(?!s)/g) ?? []).length;

describe.each(["Letter", "A4"] as const)("on %s", (format) => {
  test.each([
    { what: "the fullest picking day of the demo, 61 rows", path: "/picking/print?day=2027-09-02", most: 2 },
    { what: "a day of 28 rows", path: "/picking/print?day=2027-06-10", most: 1 },
    { what: "a week of 114 rows", path: "/picking/print?week=2027-W33", most: 4 },
    { what: "a week of 133 rows", path: "/picking/print?week=2027-W35", most: 4 },
    { what: "the winter worksheet", path: "/keep-or-dig/worksheet", most: 6 },
  ])("$what takes $most pages at the most", async ({ path, most }) => {
    const page = await open(path);
    const pages = pageCount(await page.pdf({ format, preferCSSPageSize: false }));
    await page.close();
    expect(pages).toBeGreaterThan(0);
    expect(pages).toBeLessThanOrEqual(most);
  });
});
