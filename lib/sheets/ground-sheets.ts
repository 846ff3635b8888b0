import { z } from "zod";
import { BED_FLAGS, bedSchema, PLANTING_FLAGS, plantingSchema } from "#lib/domain/bed";
import type { BedRecord, PlantingRecord } from "#lib/domain/farm-records";
import { COOLER_SHEET } from "#lib/domain/records/cooler-lot";
import type { RecordOf } from "#lib/domain/records/field";
import { choice, day, decimal, listOf, prose, whole, word } from "#lib/domain/records/kinds";
import { varietySchema } from "#lib/domain/records/variety";
import { COLOURS, type Colour, TREATMENTS } from "#lib/domain/words";
import { type ColumnsOf, columnsOf, maybe, needed, type RowOf, recordOf } from "./columns";
import type { Say } from "./sheet-rows";

const bed = bedSchema.shape;
const planting = plantingSchema.shape;
const name = z.string().trim();
const varietyName = varietySchema.shape.name;

/** Absent or empty: no flags, no spray (`no_entry_from` and `no_entry_until` come together), and no note. */
export const BED_COLUMNS = {
  bed: needed(word, bed.name),
  length_m: needed(decimal, bed.lengthMetres),
  width_m: needed(decimal, bed.widthMetres),
  flags: maybe(listOf(choice(BED_FLAGS)), bed.flags, []),
  no_entry_from: maybe(day, bed.noEntryFrom, null),
  no_entry_until: maybe(day, bed.noEntryUntil, null),
  note: maybe(prose, bed.note, ""),
} satisfies ColumnsOf<"beds">;

export function toBedRecord(row: RowOf<typeof BED_COLUMNS>, say: Say): BedRecord {
  const record: BedRecord = {
    name: row.bed,
    lengthMetres: row.length_m,
    widthMetres: row.width_m,
    flags: row.flags,
    noEntryFrom: row.no_entry_from,
    noEntryUntil: row.no_entry_until,
    note: row.note,
  };
  const checked = bedSchema.safeParse({ id: 0, ...record });
  for (const { message } of checked.error?.issues ?? [])
    say(
      "no_entry_until",
      `no_entry_from and no_entry_until do not go together: ${message}; write both days in order, or neither`,
    );
  return record;
}

/** A planting as written: the colour may be left to the variety. */
export type PlantingDraft = Omit<PlantingRecord, "colour"> & { readonly colour: Colour | null };

/**
 * A planting a row. Absent or empty: `colour` is that of the variety (on the farm, in the varieties sheet or in a row above),
 * `alive_share` 1, `grade_out_share` 0, `winter_survival_share` the farm's, and no flags.
 */
export const PLANTING_COLUMNS = {
  bed: needed(word, name),
  crop: needed(word, name),
  variety: needed(word, varietyName),
  colour: maybe(choice(COLOURS), varietySchema.shape.colour, null),
  season: needed(whole, planting.seasonYear),
  treatment: needed(choice(TREATMENTS), planting.treatment),
  planted_on: needed(day, planting.plantedOn),
  plants: needed(whole, planting.plantCount),
  alive_share: maybe(decimal, planting.aliveShare, 1),
  grade_out_share: maybe(decimal, planting.gradeOutShare, 0),
  winter_survival_share: maybe(decimal, planting.winterSurvivalShare, null),
  flags: maybe(listOf(choice(PLANTING_FLAGS)), planting.flags, []),
} satisfies ColumnsOf<"plantings">;

export const toPlantingDraft = (row: RowOf<typeof PLANTING_COLUMNS>): PlantingDraft => ({
  bed: row.bed,
  crop: row.crop,
  variety: row.variety,
  colour: row.colour,
  seasonYear: row.season,
  treatment: row.treatment,
  plantedOn: row.planted_on,
  plantCount: row.plants,
  aliveShare: row.alive_share,
  gradeOutShare: row.grade_out_share,
  winterSurvivalShare: row.winter_survival_share,
  flags: row.flags,
});

/** Stems in the cooler as written: the colour may be left to the variety. */
export type CoolerDraft = RecordOf<typeof COOLER_SHEET>;
export const COOLER_COLUMNS = columnsOf(COOLER_SHEET);
export const toCoolerDraft = recordOf(COOLER_SHEET);
