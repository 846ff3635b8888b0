import type { CutRecord } from "#lib/domain/farm-records";
import { MORE_GOOD_THAN_CUT } from "#lib/domain/records/cut";
import type { BookingOwners } from "./booking-owners";
import { identityOf } from "./known-farm";
import { varietyOf } from "./link-ground";
import type { NameBook } from "./name-book";
import { type Place, placeInWords } from "./sheet-problem";
import { linkRows, type Say, type SheetRows } from "./sheet-rows";
import type { RowOf } from "./to-records";
import type { VarietyBook } from "./variety-book";

/** Names of the farm and of the upload that a cut may have. */
type CutNames = {
  readonly beds: NameBook;
  readonly crops: NameBook;
  readonly varieties: VarietyBook;
  readonly owners: BookingOwners;
};

/** Cuts in known beds, for bookings of the farm or of the upload. There is one cut for each day, bed, variety and booking. */
export function linkCuts(
  sheet: SheetRows<RowOf<"cuts">>,
  { beds, crops, varieties, owners }: CutNames,
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

/** The cut under the client and day that its booking has after the upload. */
export function withBooking(row: RowOf<"cuts">, owners: BookingOwners): RowOf<"cuts"> {
  const { client, eventOn } = row;
  return client === null || eventOn === null ? row : owners.renamed({ ...row, client, eventOn });
}

function checkBooking({ client, eventOn }: RowOf<"cuts">, owners: BookingOwners, say: Say): void {
  if (client !== null && eventOn !== null) owners.check({ client, eventOn }, say);
  else if (client !== eventOn)
    say("client", "client and event_on name one booking together: fill both, or leave both empty");
}
