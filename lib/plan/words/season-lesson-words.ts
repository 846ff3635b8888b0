import type { CropLesson } from "#lib/plan/learning/season/season-lesson";
import { countOf, inTenths, inWholes } from "./numbers";

/** What a season has taught of a crop: "6 days late, 0.9 times as many stems per plant as expected". */
export function cropLessonInWords({ daysLate, yieldFactor }: Pick<CropLesson, "daysLate" | "yieldFactor">): string {
  const days = Math.round(daysLate);
  const timing = days === 0 ? "as due" : `${countOf(Math.abs(days), "day")} ${days > 0 ? "late" : "early"}`;
  const tenths = inTenths(yieldFactor);
  return `${timing}, ${tenths === "1" ? "stems per plant as expected" : `${tenths} times as many stems per plant as expected`}`;
}

/** Where it was seen: "seen in 5 of 8 beds". */
export const seenInWords = ({ seenBedCount, bedCount }: Pick<CropLesson, "seenBedCount" | "bedCount">): string =>
  `seen in ${inWholes(seenBedCount)} of ${countOf(bedCount, "bed")}`;
