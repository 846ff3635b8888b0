import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, vi } from "vitest";
import { closeFarm, type FarmDatabase, openFarm } from "#db/client";
import { farmDatabase } from "../../app/load";
import { fill } from "../db/kept-farm";

/**
 * A farm in a file of its own for all tests of a file, where the server's actions find it: the small one, or what `begin` makes of an empty one.
 * @param today  the farm's day; without one it is the machine's
 */
export function farmForActions(today?: string, begin: (database: FarmDatabase) => void = fill): void {
  const folder = mkdtempSync(join(tmpdir(), "farm-"));
  beforeAll(() => {
    const file = join(folder, "farm.sqlite");
    const database = openFarm(file);
    begin(database);
    closeFarm(database);
    vi.stubEnv("FARM_FILE", file);
    if (today !== undefined) vi.stubEnv("FARM_TODAY", today);
  });
  afterAll(() => {
    farmDatabase().$client.close();
    vi.unstubAllEnvs();
    rmSync(folder, { recursive: true });
  });
}

/** Makes it another day for the farm. */
export const onDay = (today: string): void => void vi.stubEnv("FARM_TODAY", today);
