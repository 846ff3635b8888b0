import { expect, test } from "vitest";
import { closeFarm, openFarm } from "#db/client";
import { withFolder } from "./farm-in-file";
import { kept } from "./kept-farm";
import { makeOlderFile, openOlder } from "./older-file";

test("[K12] a file of before expected bookings had a weight of their own weighs them as its enquiries, a number of them as before", () =>
  withFolder((file) => {
    makeOlderFile(file, "0039_final_count");
    const older = openOlder(file);
    older.$client.exec("UPDATE farm SET weight_enquiry = 0.45");
    closeFarm(older);
    const database = openFarm(file);
    try {
      const { expectedFrom, expectedWeightShare } = kept(database).farm.winter;
      expect([expectedFrom, expectedWeightShare]).toEqual(["a number", 0.45]);
    } finally {
      closeFarm(database);
    }
  }));
