import { type ChildProcess, spawnSync } from "node:child_process";
import { readFileSync } from "node:fs";
import { join } from "node:path";
import type { Browser, BrowserContext, Page } from "playwright-core";
import { afterAll, beforeAll, expect, test } from "vitest";
import { ROUTES } from "../../app/people/allowed";
import { builtActions } from "../trust/odd-calls";
import { demoInFile, ended, runScript, TODAY } from "./demo-in-file";
import { openBrowser, PHONE, scrollsSideways, violations } from "./open-page";
import { serveBuilt } from "./served";

/** A farm that is open to its people, on an address of its own that stands for the farm's network: an owner at the desk, two others with phones. */

const PASSWORD = "three hens and a heron";
const { folder, file, env, remove } = demoInFile();
let server: ChildProcess;
let address: string;
let browser: Browser;
let owner: Page;
let helper: Page;
let designer: Page;

const phone = async (): Promise<Page> => (await browser.newContext({ viewport: PHONE })).newPage();
const context = (page: Page): BrowserContext => page.context();
const get = (page: Page, path: string) => context(page).request.get(address + path, { maxRedirects: 0 });

beforeAll(async () => {
  runScript("db/people/run-password.ts", [], env, `${PASSWORD}\n`);
  ({ server, address } = await serveBuilt(env, ["--people", "--host", "127.0.0.2"]));
  browser = await openBrowser();
  owner = await (await browser.newContext()).newPage();
});
afterAll(async () => {
  await browser.close();
  await ended(server);
  remove();
});

/** Takes somebody on, and lets a phone join as them by the code on the owner's screen. */
async function joined(name: string, role: "helper" | "designer"): Promise<Page> {
  await owner.goto(`${address}/farm/people`, { waitUntil: "networkidle" });
  await owner.getByLabel("Name").fill(name);
  await owner.getByLabel("Does what").selectOption(role);
  await owner.getByRole("button", { name: "Take on" }).click();
  await owner.getByRole("button", { name: `Code for a phone: ${name}` }).click();
  const page = await phone();
  await page.goto((await owner.locator(".join-code code").textContent()) ?? "", { waitUntil: "networkidle" });
  await page.getByRole("button", { name: "Join on this phone" }).click();
  await page.waitForURL(/\/(today|bookings)$/);
  return page;
}

test("without a password of its owner the tool does not open a farm to people", () => {
  const refused = spawnSync(process.execPath, ["app/serve.mjs", "--people", "--host", "127.0.0.2"], {
    env: { ...env, FARM_FILE: join(folder, "other.sqlite"), PORT: "0" },
    encoding: "utf8",
  });
  expect([refused.status, refused.stderr.includes("npm run password")]).toEqual([1, true]);
});

test("a stranger sees nothing of the farm but the way in, and a wrong password does not open it", async () => {
  await owner.goto(`${address}/bookings`, { waitUntil: "networkidle" });
  expect(new URL(owner.url()).pathname).toBe("/sign-in");
  expect(await owner.content()).not.toMatch(/Larkhollow|Ashgrove/);
  expect(await violations(owner)).toEqual([]);
  await owner.getByLabel("The owner’s password").fill("not the password");
  await owner.getByRole("button", { name: "Sign in" }).click();
  await owner.getByText("this is not the owner’s password").waitFor();
});

test("the owner signs in, takes a helper and a designer on, and each joins by a code", async () => {
  await owner.getByLabel("The owner’s password").fill(PASSWORD);
  await owner.getByRole("button", { name: "Sign in" }).click();
  await owner.waitForURL(`${address}/`);
  const [cookie] = (await context(owner).cookies()).filter(({ name }) => name === "session");
  expect(cookie).toMatchObject({ httpOnly: true, sameSite: "Strict" });
  helper = await joined("Wren", "helper");
  designer = await joined("Robin", "designer");
  expect(await violations(owner)).toEqual([]);
  for (const page of [helper, designer]) {
    expect(await violations(page)).toEqual([]);
    expect(await scrollsSideways(page)).toBe(false);
  }
});

test("the farm's file, and so any copy of it, carries no password and nobody's session", async () => {
  const tokens = (await Promise.all([owner, helper, designer].map((page) => context(page).cookies())))
    .flat()
    .filter(({ name }) => name === "session")
    .map(({ value }) => value);
  expect(tokens.length).toBe(3);
  for (const secret of ["scrypt", "tokenHash", ...tokens]) expect(readFileSync(file).includes(secret)).toBe(false);
});

test("what a helper is sent on any page holds no client's name, no note and no money", async () => {
  const names = [...readFileSync("demo/bookings.csv", "utf8").matchAll(/^([A-Z][^,]+),2027/gm)].map(([, name]) => name);
  expect(names.length).toBeGreaterThan(20);
  const paths = ["/picking", "/picking?booking=2", "/picking/print?booking=2", "/picking/labels?booking=2"];
  for (const path of [...paths, "/picking/csv", "/picking/calendar", "/today", "/farm/cooler", "/beds/buds"]) {
    const answer = await get(helper, path);
    expect([path, answer.status()]).toEqual([path, 200]);
    const said = await answer.text();
    expect([path, names.filter((name) => said.includes(name))]).toEqual([path, []]);
    expect([path, /\$\d+\.\d\d|[a-z]Cents/.test(said)]).toEqual([path, false]);
  }
  expect(await (await get(helper, "/picking?booking=2")).text()).toContain("Ashgrove");
});

test("what is the owner's is not sent to the others, whatever they ask for; a bed is shown to a designer without a form to change it", async () => {
  for (const [page, role] of [
    [helper, "helper"],
    [designer, "designer"],
  ] as const)
    for (const [route, roles] of Object.entries(ROUTES)) {
      if (roles.includes(role)) continue;
      const answer = await get(page, route.replaceAll(/\[\w+\]/g, "1"));
      expect([role, route, answer.status()]).toEqual([role, route, 303]);
    }
  const bed = await (await get(designer, "/beds/1")).text();
  expect(bed).toContain("Plantings of");
  expect(bed).not.toMatch(/Save the bed|Remove this planting|Add a planting/);
  expect(await (await get(owner, "/beds/1")).text()).toContain("Save the bed");
});

test("the history says who made a change; each takes back their own, and nobody but the owner another's", async () => {
  await helper.goto(`${address}/farm/cooler`, { waitUntil: "networkidle" });
  const form = helper.locator("form", { has: helper.getByRole("button", { name: "Put them in" }) });
  await form.locator("select").first().selectOption({ index: 1 });
  await form.locator("input[inputmode=decimal], input[inputmode=numeric]").first().fill("20");
  await form.locator("input[type=date]").first().fill(TODAY);
  await form.getByRole("button", { name: "Put them in" }).click();
  await helper.locator(".lastchange").waitFor();
  await designer.goto(`${address}/bookings`, { waitUntil: "networkidle" });
  expect(await designer.locator(".lastchange").count()).toBe(0);
  await owner.goto(`${address}/farm/history`, { waitUntil: "networkidle" });
  expect(await owner.locator("tbody tr").first().textContent()).toContain("Wren");
  const changeId = await owner.locator("input[name=changeId]").first().inputValue();
  const undo = builtActions().find(({ name }) => name === "undo");
  const refused = await context(designer).request.post(`${address}/bookings`, {
    headers: { origin: address },
    multipart: { [`$ACTION_ID_${undo?.id}`]: "", changeId },
    // A line that was kept open may end just then; a browser asks again by itself.
    maxRetries: 3,
  });
  expect(refused.status()).toBeLessThan(500);
  await owner.reload({ waitUntil: "networkidle" });
  expect(await owner.locator("tbody tr").first().textContent()).not.toContain("took back");
  await helper.getByRole("button", { name: /^Undo/ }).click();
  await helper.locator(".lastchange", { hasText: "took back" }).waitFor();
});

test("a calendar program without a cookie has the calendar by its address, with short names, until the address is ended", async () => {
  await owner.goto(`${address}/farm/people`, { waitUntil: "networkidle" });
  await owner.getByRole("button", { name: "Make an address" }).click();
  const link = (await owner.locator(".join-code code").textContent()) ?? "";
  const calendar = await fetch(link);
  const said = await calendar.text();
  expect([calendar.status, calendar.headers.get("content-type")]).toEqual([200, "text/calendar; charset=utf-8"]);
  expect(said).toContain("BEGIN:VCALENDAR");
  expect(said).toContain("Ashgrove");
  expect(said).not.toContain("Ashgrove wedding");
  expect((await fetch(`${link}x`)).status).toBe(404);
  await owner.reload({ waitUntil: "networkidle" });
  await owner.getByRole("button", { name: "End the address" }).click();
  await owner.getByRole("button", { name: "End the address" }).waitFor({ state: "detached" });
  expect((await fetch(link)).status).toBe(404);
});

test("who is ended with a tap is out with the next step", async () => {
  await owner.goto(`${address}/farm/people`, { waitUntil: "networkidle" });
  await owner.getByRole("button", { name: "End: Wren" }).click();
  await owner.getByRole("button", { name: "End: Wren" }).waitFor({ state: "detached" });
  await helper.goto(`${address}/picking`);
  expect(new URL(helper.url()).pathname).toBe("/sign-in");
  await designer.goto(`${address}/bookings`);
  expect(new URL(designer.url()).pathname).toBe("/bookings");
});

test("signing out everywhere ends every device", async () => {
  await owner.goto(`${address}/farm/people`, { waitUntil: "networkidle" });
  await owner.getByRole("button", { name: "Sign out everywhere" }).click();
  await owner.waitForURL(`${address}/sign-in`);
  await designer.goto(`${address}/bookings`);
  expect(new URL(designer.url()).pathname).toBe("/sign-in");
});
