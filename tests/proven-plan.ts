import { expect } from "vitest";
import type { Snapshot } from "#lib/domain/snapshot";
import { checkMatch } from "#lib/plan/road/match";
import { type Plan, plan } from "#lib/plan/road/plan";

/** A season's plan with its match proven: what every test that plans begins with. */
export function provenPlan(snapshot: Snapshot, seasonYear: number, frostDay?: number): Plan {
  const made = plan(snapshot, seasonYear, frostDay);
  expect(checkMatch(made.match)).toEqual([]);
  return made;
}
