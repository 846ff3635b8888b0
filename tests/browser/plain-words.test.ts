import { expect, test } from "vitest";
import { demoBrowser } from "./demo-browser";

/** Input that is plainly wrong is met with a word, and nothing is filled in that nobody chose. */

const { open } = demoBrowser();

test("a new planting, booking or line in the cooler has no day until one is chosen, and says so when it is sent", async () => {
  const cooler = await open("/farm/cooler");
  const put = cooler.getByRole("form", { name: "Put stems in" });
  expect(await put.getByLabel("Cut on").inputValue()).toBe("");
  await put.getByRole("button", { name: "Put them in" }).click();
  const said = await put.getByRole("alert").textContent();
  expect(said).toContain("choose a variety");
  expect(said).toContain("choose a day");
  await cooler.close();
  const bed = await open("/beds/1");
  await bed.getByText("Another planting in this bed").click();
  expect(await bed.getByRole("form", { name: "A new planting" }).getByLabel("Planted or sown on").inputValue()).toBe(
    "",
  );
  await bed.close();
  const booking = await open("/bookings/new");
  expect(await booking.getByLabel("Day of the event").inputValue()).toBe("");
  await booking.close();
});

test("an event of 2019 is met with a word, and what was typed stays", async () => {
  const page = await open("/bookings/1");
  await page.getByLabel("Day of the event").fill("2019-06-15");
  await page.getByRole("button", { name: /^Save/ }).first().click();
  await page.getByText("years away from today").first().waitFor();
  expect(await page.getByLabel("Day of the event").inputValue()).toBe("2019-06-15");
  await page.close();
});

test("the saved line is shown to who saved, and to nobody else; it makes room for a form that was not saved", async () => {
  const own = await open("/farm");
  // Every page is opened as by a device of its own, which shares no cookie with another.
  const other = await open("/farm");
  const line = own.locator("details.figure", { hasText: "Tubers from a clump" });
  await line.locator("summary").click();
  await line.getByRole("textbox").fill("5");
  await line.getByRole("button", { name: "Keep" }).click();
  await own.locator(".lastchange").waitFor();
  await other.reload();
  expect(await other.locator(".lastchange").count()).toBe(0);
  await line.locator("summary").click();
  await line.getByRole("textbox").fill("a few");
  await line.getByRole("button", { name: "Keep" }).click();
  await line.getByText("Not saved").waitFor();
  expect(await own.locator(".lastchange").isVisible()).toBe(false);
  await own.getByRole("button", { name: /^Leave/ }).click();
  await own.reload({ waitUntil: "networkidle" });
  await own.getByRole("button", { name: "Undo" }).click();
  await line.locator("summary").getByText("4", { exact: true }).waitFor();
  await other.close();
  await own.close();
});
