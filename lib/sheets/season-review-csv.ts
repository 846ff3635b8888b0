import type { CropReview } from "#lib/plan/learning/review/season-review";
import { csvText } from "./csv-text";

const COLUMNS = [
  "crop",
  "cut_stems",
  "used_stems",
  "thrown_away_stems",
  "order_stems",
  "left_stems",
  "order_cents",
] as const;

/** What became of a season's stems as CSV after RFC 4180: a header, a crop a row, in the order given. */
export const seasonReviewCsv = (crops: readonly CropReview[]): string =>
  csvText([
    [...COLUMNS],
    ...crops.map((row) => [
      row.crop.name,
      row.cutStems,
      row.usedStems,
      row.thrownAwayStems,
      row.orderStems,
      row.leftStems,
      row.orderCents,
    ]),
  ]);
