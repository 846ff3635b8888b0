import { spawnSync } from "node:child_process";
import type { Figures } from "./part";

const TURN_COUNT = 400;

/** A mount namespace of its own, where even one who is no administrator may mount: what is mounted in it nobody else sees. */
const OWN_NAMESPACE = ["--user", "--map-root-user", "--mount"];

/** Whether this machine lets us have disks of our own. Where it does not, the full disk of file-states.ts, by SQLite's limit of pages, stands for it. */
export const canMount = (): boolean =>
  spawnSync("unshare", [...OWN_NAMESPACE, "mount", "-t", "tmpfs", "trust", "/mnt"]).status === 0;

/** Real disks that are filled to the byte, and a stick that is pulled out while the server runs. */
export async function disks(scale: number): Promise<Figures> {
  const title = "Real disks, full and pulled out";
  if (!canMount()) return { title, lines: ["not tried: this machine mounts nothing for us"], faults: [] };
  const turns = String(Math.ceil(TURN_COUNT * scale));
  const script = [process.execPath, "--import", "tsx", "tests/trust/on-disks.ts", turns];
  const { status, stdout, stderr } = spawnSync("unshare", [...OWN_NAMESPACE, ...script], { encoding: "utf8" });
  if (status !== 0) return { title, lines: [], faults: [stderr] };
  const found: Pick<Figures, "lines" | "faults"> = JSON.parse(stdout);
  return { title, ...found };
}
