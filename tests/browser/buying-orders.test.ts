import { expect, test } from "vitest";
import { DESK, PHONE, scrollsSideways, violations } from "./open-page";
import { ownDemo } from "./own-demo";

/** A slip is ordered, comes short, and stands in the cooler: on a day of the demo's season. */

const { open, address } = ownDemo("2027-06-10");

test("what is ordered waits on the way, and what came of it, fewer than ordered, stands in the cooler", async () => {
  const page = await open("/buying");
  const links = page.getByRole("link", { name: /^It is ordered/ });
  await links.first().click();
  await page.getByRole("button", { name: "These are ordered" }).click();
  await page.getByText("name the supplier").first().waitFor();
  await page.getByLabel("Supplier").fill("Marl Street");
  await page.getByLabel("Arrives on").fill("2027-06-10");
  await page.getByRole("button", { name: "These are ordered" }).click();
  await page.getByRole("heading", { name: "Marl Street" }).waitFor();
  const csv = await (await page.request.get(`${address()}/buying/csv`)).text();
  expect(csv).toMatch(/^\uFEFF?state,supplier,/);
  expect(csv).toContain("ordered,Marl Street,");

  const asked = page.locator("input[name^=arrived]").first();
  const stems = Number(await asked.inputValue());
  await asked.fill(String(stems - 3));
  await page.getByRole("button", { name: "These came" }).click();
  await page.getByText(/^Arrived: \d+ flower/).click();
  await page.getByText(`${stems - 3} of ${stems} came Thu 10 Jun, 3 short`).waitFor();
  await page.goto(`${address()}/farm/cooler?show=all`, { waitUntil: "networkidle" });
  await page
    .getByText(`${stems - 3} in, 0 out`)
    .first()
    .waitFor();
  await page.close();
});

test("orders read well for everybody, at both widths", async () => {
  for (const viewport of [DESK, PHONE])
    for (const path of ["/buying", "/buying/order"]) {
      const page = await open(path, viewport);
      expect(await violations(page)).toEqual([]);
      expect(await scrollsSideways(page)).toBe(false);
      await page.close();
    }
});
