import type { BedRecord, CoolerStockRecord, PlantingRecord } from "#lib/domain/farm-records";
import { PLANTING_SHEET } from "#lib/domain/records/planting";
import { cellsOf } from "./columns";
import { enterNames } from "./link-crops";
import type { NameBook } from "./name-book";
import { placeInWords } from "./sheet-problem";
import { linkRows, type Say, type SheetRows } from "./sheet-rows";
import type { RowOf } from "./to-records";
import type { VarietyBook } from "./variety-book";

/** Beds, each name once. One that is on the farm already becomes what its row says. */
export const linkBeds = (sheet: SheetRows<BedRecord>, beds: NameBook): SheetRows<BedRecord> =>
  enterNames(sheet, "bed", beds);

type VarietyDraft = Pick<RowOf<"plantings">, "crop" | "variety" | "colour">;

/** The variety of a row, or null after saying what is wrong. It may be new, if the row gives its colour. */
export function varietyOf(draft: VarietyDraft, crops: NameBook, varieties: VarietyBook, say: Say) {
  const crop = crops.find(draft.crop);
  if (!crop.ok) {
    say("crop", crop.message);
    return null;
  }
  const met = varieties.meet(crop.name, draft.variety, draft.colour);
  if (!met.ok) say(met.column, met.message);
  return met.ok ? met.variety : null;
}

/**
 * Plantings in known beds. A new row that repeats another of the upload cell by cell is refused; one that differs in anything is a planting
 * of its own.
 */
export function linkPlantings(
  sheet: SheetRows<RowOf<"plantings">>,
  beds: NameBook,
  crops: NameBook,
  varieties: VarietyBook,
): SheetRows<PlantingRecord> {
  const seen = new Map<string, string>();
  const linked = linkRows(sheet, (draft, say, { place, kept }) => {
    const bed = beds.find(draft.bed);
    if (!bed.ok) say("bed", bed.message);
    const variety = varietyOf(draft, crops, varieties, say);
    if (!bed.ok || !variety) return null;
    const record: PlantingRecord = { ...draft, ...variety, bed: bed.name };
    const whole = JSON.stringify(cellsOf(PLANTING_SHEET, record));
    const earlier = seen.get(whole);
    if (earlier && !kept)
      say(null, `the same planting stands on ${earlier}: take one of the two rows out, or write all the plants in one`);
    else {
      seen.set(whole, placeInWords(place));
      varieties.enter(variety, place);
    }
    return record;
  });
  for (const { record, textIn, place } of linked.rows)
    if (record === null) varieties.enterWrong(textIn("crop"), textIn("variety"), place);
  return linked;
}

/** Stems in the cooler. Two like batches in one upload are two batches. */
export function linkCooler(
  sheet: SheetRows<RowOf<"cooler">>,
  crops: NameBook,
  varieties: VarietyBook,
): SheetRows<CoolerStockRecord> {
  return linkRows(sheet, (draft, say, { place }) => {
    const variety = varietyOf(draft, crops, varieties, say);
    if (!variety) return null;
    varieties.enter(variety, place);
    return { ...draft, ...variety };
  });
}
