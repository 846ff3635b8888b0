import type { Planting } from "#lib/domain/records/planting";
import { countOf, inPercent } from "./numbers";

/** What the grower says of one season of a planting: "6 days late, 90 % of its stems"; null where she says nothing. */
export function ownSeasonInWords({ daysLate, yieldFactor }: Pick<Planting, "daysLate" | "yieldFactor">): string | null {
  const parts = [
    daysLate === null ? null : lateInWords(daysLate),
    yieldFactor === null ? null : `${inPercent(yieldFactor)} of its stems`,
  ].filter((part) => part !== null);
  return parts.length === 0 ? null : parts.join(", ");
}

const lateInWords = (days: number): string =>
  days === 0 ? "on its day" : `${countOf(Math.abs(days), "day")} ${days > 0 ? "late" : "early"}`;
