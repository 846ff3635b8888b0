import { expect } from "vitest";
import { checkMatch } from "#lib/plan/road/match";
import { type Plan, plan } from "#lib/plan/road/plan";

/** A season's plan with its matches proven: what every test that plans begins with. */
export function provenPlan(...of: Parameters<typeof plan>): Plan {
  const made = plan(...of);
  expect(checkMatch(made.match)).toEqual([]);
  if (made.work.match !== made.match) expect(checkMatch(made.work.match)).toEqual([]);
  return made;
}
