import type { ChildProcess } from "node:child_process";
import { createServer } from "node:net";

/** A port of this machine that nobody listens at. */
export function freePort(): Promise<number> {
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

/** Waits until the server answers; throws when it ends or takes more than a minute. */
export async function untilServed(address: string, server: ChildProcess): Promise<void> {
  for (let attempt = 0; attempt < 240; attempt++) {
    if (server.exitCode !== null) throw new Error(`the server ended with ${server.exitCode}: was the app built?`);
    const answer = await fetch(address).catch(() => null);
    if (answer?.ok) return;
    await new Promise((resolve) => setTimeout(resolve, 250));
  }
  throw new Error("the server did not answer within a minute");
}
