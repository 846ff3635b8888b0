import type { SweptBy } from "#lib/plan/winter/sweep";
import { countOf, inPercent } from "./numbers";

/** A value that a number of kept beds is swept through: "70 %", "a week later" as "7 days later", "as reckoned", "85 % of them". */
export function sweptInWords(by: SweptBy, at: number): string {
  if (by === "survival") return inPercent(at);
  if (by === "stems") return at === 1 ? "as reckoned" : `${inPercent(at)} of them`;
  if (at === 0) return "as reckoned";
  return `${countOf(Math.abs(at), "day")} ${at < 0 ? "earlier" : "later"}`;
}
