import { spawn } from "node:child_process";
import { mkdirSync } from "node:fs";
import { buildSync } from "esbuild";

const SCRIPT = "node_modules/.cache/trust/victim.mjs";

/** The victim as one plain script, packages and all: a thousand processes start it, and each must start quickly. */
export function makeVictim(): void {
  mkdirSync("node_modules/.cache/trust", { recursive: true });
  buildSync({
    entryPoints: ["tests/trust/victim.ts"],
    outfile: SCRIPT,
    bundle: true,
    platform: "node",
    format: "esm",
    external: ["better-sqlite3"],
    minify: true,
    logLevel: "error",
  });
}

/** Starts a victim, kills it some milliseconds after it has begun its work, and gives what it had said by then, "ready" left out. */
export function killed(kind: string, file: string, parameters: readonly string[], afterMs: number): Promise<string[]> {
  return new Promise((resolve, reject) => {
    const child = spawn(process.execPath, [SCRIPT, kind, file, ...parameters], { stdio: ["ignore", "pipe", "pipe"] });
    let said = "";
    let complaint = "";
    const timeout = setTimeout(() => child.kill("SIGKILL"), 60_000);
    child.stdout.on("data", (data: Buffer) => {
      if (said === "") setTimeout(() => child.kill("SIGKILL"), afterMs);
      said += data;
    });
    child.stderr.on("data", (data: Buffer) => {
      complaint += data;
    });
    child.on("close", (code, signal) => {
      clearTimeout(timeout);
      if (signal !== "SIGKILL" || said === "")
        reject(new Error(`the victim ended by itself with ${code}: ${complaint}`));
      // A line that was cut short was not said.
      else resolve(said.split("\n").slice(1, -1));
    });
  });
}
