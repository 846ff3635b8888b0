import { expect, test } from "vitest";
import { twoServers } from "./two-servers";

test("[L3] whichever of two servers writes, the other notices it, shows the farm, and plans as afresh", async () => {
  const { faults, lines } = await twoServers(0.03);
  expect(faults).toEqual([]);
  expect(lines).toHaveLength(2);
});
