import { DESK, openBrowser, openPage } from "./open-page";
import { serveDemo } from "./serve-demo";

/** `npm run pictures`: takes the README's pictures anew, from the built app and the demo farm. */

type Picture = {
  readonly name: string;
  readonly path: string;
  readonly heightPixels: number;
  readonly onPaper?: boolean;
  /** What must have come before the picture is taken. */
  readonly until?: RegExp;
};

const PICTURES: readonly Picture[] = [
  { name: "season", path: "/", heightPixels: 1060, until: /stays? in the ground/ },
  { name: "booking", path: "/bookings/17", heightPixels: 900 },
  { name: "keep-or-dig", path: "/keep-or-dig", heightPixels: 1000 },
  { name: "pick-list", path: "/picking/print?booking=17", heightPixels: 1000, onPaper: true },
];

const { address, end } = await serveDemo();
const browser = await openBrowser();
try {
  for (const { name, path, heightPixels, onPaper, until } of PICTURES) {
    const page = await openPage(browser, address, path, { ...DESK, height: heightPixels });
    if (until) await page.getByText(until).first().waitFor({ timeout: 60_000 });
    if (onPaper) await page.emulateMedia({ media: "print" });
    await page.screenshot({ path: `demo/pictures/${name}.png` });
    console.log(`demo/pictures/${name}.png`);
    await page.close();
  }
} finally {
  await browser.close();
  await end();
}
