import { allOf } from "#lib/domain/listed";
import type { Problem } from "#lib/domain/problem";
import type { Crop } from "#lib/domain/records/crop";
import type { Farm } from "#lib/domain/records/farm-settings";
import type { Unheld } from "#lib/plan/road/unheld";
import { countOf, inTenths, inWords } from "./numbers";

/** Why none of a crop's stems can serve an event, and how to mend it [M1]. */
export const unheldInWords = (
  { crop, variety, hold, stems, servesSome }: Unheld,
  { leadDays }: Pick<Farm, "leadDays">,
): Problem => ({
  place: variety ? `${crop.name} ${variety.name}` : crop.name,
  message: `it keeps ${inTenths(hold.stretchDays)} ${hold.stretchDays === 1 ? "day" : "days"}, and your last cut is ${countOf(leadDays, "day")} before an event: ${servesSome ? `its ${countOf(stems, "stem")} can serve only what is cut later than that` : `none of its ${countOf(stems, "stem")} can serve one`}. Write on its crop${variety ? "’s page" : ""} how long yours keeps, or cut nearer the event.`,
});

/** Which crops a booking cannot have by its own last cut: "None of the cosmos and dahlia can serve it: they keep for less than the five days from its last cut." */
export const cutTooEarlyInWords = (crops: readonly Pick<Crop, "name">[], leadDays: number): string =>
  `None of the ${allOf(crops.map(({ name }) => name.toLowerCase()))} can serve it: ${crops.length === 1 ? "it keeps" : "they keep"} for less than the ${inWords(leadDays)} days from its last cut to the event.`;
