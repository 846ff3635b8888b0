import { spawnSync } from "node:child_process";
import { cpus, loadavg } from "node:os";
import { choiceRows } from "./choice";
import { clockRows } from "./clock-rows";
import { fieldRows } from "./field-rows";
import { loadRows } from "./load-rows";
import { networkLine } from "./match-file";
import { planRows } from "./plan-rows";
import { recordRows } from "./record-rows";
import { screenRows } from "./screen-rows";
import { simulationRows } from "./simulation";
import { threadRows } from "./thread-rows";
import { type BenchRow, rowOf, table } from "./timing";
import { weatherRows } from "./weather-rows";

/**
 * `npm run bench`: what the tool must reach, measured. Trust the ratios of one run more than its times. `npm run bench -- plan` runs the rows of
 * one kind alone: plan, records, weather, choice, simulation, load (which needs the built app), screens or field (which need Chromium too).
 */
const wanted = process.argv.slice(2);
if (wanted[0] === "network") {
  console.log(networkLine(wanted.slice(1)));
  process.exit();
}
const isWanted = (kind: string) => wanted.length === 0 || wanted.includes(kind);
const rows: BenchRow[] = [];
const lines: string[] = [];

const load = () => `load ${loadavg()[0].toFixed(1)}`;

console.log(
  `Node ${process.versions.node}, ${cpus().length} cores, ${cpus()[0]?.model ?? "unknown processor"}, ${load()}\n`,
);
if (isWanted("plan")) {
  const plans = await planRows();
  rows.push(coldPlan(), ...plans.rows);
  lines.push(...plans.lines);
}
if (isWanted("records")) rows.push(...recordRows());
if (isWanted("weather")) rows.push(...clockRows(), ...weatherRows());
if (isWanted("choice"))
  for (const { name, median, note } of await choiceRows()) rows.push(rowOf(name, [median], targetOf(name), note));
if (isWanted("simulation"))
  for (const { name, medianMs, note } of simulationRows()) rows.push(rowOf(name, [medianMs], targetOf(name), note));
if (isWanted("simulation")) rows.push(...(await threadRows()));
if (isWanted("load")) rows.push(...(await loadRows()));
if (isWanted("screens")) {
  const screens = await screenRows();
  rows.push(...screens.rows);
  lines.push(...screens.lines);
}
if (isWanted("field")) {
  const field = await fieldRows();
  rows.push(...field.rows);
  lines.push(...field.lines);
}
console.log(`${table(rows)}\n\nafter it: ${load()}\n${lines.map((line) => `- ${line}`).join("\n")}`);

/** The first plan of a fresh process, five times. */
function coldPlan(): BenchRow {
  const times = Array.from({ length: 5 }, () =>
    Number(spawnSync(process.execPath, ["--import", "tsx", "tests/bench/cold-plan.ts"], { encoding: "utf8" }).stdout),
  );
  return rowOf("first plan of a fresh process, typical", times, "40 ms");
}

function targetOf(name: string): string {
  if (name.startsWith("choice of beds, small")) return "0.1 s";
  if (name.startsWith("choice of beds, typical")) return "1 s";
  if (name.startsWith("choice of beds, large")) return "5 s on every seed";
  return "";
}
