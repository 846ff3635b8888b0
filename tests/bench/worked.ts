import { readdirSync, readFileSync } from "node:fs";

/** Processor time of all threads of a process, in milliseconds; a tick is 10. Source: proc(5), stat fields 14 and 15. */
export function workedMs(pid: number): number {
  return readdirSync(`/proc/${pid}/task`).reduce((sum, task) => {
    const fields = readFileSync(`/proc/${pid}/task/${task}/stat`, "utf8").split(") ")[1].split(" ");
    return sum + 10 * (Number(fields[11]) + Number(fields[12]));
  }, 0);
}

/** Waits until the server has nothing left to do: a second in which it works a tenth of the time at most. */
export async function quiet(pid: number): Promise<void> {
  for (let before = -Infinity; ; ) {
    const worked = workedMs(pid);
    if (worked - before < 100) return;
    before = worked;
    await new Promise((resolve) => setTimeout(resolve, 1000));
  }
}
