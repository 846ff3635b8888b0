import { demoInFile, ended } from "./demo-in-file";
import { serveBuilt } from "./served";

export type ServedDemo = {
  /** Where it is served now. */
  readonly address: string;
  /** Serves the same farm on another day, at another address. */
  readonly passTo: (day: string) => Promise<void>;
  /** Stops it and takes the file away. */
  readonly end: () => Promise<void>;
};

/** Loads the demo farm into a new file and serves the built app on a free port, on a day. */
export async function serveDemo(today?: string): Promise<ServedDemo> {
  const { env, remove } = demoInFile(today);
  let served = await serveBuilt(env);
  return {
    get address() {
      return served.address;
    },
    passTo: async (day) => {
      await ended(served.server);
      served = await serveBuilt({ ...env, FARM_TODAY: day });
    },
    end: async () => {
      await ended(served.server);
      remove();
    },
  };
}
