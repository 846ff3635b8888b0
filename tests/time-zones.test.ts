import { execFile } from "node:child_process";
import { promisify } from "node:util";
import { expect, test } from "vitest";

const run = promisify(execFile);

/** Runs the calendar's tests in a process of its own, since a time zone is settled when a process starts. */
async function calendarTestsIn(zone: string): Promise<{ passedCount: number; failedCount: number }> {
  const vitest = ["node_modules/vitest/vitest.mjs", "run", "--project", "node", "--reporter", "json"];
  const { stdout } = await run(process.execPath, [...vitest, "tests/domain/day.test.ts"], {
    env: { ...process.env, TZ: zone },
    maxBuffer: 10_000_000,
  }).catch((failure: { stdout: string }) => failure);
  const report = JSON.parse(stdout.slice(stdout.indexOf("{")));
  return { passedCount: report.numPassedTests, failedCount: report.numFailedTests };
}

test("the calendar's tests all hold in UTC, New York and Auckland", async () => {
  const zones = ["UTC", "America/New_York", "Pacific/Auckland"];
  for (const zone of zones) {
    const { passedCount, failedCount } = await calendarTestsIn(zone);
    expect(failedCount, zone).toBe(0);
    expect(passedCount, zone).toBeGreaterThan(20);
  }
});
