import type { Page } from "playwright-core";
import { describe, expect, test } from "vitest";
import { demoAddress } from "./demo-address";
import { demoBrowser } from "./demo-browser";
import { PHONE, scrollsSideways, violations } from "./open-page";

/** Somebody is on the phone: a question from any screen, by keyboard alone, to a held booking and back. */

const { browser, open } = demoBrowser();

const BLUSH = "/enquiry?stemCount=120&colours=blush&role=focal&eventOn=2027-06-19";
const answered = (page: Page) => page.locator('.enquiry[data-state="done"]').waitFor();

describe.each(["/", "/beds/1", "/bookings/new"])("from %s", (path) => {
  test("one key, four fields and Tab lead to an answer, and on to a held booking that undo takes back", async () => {
    const page = await open(path);
    const press = async (...keys: string[]) => {
      for (const key of keys) await page.keyboard.press(key);
    };
    await press("Control+k");
    await page.locator("#stemCount:focus").waitFor();
    await page.keyboard.type("60");
    await press("Tab");
    await page.keyboard.type("blush, cream");
    await press("Tab");
    await page.keyboard.type("focal");
    await press("Tab");
    await page.keyboard.type("09252027");
    await answered(page);
    expect(await page.locator("h1").first().textContent()).toMatch(/^Yes: all 60/);
    expect(await page.locator("blockquote").textContent()).toBe(
      "“For Saturday the 25th of September I can promise all 60 stems in blush or cream.”",
    );
    expect(await page.getByRole("list", { name: "Stems that would serve it" }).textContent()).toMatch(
      /Dahlia .+, .+\d/,
    );

    await page.getByLabel("For whom").focus();
    await page.keyboard.type(`The caller from ${path}`);
    await press("Enter");
    await page.getByText(`Held: The caller from ${path}, Saturday 25 September 2027`).waitFor();
    expect(await page.locator("#stemCount").inputValue()).toBe("");
    await page.getByRole("button", { name: /^Undo/ }).focus();
    await press("Enter");
    await page.getByText(`Held: The caller from ${path}`).waitFor({ state: "detached" });
    await page.goto(`${demoAddress()}/bookings`, { waitUntil: "networkidle" });
    expect(await page.locator(".booking-line", { hasText: "The caller from" }).count()).toBe(0);
    await page.close();
  });
});

test("what was typed into another form is still there after a call came in between", async () => {
  const page = await open("/bookings/new");
  await page.getByLabel("Client", { exact: true }).fill("Half a booking");
  await page.keyboard.press("Control+k");
  await page.locator("#stemCount:focus").waitFor();
  await page.goto(`${demoAddress()}/bookings/new`, { waitUntil: "networkidle" });
  await page.getByRole("button", { name: "Fill it in again" }).click();
  expect(await page.getByLabel("Client", { exact: true }).inputValue()).toBe("Half a booking");
  await page.close();
});

test("the booking that holds a question has its stems, its status, and in its note until when", async () => {
  const page = await open(BLUSH);
  await answered(page);
  await page.getByLabel("For whom").fill("");
  await page.getByRole("button", { name: "Hold it" }).click();
  await page.getByRole("alert").getByText("name the client").waitFor();
  await page.getByLabel("For whom").fill("The patient caller");
  await page.getByLabel("Hold it until").fill("2026-12-09");
  await page.getByRole("button", { name: "Hold it" }).click();
  await page.getByRole("link", { name: "The patient caller" }).click();
  await page.waitForURL(/\/bookings\/\d+$/);
  expect(await page.getByLabel("Status").inputValue()).toBe("held");
  expect(await page.getByLabel("Stems, focal", { exact: true }).inputValue()).toBe("120");
  expect(await page.getByLabel("Note").inputValue()).toBe("Asked on Wednesday 25 November 2026: 120 blush stems.");
  await page.goto(`${demoAddress()}/farm/history`, { waitUntil: "networkidle" });
  await page.getByRole("button", { name: /^Undo/ }).first().click();
  await page.waitForLoadState("networkidle");
  await page.close();
});

test.each([
  ["0 stems", { stemCount: "0" }, /more than 0 stems/],
  ["2.5 stems", { stemCount: "2.5" }, /not a whole number: write 3/],
  ["a colour that is none", { colours: "blsh" }, /did you mean "blush"/],
  ["a day outside the seasons", { eventOn: "1989-06-17" }, /choose a day from 1990 to 2200/],
  ["a past day", { eventOn: "2026-06-20" }, /Saturday 20 June 2026 is past/],
  ["a year in which nothing is planted", { eventOn: "2031-06-21" }, /Nothing is planted for 2031 yet/],
  ["a colour that nobody grows", { colours: "silver" }, /No silver focal is planted for 2027/],
])("%s is met with a word", async (_, part, word) => {
  const whole = { stemCount: "120", colours: "blush", role: "focal", eventOn: "2027-06-19" };
  const page = await open(`/enquiry?${new URLSearchParams({ ...whole, ...part })}`);
  await page.locator('.enquiry:not([data-state="asking"])').waitFor();
  expect(await page.locator(".enquiry").textContent()).toMatch(word);
  await page.close();
});

test("a near colour is asked for with a button, and then stands in the question", async () => {
  const page = await open("/enquiry?stemCount=60&colours=lavender&role=focal&eventOn=2027-09-25");
  await answered(page);
  const rung = page.locator(".enquiry-ladder li").filter({ hasText: /if .+ is welcome too/ });
  const colour = /if (\w+) is/.exec((await rung.textContent()) ?? "")?.[1] ?? "";
  await rung.getByRole("button", { name: `Ask with ${colour}` }).click();
  await answered(page);
  expect(await page.getByLabel("Colours").inputValue()).toBe(`lavender, ${colour}`);
  expect(new URL(page.url()).searchParams.get("colours")).toBe(`lavender, ${colour}`);
  await page.close();
});

test("the old address of the question leads to the new one, its day along", async () => {
  const page = await open("/dates?on=2027-06-19");
  expect(await page.getByLabel("on", { exact: true }).inputValue()).toBe("2027-06-19");
  await page.close();
});

test("without scripts the address answers, and the question can be sent", async () => {
  const context = await browser().newContext({ javaScriptEnabled: false });
  const page = await context.newPage();
  await page.goto(demoAddress() + BLUSH);
  await page.getByLabel("Can you do").fill("20");
  await page.getByLabel("Colours").fill("plum");
  await page.getByLabel("on", { exact: true }).fill("2027-09-25");
  await page.getByRole("button", { name: "Answer" }).click();
  await page.locator("#verdict").waitFor();
  expect(await page.locator("h1").textContent()).toMatch(/^(Yes|Likely|Partly)/);
  await context.close();
});

test.each([390, 768, 1280])(
  "at %i px axe finds nothing in light and dark, and nothing scrolls sideways",
  async (width) => {
    for (const path of ["/enquiry", BLUSH, "/enquiry?stemCount=300&colours=plum&role=focal&eventOn=2027-09-25"]) {
      const page = await open(path, { width, height: PHONE.height });
      if (path !== "/enquiry") await answered(page);
      for (const colorScheme of ["light", "dark"] as const) {
        await page.emulateMedia({ colorScheme });
        expect(await violations(page)).toEqual([]);
      }
      expect(await scrollsSideways(page)).toBe(false);
      await page.close();
    }
  },
);
