import type { Crop } from "#lib/domain/crop";
import { DOLLARS, type Measure, PLAIN } from "#lib/domain/measures";

/** The numbers of a crop that carry a mark, as they are shown and typed. */
export const CROP_NUMBERS = [
  {
    name: "holdDays",
    label: "Hold",
    measure: { ...PLAIN, word: "days" },
    hint: "The most days between cut and event that are planned for.",
  },
  {
    name: "fieldDays",
    label: "Waits in the field",
    measure: { ...PLAIN, word: "days" },
    hint: "Once open, before it is lost.",
  },
  {
    name: "bunchStems",
    label: "A bunch",
    measure: { ...PLAIN, word: "stems" },
    hint: "As it is bought in and bunched.",
  },
  { name: "bucketStems", label: "A bucket", measure: { ...PLAIN, word: "stems" }, hint: "Full buckets are heavy." },
  { name: "buyInCents", label: "Buy-in price of a stem", measure: DOLLARS, hint: "" },
] as const satisfies readonly CropNumber[];

type CropNumber = {
  readonly name: keyof Crop & ("holdDays" | "fieldDays" | "bunchStems" | "bucketStems" | "buyInCents");
  readonly label: string;
  readonly measure: Measure;
  readonly hint: string;
};
