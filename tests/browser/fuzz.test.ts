import { expect, test } from "vitest";
import { fuzzServer } from "../trust/fuzz";

test("no odd request makes the server fail, or sends anybody to another site; the farm is whole afterwards", async () => {
  expect((await fuzzServer(300, 1)).faults).toEqual([]);
});
