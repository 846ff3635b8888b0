import { spawnSync } from "node:child_process";
import { expect, test } from "vitest";

test.each(["abc", "-1", "65536", "3100.5", "1e3"])("PORT %s is refused in words, before anything is served", (port) => {
  const { status, stderr } = spawnSync(process.execPath, ["app/serve.mjs"], {
    env: { ...process.env, PORT: port },
    encoding: "utf8",
  });
  expect([status, stderr]).toEqual([1, `PORT is "${port}": write a whole number from 0 to 65535, or leave it out.\n`]);
});
