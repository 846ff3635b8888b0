import { expect, test } from "vitest";
import { closeFarm, openFarm } from "#db/client";
import { OWN } from "#lib/domain/sourced";
import { withFolder } from "./farm-in-file";
import { kept } from "./kept-farm";
import { makeOlderFile, openOlder } from "./older-file";

test("a file of before our reading had a mark calls what was read so, keeps every other mark, and gives no crop a number that was given before", () =>
  withFolder((file) => {
    makeOlderFile(file, "0011_sown_in_place");
    const older = openOlder(file);
    older.$client.exec(`
      UPDATE bloom_curve SET timing_mark = 'published', timing_source = 'USU-RANU', yield_mark = 'own', yield_source = NULL;
      UPDATE crop SET hold_days_mark = 'trade', hold_days_source = 'GPN-SUBZERO' WHERE id = 1;
      UPDATE sqlite_sequence SET seq = 901 WHERE name = 'crop'`);
    closeFarm(older);
    const database = openFarm(file);
    try {
      const { crops, curves } = kept(database);
      expect(crops[0].holdDays).toMatchObject({ mark: "our reading", source: "GPN-SUBZERO" });
      for (const { timingOrigin, yieldOrigin } of curves) {
        expect(timingOrigin).toEqual({ mark: "our reading", source: "USU-RANU" });
        expect(yieldOrigin).toEqual(OWN);
      }
      const last = database.$client.prepare("SELECT seq FROM sqlite_sequence WHERE name = 'crop'").pluck().get();
      expect(last).toBe(901);
      expect(() => database.$client.exec("UPDATE bloom_curve SET timing_mark = 'heard'")).toThrow(
        /bloom_curve_timing_mark/,
      );
    } finally {
      closeFarm(database);
    }
  }));
