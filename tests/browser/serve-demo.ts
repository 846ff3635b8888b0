import { demoInFile, ended } from "./demo-in-file";
import { passDay, serveForDays } from "./served";

export type ServedDemo = {
  readonly address: string;
  /** Makes it another day. */
  readonly passTo: (day: string) => Promise<void>;
  /** Stops it and takes the file away. */
  readonly end: () => Promise<void>;
};

/** Loads the demo farm into a new file and serves the built app on a free port, on a day. */
export async function serveDemo(today?: string): Promise<ServedDemo> {
  const { env, remove } = demoInFile(today);
  const served = await serveForDays(env);
  return {
    address: served.address,
    passTo: (day) => passDay(served, day),
    end: async () => {
      await ended(served.server);
      remove();
    },
  };
}
