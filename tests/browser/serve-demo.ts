import { type ChildProcess, spawnSync } from "node:child_process";
import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { serveBuilt } from "./served";

/** The day the browser tests live on: its season ahead is 2027. */
export const TODAY = "2026-11-25";

/** Loads the demo farm into a new file and serves the built app on a free port, on a day. `end` stops it and takes the file away. */
export async function serveDemo(
  today = TODAY,
): Promise<{ readonly address: string; readonly end: () => Promise<void> }> {
  const folder = mkdtempSync(join(tmpdir(), "farm-"));
  const env = {
    ...process.env,
    NODE_ENV: "production" as const,
    FARM_FILE: join(folder, "farm.sqlite"),
    FARM_TODAY: today,
  };
  const loaded = spawnSync(process.execPath, ["--import", "tsx", "demo/load-demo.ts", env.FARM_FILE], {
    env,
    encoding: "utf8",
  });
  if (loaded.status !== 0) throw new Error(`the demo farm could not be loaded: ${loaded.stderr}`);
  const { server, address } = await serveBuilt(env);
  const end = async () => {
    await ended(server);
    rmSync(folder, { recursive: true, force: true });
  };
  return { address, end };
}

function ended(server: ChildProcess): Promise<void> {
  return new Promise((resolve) => {
    server.once("exit", () => resolve());
    server.kill("SIGTERM");
  });
}
