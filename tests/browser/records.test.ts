import type { ChildProcess } from "node:child_process";
import { existsSync, mkdirSync, readdirSync, rmSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import type { Browser, BrowserContext, Page } from "playwright-core";
import { afterAll, beforeAll, expect, test } from "vitest";
import { demoInFile, ended } from "./demo-in-file";
import { openBrowser } from "./open-page";
import { serveBuilt } from "./served";

/** What becomes of the records when people, disks and other tabs get in the way, on a server and a farm of this file's own. */

const { folder, file, env, remove } = demoInFile();
let server: ChildProcess;
let address: string;
let browser: Browser;
let tabs: BrowserContext;

beforeAll(async () => {
  await serve();
  browser = await openBrowser();
  tabs = await browser.newContext();
});
afterAll(async () => {
  await browser.close();
  await end("SIGTERM");
  remove();
});

const serve = async () => {
  ({ server, address } = await serveBuilt(env));
};
const end = (signal: NodeJS.Signals) => ended(server, signal);
const open = async (path: string): Promise<Page> => {
  const page = await tabs.newPage();
  await page.goto(address + path, { waitUntil: "networkidle" });
  return page;
};
const bedForm = (page: Page) => page.locator('form:has-text("Save the bed")');
const openBed = async (): Promise<Page> => {
  const page = await open("/beds/1");
  await page.locator("details", { hasText: "Save the bed" }).evaluate((details) => details.setAttribute("open", ""));
  return page;
};
const note = (page: Page) => bedForm(page).getByLabel("Note");
const save = (page: Page) => bedForm(page).getByRole("button", { name: "Save the bed" }).click();
const saved = (page: Page) => bedForm(page).getByText("✓ Saved").waitFor();
const refusal = async (page: Page) => {
  const alert = bedForm(page).getByRole("alert");
  await alert.waitFor();
  return alert.textContent();
};

test("what another tab saved meanwhile is told, both stand there, and the next save is knowingly made", async () => {
  const [one, other] = [await openBed(), await openBed()];
  await note(one).fill("from one tab");
  await save(one);
  await saved(one);
  await note(other).fill("from the other");
  await save(other);
  expect(await refusal(other)).toContain("is now “from one tab”");
  expect(await note(other).inputValue()).toBe("from the other");
  await save(other);
  await saved(other);
  await Promise.all([one.close(), other.close()]);
});

test("what was typed while the server was off is offered again, and saved; Ctrl+C leaves one file", async () => {
  const page = await openBed();
  await end("SIGINT");
  expect(readdirSync(folder).filter((name) => name !== "copies")).toEqual(["farm.sqlite"]);
  await note(page).fill("typed in the dark");
  await save(page);
  expect(await refusal(page)).toContain("not known whether this was saved");
  const port = new URL(address).port;
  ({ server, address } = await serveBuilt({ ...env, PORT: port }));
  await page.goto(`${address}/beds/1`, { waitUntil: "networkidle" });
  await bedForm(page).getByRole("button", { name: "Fill it in again" }).click();
  expect(await note(page).inputValue()).toBe("typed in the dark");
  await save(page);
  await saved(page);
  await page.close();
});

test("a copy is taken and restored, and restoring what was before takes that back", async () => {
  const page = await open("/farm/copies");
  await page.getByRole("button", { name: "Take a copy now" }).click();
  await page.getByRole("rowheader").first().waitFor();
  const bed = await openBed();
  await note(bed).fill("after the copy");
  await save(bed);
  await saved(bed);
  const restored = async (why: string) => {
    await page.goto(`${address}/farm/copies`, { waitUntil: "networkidle" });
    const before = await page.getByRole("row").count();
    await page.getByRole("row", { name: why }).first().getByRole("button", { name: "Restore" }).click();
    await expect.poll(() => page.getByRole("row").count()).toBe(before + 1);
    const again = await openBed();
    const text = await note(again).inputValue();
    await again.close();
    return text;
  };
  expect(await restored("taken by hand")).toBe("typed in the dark");
  expect(await restored("before a restore")).toBe("after the copy");
  await Promise.all([page.close(), bed.close()]);
});

test("a file that was deleted, or is empty, has its page in words and a way back, and never the demo farm", async () => {
  rmSync(file);
  const page = await open("/");
  expect(await page.locator("h1").textContent()).toContain("no farm’s file at this place");
  await page.getByRole("button", { name: "Put the file back" }).click();
  await page.getByText("no farm’s file at this place").waitFor({ state: "detached" });
  expect(existsSync(file)).toBe(true);
  writeFileSync(file, "");
  await page.goto(`${address}/farm/copies`, { waitUntil: "networkidle" });
  expect(await page.locator("h1").textContent()).toContain("is empty");
  await page.getByRole("button", { name: "Restore" }).first().click();
  await page.getByRole("heading", { level: 1, name: "Farm: copies" }).waitFor();
  await page.close();
});

test("an empty folder that FARM_FILE names, as a stick that is out leaves it, is filled with no farm before one is asked for", async () => {
  const stick = join(folder, "stick");
  mkdirSync(stick);
  const other = await serveBuilt({ ...env, FARM_FILE: stick });
  try {
    const page = await tabs.newPage();
    await page.goto(`${other.address}/beds`, { waitUntil: "networkidle" });
    expect(await page.locator("h1").textContent()).toContain("no farm’s file at this place");
    const download = await page.request.get(`${other.address}/farm/files/all`);
    expect([download.status(), await download.text()]).toEqual([503, expect.stringContaining(stick)]);
    expect(readdirSync(stick)).toEqual([]);
    await page.getByLabel("Your farm’s name").fill("Hill Farm");
    await page.getByRole("button", { name: "Start my own farm" }).click();
    await page.getByRole("banner").getByText("Hill Farm").waitFor();
    expect(readdirSync(stick)).toContain("farm.sqlite");
  } finally {
    other.server.kill("SIGTERM");
  }
});

test("a copy taken by hand is deleted only after its file was named and the question answered", async () => {
  const page = await open("/farm/copies");
  await page.getByRole("button", { name: "Take a copy now" }).click();
  await page.getByText("✓ Saved").first().waitFor();
  const asks = page.locator("details", { hasText: "Delete" }).first();
  await asks.locator("summary").click();
  const name = (await asks.locator("code").textContent()) ?? "";
  expect(readdirSync(join(folder, "copies"))).toContain(name);
  await asks.getByRole("button", { name: "Delete it for good" }).click();
  await page.getByText(name).waitFor({ state: "detached" });
  expect(readdirSync(join(folder, "copies"))).not.toContain(name);
});
