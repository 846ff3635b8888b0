import { beforeAll } from "vitest";
import { demoBrowser } from "./demo-browser";
import { type ServedDemo, serveDemo } from "./serve-demo";

/** The demo farm on a day, served for the tests of one file alone, and a browser on it as `demoBrowser` has. */
export function ownDemo(today: string) {
  let demo: ServedDemo;
  beforeAll(async () => {
    demo = await serveDemo(today);
  });
  const address = () => demo.address;
  return {
    ...demoBrowser(address, () => demo.end()),
    address,
    /** Makes it another day on the farm. */
    passTo: (day: string) => demo.passTo(day),
  };
}
