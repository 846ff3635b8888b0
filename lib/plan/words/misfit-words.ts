import { tooManyStems } from "#lib/domain/booking-stems";
import { MOST_DAYS_LATE, MOST_YIELD_FACTOR } from "#lib/domain/records/planting";
import type { Misfit } from "#lib/plan/what-if/applied";

/** Why a change did not fit, or at what it was held, as a sentence without its end [W3]. */
export function misfitInWords(misfit: Misfit): string {
  switch (misfit.kind) {
    case "gone":
      return `${misfit.what} is no longer on the farm`;
    case "booking-names-gone":
      return `the booking of ${misfit.client} names a ${misfit.what} that is no longer on the farm`;
    case "booking-overfull":
      return `the booking of ${misfit.client} ${tooManyStems(misfit.stems)}`;
    case "nothing-winters":
      return `nothing in bed ${misfit.bedName} in ${misfit.seasonYear} can stay in the ground over winter`;
    case "stays-in-the-ground":
      return "this planting stays in the ground over winter: dig its bed before moving it to another";
    case "frost-held":
      return "its early or late date would leave the year: it is held at the year's end";
    case "first-cut-held":
      return `a planting would be more than ${MOST_DAYS_LATE} days early or late: it is held there`;
    case "yield-held":
      return `a planting would give more than ${MOST_YIELD_FACTOR} times its stems: it is held there`;
  }
}
