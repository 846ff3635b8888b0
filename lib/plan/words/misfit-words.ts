import { tooManyStems } from "#lib/domain/booking-stems";
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
      return "a first cut would leave the year: it is held at the year's end, or at the planting day";
    case "yield-held":
      return `no plant gives more than ${misfit.mostStems} stems a week: its curve is held there`;
  }
}
