import { expect, test } from "vitest";
import { demoAddress } from "./demo-address";
import { demoBrowser } from "./demo-browser";
import { violations } from "./open-page";

const { open } = demoBrowser();

test.each(["/picking/labels?day=2027-06-23", "/picking/labels?day=2027-09-02", "/picking/labels?week=2027-W35"])(
  "%s: each label is 91 by 49 mm, nothing on it is cut off, and its stems are those of the pick list",
  async (path) => {
    const page = await open(path);
    await page.emulateMedia({ media: "print" });
    const labels = await page.locator(".bucket-label").evaluateAll((all) =>
      all.map((label) => {
        const { width, height } = label.getBoundingClientRect();
        const what = label.querySelector(".label-what");
        const stems = label.querySelector(".label-foot span:nth-child(2)")?.textContent ?? "";
        return {
          width,
          height,
          isWhole: !what || what.scrollHeight <= what.clientHeight + 1,
          stems: Number(stems.replace(/[^\d]/g, "")),
        };
      }),
    );
    expect(labels.length).toBeGreaterThan(1);
    const millimetre = 96 / 25.4;
    for (const { width, height, isWhole } of labels) {
      expect(Math.abs(width - 91 * millimetre)).toBeLessThan(1);
      expect(Math.abs(height - 49 * millimetre)).toBeLessThan(1);
      expect(isWhole).toBe(true);
    }
    const listed = await page.request.get(demoAddress() + path.replace("labels", "print"));
    const [, total = ""] = /([\d,]+) stems/.exec(await listed.text()) ?? [];
    if (path.includes("day="))
      expect(labels.reduce((sum, { stems }) => sum + stems, 0)).toBe(Number(total.replace(",", "")));
    await page.close();
  },
);

test("on screen axe finds nothing on the labels", async () => {
  const page = await open("/picking/labels?booking=3");
  expect(await violations(page)).toEqual([]);
  await page.close();
});
