import type { TestProject } from "vitest/node";
import { serveDemo } from "./serve-demo";

declare module "vitest" {
  interface ProvidedContext {
    addresses: readonly string[];
  }
}

let endAll = async (): Promise<void> => {};

/** Serves the demo farm once for each lane of tests, and gives the tests the addresses. */
export async function setup(project: TestProject): Promise<void> {
  const farms = await Promise.all(Array.from({ length: project.config.maxWorkers }, serveDemo));
  project.provide(
    "addresses",
    farms.map(({ address }) => address),
  );
  endAll = async () => {
    await Promise.all(farms.map(({ end }) => end()));
  };
}

/** Ends what was started. */
export const teardown = (): Promise<void> => endAll();
