import { expect, test } from "vitest";
import { fileStates } from "./file-states";

test("files flipped, cut short, put back, full, locked or read-only are restored or refused in words", async () => {
  expect((await fileStates(0.03)).faults).toEqual([]);
});
