import { inShort, toDay } from "#lib/domain/day";
import type { Gap, GapReason } from "#lib/plan/road/gaps";
import type { Need } from "#lib/plan/road/needs";
import { asksInWords, withAsks } from "./ask-words";
import { coloursInWords } from "./colour-words";
import { countOf } from "./numbers";

/** "focal in blush or cream", "focal, dahlia only" */
export function needInWords(
  need: Pick<Need, "role" | "asks" | "colours" | "cropOnly" | "cropId" | "booking">,
  cropName: (id: number) => string,
): string {
  const crop = need.cropId === null ? "" : `, ${cropName(need.cropId)}${need.cropOnly ? " only" : " if it can be"}`;
  return `${need.role}${crop}${need.colours.length ? " in" : ","} ${coloursInWords(need)}${withAsks(need.asks)}`;
}

/** A reason of a gap as a sentence with its stems. */
export function reasonInWords(
  reason: GapReason,
  stems: number,
  need: Pick<Need, "role" | "asks" | "colours" | "booking">,
): string {
  const role = need.role;
  switch (reason) {
    case "promised":
      return `${countOf(stems, "stem")}: in bloom, and going to other bookings`;
    case "colours":
      return `${countOf(stems, "stem")}: ${role} is in bloom, but not in ${coloursInWords(need)}`;
    case "stem":
      return `${countOf(stems, "stem")}: ${role} is in bloom in these colours, but not with ${asksInWords(need.asks)}`;
    case "hold window":
      return `${countOf(stems, "stem")}: blooms near the day, but outside the days it can be held`;
    case "not in bloom":
      return `${countOf(stems, "stem")}: nothing more that this booking accepts for the role is in bloom`;
  }
}

/** A way to cover a gap, all of it or a part: `stems` are those it could bring. */
export type CoverWay = { readonly stems: number; readonly name: string; readonly words: string };

/** The ways to cover a gap from what grows, in the order to try them; none with 0 stems. To buy in is always left. */
export function coverWays({ couldCover, need }: Gap): CoverWay[] {
  const { otherColourStems, otherKindStems, heldLongerStems, laterStems } = couldCover;
  const day = inShort(toDay(need.eventDay));
  return [
    {
      stems: otherColourStems,
      name: "Another colour",
      words: `${countOf(otherColourStems, `${need.role} stem`)} within reach that nobody has claimed.`,
    },
    {
      stems: otherKindStems,
      name: "Another stem than asked for",
      words: `${countOf(otherKindStems, `${need.role} stem`)} within reach that nobody has claimed, without ${asksInWords(need.asks)}.`,
    },
    {
      stems: heldLongerStems,
      name: "Held longer than planned",
      words: `${countOf(heldLongerStems, "free stem")} cut in the two weeks before. Expect a shorter vase life.`,
    },
    {
      stems: laterStems,
      name: "A later day or a later cut",
      words: `${countOf(laterStems, "free stem")} in the two weeks after the last cut for ${day}.`,
    },
  ].filter(({ stems }) => stems > 0);
}

/** What could cover a gap, each a sentence; the last is always to buy in. */
export const coverInWords = (gap: Gap): string[] => [
  ...coverWays(gap).map(({ name, words }) => `${name}: ${words}`),
  `Buy in ${countOf(gap.shortStems, "stem")}.`,
];
