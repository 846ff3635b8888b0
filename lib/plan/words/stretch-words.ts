import type { Stretched } from "#lib/plan/road/stretched";
import { countOf, inMoney } from "./numbers";

/** What a booking gets that is older than it keeps, and what that is counted at [M3]; nothing is for stems that were cut for it already. */
export const stretchInWords = ({ stems, cents }: Stretched): string =>
  `${countOf(stems, "stem")} ${stems === 1 ? "is" : "are"} held at a stretch, longer than ${stems === 1 ? "it keeps" : "they keep"} as good as fresh${cents > 0 ? `: ${inMoney(cents)} is counted for it` : ""}.`;
