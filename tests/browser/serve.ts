import { type ChildProcess, spawn, spawnSync } from "node:child_process";
import { mkdtempSync, rmSync } from "node:fs";
import { createServer } from "node:net";
import { tmpdir } from "node:os";
import { join } from "node:path";
import type { TestProject } from "vitest/node";

declare module "vitest" {
  interface ProvidedContext {
    address: string;
  }
}

/** The day the browser tests live on: its season ahead is 2027. */
export const TODAY = "2026-11-25";

/** Loads the demo farm into a new file, serves the built app on a free port, gives the tests its address, and ends what it started. */
export default async function serve(project: TestProject): Promise<() => Promise<void>> {
  const folder = mkdtempSync(join(tmpdir(), "farm-"));
  const env = {
    ...process.env,
    NODE_ENV: "production" as const,
    FARM_FILE: join(folder, "farm.sqlite"),
    FARM_TODAY: TODAY,
  };
  const loaded = spawnSync(process.execPath, ["--import", "tsx", "demo/load-demo.ts"], { env, encoding: "utf8" });
  if (loaded.status !== 0) throw new Error(`the demo farm could not be loaded: ${loaded.stderr}`);
  const port = await freePort();
  const server = spawn(
    process.execPath,
    ["node_modules/next/dist/bin/next", "start", "-H", "127.0.0.1", "-p", String(port)],
    {
      env,
      stdio: "ignore",
    },
  );
  const address = `http://127.0.0.1:${port}`;
  await untilServed(address, server);
  project.provide("address", address);
  return async () => {
    await ended(server);
    rmSync(folder, { recursive: true, force: true });
  };
}

function freePort(): Promise<number> {
  return new Promise((resolve, reject) => {
    const probe = createServer().once("error", reject);
    probe.listen(0, "127.0.0.1", () => {
      const address = probe.address();
      probe.close(() =>
        typeof address === "object" && address ? resolve(address.port) : reject(new Error("no port")),
      );
    });
  });
}

async function untilServed(address: string, server: ChildProcess): Promise<void> {
  for (let attempt = 0; attempt < 240; attempt++) {
    if (server.exitCode !== null) throw new Error(`the server ended with ${server.exitCode}: was the app built?`);
    const answer = await fetch(address).catch(() => null);
    if (answer?.ok) return;
    await new Promise((resolve) => setTimeout(resolve, 250));
  }
  throw new Error("the server did not answer within a minute");
}

function ended(server: ChildProcess): Promise<void> {
  return new Promise((resolve) => {
    server.once("exit", () => resolve());
    server.kill("SIGTERM");
  });
}
