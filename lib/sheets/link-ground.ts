import type { BedRecord, CoolerStockRecord, PlantingRecord } from "#lib/domain/farm-records";
import type { KnownNames, KnownPlanting } from "./known-names";
import { enterNames } from "./link-crops";
import type { NameBook } from "./name-book";
import { placeInWords } from "./sheet-problem";
import { linkRows, type Say, type SheetRows } from "./sheet-rows";
import type { RowOf } from "./to-records";
import type { VarietyBook } from "./variety-book";

/** Beds, each name once and none that the farm has. */
export function linkBeds(sheet: SheetRows<BedRecord>, beds: NameBook): SheetRows<BedRecord> {
  return linkRows(enterNames(sheet, "bed", beds), (record, say) => {
    if (beds.isOnFarm(record.name))
      say("bed", `bed "${record.name}" is on the farm already: take the row out, or name this bed otherwise`);
    return record;
  });
}

type VarietyDraft = Pick<RowOf<"plantings">, "crop" | "variety" | "colour">;

/** The variety of a row, or null after saying what is wrong. It may be new, if the row gives its colour. */
function varietyOf(draft: VarietyDraft, crops: NameBook, varieties: VarietyBook, say: Say) {
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
 * Plantings in known beds. The farm's own are not recorded twice: the same variety, bed, season, treatment, day and plants is refused,
 * and so is a row that repeats another of the upload cell by cell. A second row that differs in anything is a planting of its own.
 */
export function linkPlantings(
  sheet: SheetRows<RowOf<"plantings">>,
  beds: NameBook,
  crops: NameBook,
  varieties: VarietyBook,
  known: KnownNames,
): SheetRows<PlantingRecord> {
  const onFarm = new Set(known.plantings.map(plantingKey));
  const seen = new Map<string, string>();
  const linked = linkRows(sheet, (draft, say, { place }) => {
    const bed = beds.find(draft.bed);
    if (!bed.ok) say("bed", bed.message);
    const variety = varietyOf(draft, crops, varieties, say);
    if (!bed.ok || !variety) return null;
    const record: PlantingRecord = { ...draft, ...variety, bed: bed.name };
    const whole = JSON.stringify([
      plantingKey(record),
      record.aliveShare,
      record.gradeOutShare,
      record.winterSurvivalShare,
      record.flags,
    ]);
    const earlier = seen.get(whole);
    if (earlier)
      say(null, `the same planting stands on ${earlier}: take one of the two rows out, or write all the plants in one`);
    else if (onFarm.has(plantingKey(record)))
      say(null, `the same planting is on the farm already: take the row out, or change it on the bed's own page`);
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

const plantingKey = (row: KnownPlanting): string =>
  JSON.stringify([row.bed, row.crop, row.variety, row.seasonYear, row.treatment, row.plantedOn, row.plantCount]);

/** Stems in the cooler. Two like batches in one upload are two batches; a batch that the farm has already is refused. */
export function linkCooler(
  sheet: SheetRows<RowOf<"cooler">>,
  crops: NameBook,
  varieties: VarietyBook,
  known: KnownNames,
): SheetRows<CoolerStockRecord> {
  const keyOf = (row: CoolerStockRecord) => JSON.stringify([row.crop, row.variety, row.cutOn, row.stemCount]);
  const onFarm = new Set(known.coolerStock.map(keyOf));
  return linkRows(sheet, (draft, say, { place }) => {
    const variety = varietyOf(draft, crops, varieties, say);
    if (!variety) return null;
    const record: CoolerStockRecord = { ...draft, ...variety };
    if (onFarm.has(keyOf(record)))
      say(null, `the same stems are in the cooler already: take the row out, or change the count in the cooler`);
    else varieties.enter(variety, place);
    return record;
  });
}
