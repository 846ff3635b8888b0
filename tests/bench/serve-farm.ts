import { type ChildProcess, spawnSync } from "node:child_process";
import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
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
    FARM_TODAY: "2026-11-25",
    FARM_SIZE: size,
  };
  const script = size === "demo" ? "demo/load-demo.ts" : "tests/bench/fill-farm.ts";
  const filled = spawnSync(process.execPath, ["--import", "tsx", script, env.FARM_FILE], { env, encoding: "utf8" });
  if (filled.status !== 0) throw new Error(filled.stderr);
  const { server, address } = await serveBuilt(env);
  try {
    return await work({ address, pid: server.pid ?? 0 });
  } finally {
    await ended(server);
    rmSync(folder, { recursive: true, force: true });
  }
}

const ended = (server: ChildProcess): Promise<void> =>
  new Promise((resolve) => {
    server.once("exit", () => resolve());
    server.kill("SIGTERM");
  });
