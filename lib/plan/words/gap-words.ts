import { inShort, toDay } from "#lib/domain/day";
import { anyOf } from "#lib/domain/listed";
import type { Gap, GapReason } from "#lib/plan/road/gaps";
import type { Need } from "#lib/plan/road/needs";
import { countOf } from "./numbers";

/** "focal in blush or cream", "focal, dahlia only" */
export function needInWords(
  need: Pick<Need, "role" | "colours" | "cropOnly" | "cropId">,
  cropName: (id: number) => string,
): string {
  const crop = need.cropId === null ? "" : `, ${cropName(need.cropId)}${need.cropOnly ? " only" : " if it can be"}`;
  return `${need.role}${crop}${need.colours.length ? ` in ${anyOf(need.colours)}` : ", any colour"}`;
}

/** A reason of a gap as a sentence with its stems. */
export function reasonInWords(reason: GapReason, stems: number, need: Pick<Need, "role" | "colours">): string {
  const role = need.role;
  switch (reason) {
    case "promised":
      return `${countOf(stems, "stem")}: in bloom, but already promised to a better claim`;
    case "colours":
      return `${countOf(stems, "stem")}: ${role} is in bloom, but not in ${anyOf(need.colours) || "an accepted crop"}`;
    case "hold window":
      return `${countOf(stems, "stem")}: blooms near the day, but outside the days it can be held`;
    case "not in bloom":
      return `${countOf(stems, "stem")}: nothing more that this booking accepts for the role is in bloom`;
  }
}

/** What could cover a gap, each a sentence; the last is always to buy in. */
export function coverInWords({ couldCover, shortStems, need }: Gap): string[] {
  const { otherColourStems, heldLongerStems, laterStems } = couldCover;
  const day = inShort(toDay(need.eventDay));
  return [
    otherColourStems > 0 &&
      `Another colour: ${countOf(otherColourStems, `${need.role} stem`)} within reach that nobody has claimed.`,
    heldLongerStems > 0 &&
      `Held longer than planned: ${countOf(heldLongerStems, "free stem")} cut in the two weeks before. Expect a shorter vase life.`,
    laterStems > 0 &&
      `A later day or a later cut: ${countOf(laterStems, "free stem")} in the two weeks after the last cut for ${day}.`,
    `Buy in ${countOf(shortStems, "stem")}.`,
  ].filter((line) => line !== false);
}
