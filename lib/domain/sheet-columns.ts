/**
 * The farm's spreadsheets and their columns, in the order they are written. Reading takes columns in any order; both sides are held
 * to these names by their types. Numbers carry their unit in the column's name; shares run 0 to 1; lists are parted by "/".
 */
export const SHEET_COLUMNS = {
  farm: ["setting", "value"],
  crops: [
    "crop",
    "scientific",
    "shape",
    "roles",
    "usual_role",
    "tender",
    "overwinters",
    "hold_days",
    "hold_origin",
    "field_days",
    "field_origin",
    "bunch_stems",
    "bunch_origin",
    "bucket_stems",
    "bucket_origin",
    "buy_in_cents",
    "buy_in_origin",
    "cut_stage",
    "cautions",
  ],
  curves: [
    "crop",
    "variety",
    "treatment",
    "first_cut",
    "days_after_planting",
    "stems_per_plant_by_week",
    "first_cut_spread_days",
    "yield_spread",
    "timing_origin",
    "yield_origin",
    "note",
  ],
  recipes: ["recipe", "unit", "role", "stems_per_piece", "colours", "origin"],
  varieties: ["crop", "variety", "colour"],
  beds: ["bed", "length_m", "width_m", "flags", "no_entry_from", "no_entry_until", "note"],
  plantings: [
    "bed",
    "crop",
    "variety",
    "colour",
    "season",
    "treatment",
    "planted_on",
    "plants",
    "alive_share",
    "grade_out_share",
    "winter_survival_share",
    "flags",
  ],
  bookings: ["client", "event_on", "status", "palette", "spare_share", "not_wanted", "note"],
  pieces: ["client", "event_on", "recipe", "count", "colours"],
  stems: ["client", "event_on", "role", "crop", "crop_only", "colours", "stems"],
  cooler: ["crop", "variety", "colour", "cut_on", "stems"],
} as const;

export type SheetName = keyof typeof SHEET_COLUMNS;
export type ColumnOf<Name extends SheetName> = (typeof SHEET_COLUMNS)[Name][number];

/** Every sheet, each after the sheets that it names things from. */
export const SHEET_NAMES: readonly SheetName[] = [
  "farm",
  "crops",
  "recipes",
  "varieties",
  "beds",
  "plantings",
  "cooler",
  "curves",
  "bookings",
  "pieces",
  "stems",
];
