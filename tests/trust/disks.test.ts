import { expect, test } from "vitest";
import { canMount, disks } from "./disks";

test.runIf(canMount())(
  "on a real disk that is full, or pulled out, a save is refused in words and nothing is half written",
  async () => {
    const { faults, lines } = await disks(0.1);
    expect(faults).toEqual([]);
    expect(lines).toHaveLength(2);
  },
);
