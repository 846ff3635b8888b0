import type { Browser, Page } from "playwright-core";
import type { HiredRole } from "#lib/domain/people";
import { HOMES } from "../../app/people/homes";
import { demoInFile, ended, runScript } from "./demo-in-file";
import { PATIENCE_MS, PHONE } from "./open-page";
import { serveBuilt } from "./served";

const PASSWORD = "three hens and a heron";

/** The demo farm, open to its people on an address of its own that stands for the farm's network. */
export type FarmWithPeople = {
  readonly address: string;
  /** A phone on which the owner is signed in. */
  readonly ownersPhone: (browser: Browser) => Promise<Page>;
  /** A phone that has joined as a helper by the code on the owner's screen. */
  readonly helpersPhone: (browser: Browser, owner: Page, name: string) => Promise<Page>;
  /** The same as a designer. */
  readonly designersPhone: (browser: Browser, owner: Page, name: string) => Promise<Page>;
  readonly end: () => Promise<void>;
};

export async function farmWithPeople(today: string): Promise<FarmWithPeople> {
  const { env, remove } = demoInFile(today);
  runScript("db/people/run-password.ts", [], env, `${PASSWORD}\n`);
  const { server, address } = await serveBuilt(env, ["--people", "--host", "127.0.0.2"]);
  const phone = async (browser: Browser) => {
    const context = await browser.newContext({ viewport: PHONE });
    context.setDefaultTimeout(PATIENCE_MS);
    return context.newPage();
  };
  const joined = async (browser: Browser, owner: Page, name: string, role: HiredRole) => {
    await owner.goto(`${address}/farm/people`, { waitUntil: "load" });
    await owner.getByLabel("Name").fill(name);
    await owner.getByLabel("Does what").selectOption(role);
    await owner.getByRole("button", { name: "Take on" }).click();
    await owner.getByRole("button", { name: `Code for a phone: ${name}` }).click();
    const page = await phone(browser);
    await page.goto((await owner.locator(".join-code code").textContent()) ?? "", { waitUntil: "load" });
    await page.getByRole("button", { name: "Join on this phone" }).click();
    await page.waitForURL(address + HOMES[role]);
    return page;
  };
  return {
    address,
    ownersPhone: async (browser) => {
      const page = await phone(browser);
      await page.goto(`${address}/sign-in`, { waitUntil: "load" });
      await page.getByLabel("The owner’s password").fill(PASSWORD);
      await page.getByRole("button", { name: "Sign in" }).click();
      await page.waitForURL(`${address}/`);
      return page;
    },
    helpersPhone: (browser, owner, name) => joined(browser, owner, name, "helper"),
    designersPhone: (browser, owner, name) => joined(browser, owner, name, "designer"),
    end: async () => {
      await ended(server);
      remove();
    },
  };
}
