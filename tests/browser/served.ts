import { type ChildProcess, spawn } from "node:child_process";

/** A server under way, and the address that it printed. */
export type Served = { readonly server: ChildProcess; readonly address: string };

/**
 * Serves the built app, door and all, on a port that is free, and waits for its address. Throws when it ends or takes more than five minutes: a busy machine is slow, and no fault.
 *
 * @param env      its whole environment, FARM_FILE among it
 * @param options  as they stand behind `npm start --`
 */
export function serveBuilt(env: NodeJS.ProcessEnv, options: readonly string[] = []): Promise<Served> {
  const server = spawn(process.execPath, ["app/serve.mjs", ...options], {
    env: { ...env, PORT: env.PORT ?? "0" },
    stdio: ["ignore", "pipe", "inherit"],
  });
  return new Promise((resolve, reject) => {
    const tooLong = setTimeout(() => reject(new Error("the server did not answer within five minutes")), 300_000);
    let said = "";
    server.stdout.on("data", (text) => {
      said += text;
      const address = /https?:\/\/127\.0\.0\.\d+:\d+/.exec(said)?.[0];
      if (address) resolve({ server, address });
      if (address) clearTimeout(tooLong);
    });
    server.once("exit", (code) => reject(new Error(`the server ended with ${code}: was the app built?`)));
  });
}
