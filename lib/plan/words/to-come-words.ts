import type { CutSums, EventSums } from "#lib/plan/road/to-come";
import { countOf, inWholes } from "./numbers";

/** "11 weeks gone by" */
export const weeksGoneInWords = (weekCount: number): string => `${countOf(weekCount, "week")} gone by`;

/** "9 bookings, 4,120 stems asked, 12 short" */
export const eventsInWords = ({ bookingCount, needStems, shortStems }: EventSums): string =>
  `${countOf(bookingCount, "booking")}, ${countOf(needStems, "stem")} asked${shortStems > 0 ? `, ${inWholes(shortStems)} short` : ""}`;

/** "3,900 stems cut, 420 more not recorded: they count as cut as planned" */
export function cutsInWords({ cutStems, notRecordedStems }: CutSums): string {
  if (cutStems + notRecordedStems === 0) return "nothing was to be cut";
  if (notRecordedStems === 0) return `${countOf(cutStems, "stem")} cut`;
  const counted = "not recorded: they count as cut as planned";
  return cutStems === 0
    ? `${countOf(notRecordedStems, "stem")} ${counted}`
    : `${countOf(cutStems, "stem")} cut, ${inWholes(notRecordedStems)} more ${counted}`;
}
