import { expect, test } from "vitest";
import { kills } from "./kills";

test("killed in writes, copies and restores, the farm has all that was acknowledged, and everything is whole", async () => {
  const { faults, lines } = await kills(0.02);
  expect(faults).toEqual([]);
  expect(lines).toHaveLength(5);
});
