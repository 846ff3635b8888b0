import { type ChildProcess, spawnSync } from "node:child_process";
import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { serveBuilt } from "./served";

/** The day the browser tests live on: its season ahead is 2027. */
export const TODAY = "2026-11-25";

type ServedDemo = {
  /** Where it is served now. */
  readonly address: string;
  /** Serves the same farm on another day, at another address. */
  readonly passTo: (day: string) => Promise<void>;
  /** Stops it and takes the file away. */
  readonly end: () => Promise<void>;
};

/** Loads the demo farm into a new file and serves the built app on a free port, on a day. */
export async function serveDemo(today = TODAY): Promise<ServedDemo> {
  const folder = mkdtempSync(join(tmpdir(), "farm-"));
  const envOn = (day: string) => ({
    ...process.env,
    NODE_ENV: "production" as const,
    FARM_FILE: join(folder, "farm.sqlite"),
    FARM_TODAY: day,
  });
  const env = envOn(today);
  const loaded = spawnSync(process.execPath, ["--import", "tsx", "demo/load-demo.ts", env.FARM_FILE], {
    env,
    encoding: "utf8",
  });
  if (loaded.status !== 0) throw new Error(`the demo farm could not be loaded: ${loaded.stderr}`);
  let served = await serveBuilt(env);
  return {
    get address() {
      return served.address;
    },
    passTo: async (day) => {
      await ended(served.server);
      served = await serveBuilt(envOn(day));
    },
    end: async () => {
      await ended(served.server);
      rmSync(folder, { recursive: true, force: true });
    },
  };
}

function ended(server: ChildProcess): Promise<void> {
  return new Promise((resolve) => {
    server.once("exit", () => resolve());
    server.kill("SIGTERM");
  });
}
