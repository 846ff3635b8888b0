import { type ChildProcess, spawn } from "node:child_process";

/** A server under way, and the address that it printed. */
export type Served = { readonly server: ChildProcess; readonly address: string };

/**
 * Serves the built app, door and all, on a port that is free, and waits for its address. Throws when it ends or takes more than five minutes: a busy machine is slow, and no fault.
 *
 * @param env      its whole environment, FARM_FILE among it
 * @param options  as they stand behind `npm start --`
 */
export const serveBuilt = (env: NodeJS.ProcessEnv, options: readonly string[] = []): Promise<Served> =>
  addressOf(
    spawn(process.execPath, ["app/serve.mjs", ...options], {
      env: onFreePort(env),
      stdio: ["ignore", "pipe", "inherit"],
    }),
  );

/** The same for a server to which days pass while it runs ({@link passDay}). */
export const serveForDays = (env: NodeJS.ProcessEnv): Promise<Served> =>
  addressOf(
    spawn(process.execPath, ["--import", "./tests/browser/day-by-message.mjs", "app/serve.mjs"], {
      env: onFreePort(env),
      stdio: ["ignore", "pipe", "inherit", "ipc"],
    }),
  );

/** Makes it another day for a server that runs. */
export const passDay = ({ server }: Served, day: string): Promise<void> =>
  new Promise((resolve) => {
    server.once("message", () => resolve());
    server.send(day);
  });

const onFreePort = (env: NodeJS.ProcessEnv): NodeJS.ProcessEnv => ({ ...env, PORT: env.PORT ?? "0" });

function addressOf(server: ChildProcess): Promise<Served> {
  return new Promise((resolve, reject) => {
    const tooLong = setTimeout(() => reject(new Error("the server did not answer within five minutes")), 300_000);
    let said = "";
    server.stdout?.on("data", (text) => {
      said += text;
      const address = /https?:\/\/127\.0\.0\.\d+:\d+/.exec(said)?.[0];
      if (address) resolve({ server, address });
      if (address) clearTimeout(tooLong);
    });
    server.once("exit", (code) => reject(new Error(`the server ended with ${code}: was the app built?`)));
  });
}
