import { type ChildProcess, spawnSync } from "node:child_process";
import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";

/** The day the browser tests live on: its season ahead is 2027. */
export const TODAY = "2026-11-25";

/** A farm in a file, in a folder of its own, and the environment in which a server serves it. */
export type FarmInFile = {
  readonly folder: string;
  readonly file: string;
  readonly env: NodeJS.ProcessEnv;
  /** Takes the folder away. */
  readonly remove: () => void;
};

/** The demo farm in a new file, as it stands on a day. */
export function demoInFile(today = TODAY): FarmInFile {
  const folder = mkdtempSync(join(tmpdir(), "farm-"));
  const file = join(folder, "farm.sqlite");
  const env = { ...process.env, NODE_ENV: "production" as const, FARM_FILE: file, FARM_TODAY: today };
  runScript("demo/load-demo.ts", [file], env);
  return { folder, file, env, remove: () => rmSync(folder, { recursive: true, force: true }) };
}

/** Runs a script of ours to its end, `input` typed into it. Throws with what it said where it fails. */
export function runScript(script: string, options: readonly string[], env: NodeJS.ProcessEnv, input = ""): void {
  const ran = spawnSync(process.execPath, ["--import", "tsx", script, ...options], { env, input, encoding: "utf8" });
  if (ran.status !== 0) throw new Error(`${script} ended with ${ran.status}: ${ran.stderr}`);
}

/** Ends a server, and waits until it is gone. */
export const ended = (server: ChildProcess, signal: NodeJS.Signals = "SIGTERM"): Promise<void> =>
  new Promise((resolve) => {
    server.once("exit", () => resolve());
    server.kill(signal);
  });
