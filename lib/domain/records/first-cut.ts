import { z } from "zod";
import { daySchema } from "../day-schema";
import { OTHER_TREATMENTS } from "../trade-words";
import { TREATMENT_WORDS, TREATMENTS } from "../words";
import { field, open, type RecordOf, recordSchema, rowId } from "./field";
import { choice, day, whole } from "./kinds";
import { nameOf } from "./names";
import { FIRST_WEATHER_YEAR, LAST_WEATHER_YEAR } from "./weather-day";

const first = {
  treatment: field(choice(TREATMENTS, OTHER_TREATMENTS), z.enum(TREATMENTS), {
    label: "How it is grown",
    meanings: TREATMENT_WORDS,
  }),
  seasonYear: field(
    whole,
    z
      .int("write a year")
      .min(FIRST_WEATHER_YEAR, `a year from ${FIRST_WEATHER_YEAR}`)
      .max(LAST_WEATHER_YEAR, `a year up to ${LAST_WEATHER_YEAR}`),
    { label: "Season", heading: "season" },
  ),
  plantedOn: open(
    field(day, daySchema, {
      label: "Planted on",
      hint: "For crops that are planted anew each year. Left empty for what stays in the ground.",
    }),
  ),
  firstCut: field(day, daySchema, { label: "First cut" }),
};

/** A first cut as its form and its row of the table write it. */
export const FIRST_CUT = { cropId: rowId("Crop"), varietyId: open(rowId("Variety")), ...first };

/**
 * A first cut a row. `variety` empty: of the whole crop. There is one for each crop, variety, way of growing, season and planting day; absent or empty: `planted_on`
 * says nothing.
 */
export const FIRST_CUT_SHEET = { crop: nameOf("Crop"), variety: open(nameOf("Variety")), ...first };

type Days = Pick<RecordOf<typeof FIRST_CUT>, "plantedOn" | "firstCut">;

/** What is wrong with a planting day that does not lie before the first cut; null where it does, or none is told. */
export const plantedTooLate = ({ plantedOn, firstCut }: Days): string | null =>
  plantedOn !== null && plantedOn >= firstCut
    ? "the planting day is not before the first cut: write an earlier one, or none"
    : null;

function checkPlantedBefore(days: Days, context: z.core.$RefinementCtx): void {
  const message = plantedTooLate(days);
  if (message !== null) context.addIssue({ code: "custom", path: ["plantedOn"], message });
}

/** A first cut before it has an id. */
export const firstCutDraftSchema = recordSchema(FIRST_CUT).superRefine(checkPlantedBefore);
export type FirstCutDraft = z.infer<typeof firstCutDraftSchema>;

/**
 * The first cut of a crop, or of one variety of it, in a past season, as the grower wrote it down to learn from: kept, so that each year adds to them. `plantedOn` is
 * null where none was told. There is one record for each crop, variety, treatment, season and planting day together: recorded again, it takes the place of the one before.
 */
export const firstCutSchema = recordSchema({ id: rowId("Id"), ...FIRST_CUT }).superRefine(checkPlantedBefore);
export type FirstCut = z.infer<typeof firstCutSchema>;
