import type { ReviewRecord } from "#lib/domain/farm-records";
import { isWithinHad, MORE_THROWN_THAN_HAD } from "#lib/domain/records/review";
import type { BookingOwners } from "./booking-owners";
import { identityOf } from "./known-farm";
import { type Place, placeInWords } from "./sheet-problem";
import { linkRows, type SheetRows } from "./sheet-rows";
import type { RowOf } from "./to-records";

/** Reviews of bookings of the farm or of the upload. There is one for each booking and role. */
export function linkReviews(sheet: SheetRows<RowOf<"reviews">>, owners: BookingOwners): SheetRows<ReviewRecord> {
  const seen = new Map<string, Place>();
  return linkRows(sheet, (draft, say, { place }) => {
    owners.check(draft, say);
    if (!isWithinHad(draft)) say("thrown_away_stems", `${MORE_THROWN_THAN_HAD}: mend one of the three numbers`);
    const identity = identityOf("reviews", draft);
    const earlier = seen.get(identity);
    if (earlier) say(null, `the same booking and role stand on ${placeInWords(earlier)}: keep one of the two rows`);
    else seen.set(identity, place);
    return draft;
  });
}
