import { type ChildProcess, spawnSync } from "node:child_process";
import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import type { TestProject } from "vitest/node";
import { serveBuilt } from "./served";

declare module "vitest" {
  interface ProvidedContext {
    address: string;
  }
}

/** The day the browser tests live on: its season ahead is 2027. */
export const TODAY = "2026-11-25";

let endAll = async (): Promise<void> => {};

/** Loads the demo farm into a new file, serves the built app on a free port, and gives the tests its address. */
export async function setup(project: TestProject): Promise<void> {
  const folder = mkdtempSync(join(tmpdir(), "farm-"));
  const env = {
    ...process.env,
    NODE_ENV: "production" as const,
    FARM_FILE: join(folder, "farm.sqlite"),
    FARM_TODAY: TODAY,
  };
  const loaded = spawnSync(process.execPath, ["--import", "tsx", "demo/load-demo.ts"], { env, encoding: "utf8" });
  if (loaded.status !== 0) throw new Error(`the demo farm could not be loaded: ${loaded.stderr}`);
  const { server, address } = await serveBuilt(env);
  project.provide("address", address);
  endAll = async () => {
    await ended(server);
    rmSync(folder, { recursive: true, force: true });
  };
}

/** Ends what was started. */
export const teardown = (): Promise<void> => endAll();

function ended(server: ChildProcess): Promise<void> {
  return new Promise((resolve) => {
    server.once("exit", () => resolve());
    server.kill("SIGTERM");
  });
}
