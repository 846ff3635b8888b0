import { countOf, forCount, inWholes } from "./numbers";

/** What a booking has of days that nobody recorded: "48 of its 120 stems count as cut, as planned, on days that nobody recorded. …". Null where it has none. */
export const unrecordedInWords = (stems: number, needStems: number): string | null =>
  stems === 0
    ? null
    : `${inWholes(stems)} of its ${countOf(needStems, "stem")} ${forCount(stems, "counts", "count")} as cut, as planned, on days that nobody recorded. Record those days, or look in the cooler, before you promise.`;
