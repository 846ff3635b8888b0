import type { FirstCutRecord } from "#lib/domain/farm-records";
import { plantedTooLate } from "#lib/domain/records/first-cut";
import { identityOf } from "./known-farm";
import type { NameBook } from "./name-book";
import { type Place, placeInWords } from "./sheet-problem";
import { linkRows, type SheetRows } from "./sheet-rows";
import type { RowOf } from "./to-records";
import type { VarietyBook } from "./variety-book";

/** First cuts of known crops and varieties. There is one for each of these, a way of growing, a season and a planting day. */
export function linkFirstCuts(
  sheet: SheetRows<RowOf<"firsts">>,
  { crops, varieties }: { readonly crops: NameBook; readonly varieties: VarietyBook },
): SheetRows<FirstCutRecord> {
  const seen = new Map<string, Place>();
  return linkRows(sheet, (row, say, { place }) => {
    const crop = crops.find(row.crop);
    if (!crop.ok) {
      say("crop", crop.message);
      return null;
    }
    const met = row.variety === null ? null : varieties.meet(crop.name, row.variety, null);
    if (met && !met.ok) {
      say(met.column, met.message);
      return null;
    }
    const tooLate = plantedTooLate(row);
    if (tooLate) say("planted_on", tooLate);
    const record: FirstCutRecord = { ...row, crop: crop.name, variety: met ? met.variety.variety : null };
    const identity = identityOf("firsts", record);
    const earlier = seen.get(identity);
    if (earlier)
      say("first_cut", `the same season and planting day stand on ${placeInWords(earlier)}: keep one of the two rows`);
    else seen.set(identity, place);
    return record;
  });
}
