import type { Problem } from "#lib/domain/problem";
import type { Farm } from "#lib/domain/records/farm-settings";
import type { Unheld } from "#lib/plan/road/unheld";
import { countOf, inTenths } from "./numbers";

/** Why none of a crop's stems can serve an event, and how to mend it [M1]. */
export const unheldInWords = (
  { crop, variety, hold, stems }: Unheld,
  { leadDays }: Pick<Farm, "leadDays">,
): Problem => ({
  place: variety ? `${crop.name} ${variety.name}` : crop.name,
  message: `it keeps ${inTenths(hold.stretchDays)} ${hold.stretchDays === 1 ? "day" : "days"}, and your last cut is ${countOf(leadDays, "day")} before an event: none of its ${countOf(stems, "stem")} can serve one. Write on its crop${variety ? "’s page" : ""} how long yours keeps, or cut nearer the event.`,
});
