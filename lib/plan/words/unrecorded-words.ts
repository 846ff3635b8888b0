import { countOf, forCount, inWholes } from "./numbers";

/** What a booking has of days that nobody recorded: "48 of its 120 stems count as cut, as planned, on days that nobody recorded. …". Null where it has none. */
export const unrecordedInWords = (stems: number, needStems: number): string | null =>
  stems === 0
    ? null
    : `${inWholes(stems)} of its ${countOf(needStems, "stem")} ${forCount(stems, "counts", "count")} as cut, as planned, on days that nobody recorded, and for all that the booking asks for now. If it asked for less then, they were not cut: record those days, or look in the cooler, before you promise.`;

/** What a booking as typed has more of such stems than as it is saved: they were to be cut when it did not ask for them. Null where it has no more. */
export const neverAskedInWords = (moreStems: number): string | null =>
  moreStems <= 0
    ? null
    : `${countOf(moreStems, "stem")} more than before ${forCount(moreStems, "counts", "count")} as cut on days that have passed and that nobody recorded, though the booking did not ask for ${forCount(moreStems, "it", "them")} then. Look in the cooler before you promise.`;
