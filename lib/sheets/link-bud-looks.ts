import type { BudLookRecord } from "#lib/domain/farm-records";
import { identityOf } from "./known-farm";
import { varietyOf } from "./link-ground";
import type { SeasonNames } from "./link-season";
import { type Place, placeInWords } from "./sheet-problem";
import { linkRows, type SheetRows } from "./sheet-rows";
import type { RowOf } from "./to-records";

/** Looks at buds in known beds. There is one for each day, bed and variety. */
export function linkBudLooks(
  sheet: SheetRows<RowOf<"buds">>,
  { beds, crops, varieties }: Omit<SeasonNames, "owners">,
): SheetRows<BudLookRecord> {
  const seen = new Map<string, Place>();
  return linkRows(sheet, (draft, say, { place }) => {
    const bed = beds.find(draft.bed);
    if (!bed.ok) say("bed", bed.message);
    const variety = varietyOf(draft, crops, varieties, say);
    if (!bed.ok || !variety) return null;
    const record: BudLookRecord = { ...draft, ...variety, bed: bed.name };
    const identity = identityOf("buds", record);
    const earlier = seen.get(identity);
    if (earlier) say(null, `the same day, bed and variety stand on ${placeInWords(earlier)}: keep one of the two rows`);
    else seen.set(identity, place);
    varieties.enter(variety, place);
    return record;
  });
}
