import { spawn } from "node:child_process";
import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import Database from "better-sqlite3";
import type { Figures } from "./part";

const MODES = [
  { journal: "WAL", synchronous: "NORMAL" },
  { journal: "WAL", synchronous: "FULL" },
  { journal: "TRUNCATE", synchronous: "FULL" },
  { journal: "DELETE", synchronous: "FULL" },
] as const;

const WRITE_COUNT = 300;

type Mode = (typeof MODES)[number];
type Measured = { readonly medianMs: number; readonly worstMs: number; readonly refusedCount: number };

/** What each journal mode costs a write, with one server and with two that write without pause: the figures behind the choice. */
export async function journalModes(scale: number): Promise<Figures> {
  const count = Math.ceil(WRITE_COUNT * scale);
  const lines: string[] = [];
  for (const mode of MODES)
    for (const serverCount of [1, 2]) {
      const measured = await measure(mode, serverCount, count);
      const words = measured.map(
        ({ medianMs, worstMs, refusedCount }) =>
          `median ${medianMs.toFixed(1)} ms, worst ${worstMs.toFixed(0)} ms, ${refusedCount} refused`,
      );
      lines.push(`${mode.journal}, ${mode.synchronous}, ${serverCount} writing: ${words.join("; ")}`);
    }
  return { title: "Journal modes", lines, faults: [] };
}

async function measure({ journal, synchronous }: Mode, serverCount: number, count: number): Promise<Measured[]> {
  const folder = mkdtempSync(join(tmpdir(), "modes-"));
  try {
    const file = join(folder, "rows.sqlite");
    const sqlite = new Database(file);
    sqlite.pragma(`journal_mode = ${journal}`);
    sqlite.exec("CREATE TABLE rows (id INTEGER PRIMARY KEY, text)");
    sqlite.close();
    return await Promise.all(
      Array.from({ length: serverCount }, () => writer([file, journal, synchronous, String(count)])),
    );
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

const WRITER = `
  const Database = require("better-sqlite3");
  const [file, journal, synchronous, count] = process.argv.slice(1);
  const sqlite = new Database(file);
  sqlite.pragma("busy_timeout = 5000");
  sqlite.pragma("journal_mode = " + journal);
  sqlite.pragma("synchronous = " + synchronous);
  const add = sqlite.prepare("INSERT INTO rows (text) VALUES (?)");
  const times = [];
  let refusedCount = 0;
  for (let turn = 0; turn < Number(count); turn++) {
    const started = performance.now();
    try {
      sqlite.transaction(() => { for (let row = 0; row < 4; row++) add.run("x".repeat(300)); }).immediate();
    } catch {
      refusedCount++;
    }
    times.push(performance.now() - started);
  }
  times.sort((a, b) => a - b);
  console.log(JSON.stringify({ medianMs: times[times.length >> 1], worstMs: times.at(-1), refusedCount }));`;

function writer(parameters: readonly string[]): Promise<Measured> {
  return new Promise((resolve, reject) => {
    const child = spawn(process.execPath, ["-e", WRITER, ...parameters], { stdio: ["ignore", "pipe", "inherit"] });
    let said = "";
    child.stdout.on("data", (data) => {
      said += data;
    });
    child.on("close", (code) =>
      code === 0 ? resolve(JSON.parse(said)) : reject(new Error(`a writer ended with ${code}`)),
    );
  });
}
