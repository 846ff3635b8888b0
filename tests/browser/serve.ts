import type { TestProject } from "vitest/node";
import { serveDemo } from "./serve-demo";

declare module "vitest" {
  interface ProvidedContext {
    address: string;
  }
}

let endAll = async (): Promise<void> => {};

/** Serves the demo farm and gives the tests its address. */
export async function setup(project: TestProject): Promise<void> {
  const { address, end } = await serveDemo();
  project.provide("address", address);
  endAll = end;
}

/** Ends what was started. */
export const teardown = (): Promise<void> => endAll();
