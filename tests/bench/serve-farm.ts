import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { ended, runScript, TODAY } from "../browser/demo-in-file";
import { serveBuilt } from "../browser/served";

/** The farms that the built app is measured on. */
export type ServedSize = "demo" | "typical" | "large";

/** A server under way: where it answers, and by which number the system knows it. */
export type ServedFarm = { readonly address: string; readonly pid: number };

/** Serves a farm of a size from a scratch file, for as long as `work` takes. */
export async function withServedFarm<T>(size: ServedSize, work: (farm: ServedFarm) => Promise<T>): Promise<T> {
  const folder = mkdtempSync(join(tmpdir(), "farm-"));
  const env = {
    ...process.env,
    NODE_ENV: "production" as const,
    FARM_FILE: join(folder, "farm.sqlite"),
    FARM_TODAY: TODAY,
    FARM_SIZE: size,
  };
  const script = size === "demo" ? "demo/load-demo.ts" : "tests/bench/fill-farm.ts";
  runScript(script, [env.FARM_FILE], env);
  const { server, address } = await serveBuilt(env);
  try {
    return await work({ address, pid: server.pid ?? 0 });
  } finally {
    await ended(server);
    rmSync(folder, { recursive: true, force: true });
  }
}
