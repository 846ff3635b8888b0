import type { CutRecord } from "#lib/domain/farm-records";
import { MORE_GOOD_THAN_CUT } from "#lib/domain/records/cut";
import type { BookingOwners } from "./booking-owners";
import { identityOf } from "./known-farm";
import { varietyOf } from "./link-ground";
import type { SeasonNames } from "./link-season";
import { type Place, placeInWords } from "./sheet-problem";
import { linkRows, type Say, type SheetRows } from "./sheet-rows";
import type { RowOf } from "./to-records";

/** Cuts in known beds, for bookings of the farm or of the upload. There is one cut for each day, bed, variety and booking. */
export function linkCuts(
  sheet: SheetRows<RowOf<"cuts">>,
  { beds, crops, varieties, owners }: SeasonNames,
): SheetRows<CutRecord> {
  const seen = new Map<string, Place>();
  return linkRows(sheet, (draft, say, { place }) => {
    const bed = beds.find(draft.bed);
    if (!bed.ok) say("bed", bed.message);
    checkBooking(draft, owners, say);
    if (draft.goodStems !== null && draft.goodStems > draft.stemsCut)
      say("good_stems", `${MORE_GOOD_THAN_CUT}: mend one of the two numbers`);
    const variety = varietyOf(draft, crops, varieties, say);
    if (!bed.ok || !variety) return null;
    const record: CutRecord = { ...draft, ...variety, bed: bed.name };
    const identity = identityOf("cuts", record);
    const earlier = seen.get(identity);
    if (earlier)
      say(null, `the same day, bed, variety and booking stand on ${placeInWords(earlier)}: write both cuts in one row`);
    else seen.set(identity, place);
    varieties.enter(variety, place);
    return record;
  });
}

/** A row that may name a booking. */
type ForBooking = Pick<RowOf<"cuts">, "client" | "eventOn">;

/** The row under the client and day that its booking has after the upload. */
export function withBooking<Row extends ForBooking>(row: Row, owners: BookingOwners): Row {
  const { client, eventOn } = row;
  return client === null || eventOn === null ? row : owners.renamed({ ...row, client, eventOn });
}

/** Says when a row names a booking that is neither on the farm nor in the upload, or only half of one. */
export function checkBooking({ client, eventOn }: ForBooking, owners: BookingOwners, say: Say): void {
  if (client !== null && eventOn !== null) owners.check({ client, eventOn }, say);
  else if (client !== eventOn)
    say("client", "client and event_on name one booking together: fill both, or leave both empty");
}
