import { expect, test } from "vitest";
import { demoBrowser } from "./demo-browser";

const { open } = demoBrowser();

test("a bloom curve changed on a planting's page is for that planting alone, and undone with one press", async () => {
  const page = await open("/beds/12");
  const [first, second] = [page.locator("section.card").nth(0), page.locator("section.card").nth(1)];
  await first.getByText("Change the bloom curve").click();
  expect(await first.getByLabel("For", { exact: true }).inputValue()).toBe("planting");
  await first.getByLabel("Spread of yield").fill("40");
  await first.getByRole("button", { name: "Save the bloom curve" }).click();
  await first.getByText("A curve of this planting alone").waitFor();
  expect(await second.getByText("The curve of all dahlia").count()).toBe(1);
  await page.getByRole("button", { name: "Undo" }).click();
  await first.getByText("The curve of all dahlia").waitFor();
  await page.close();
});
