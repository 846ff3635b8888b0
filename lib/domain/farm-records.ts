import type { Day } from "./day";
import type { Bed } from "./records/bed";
import type { BookingDraft } from "./records/booking";
import type { BudLookDraft } from "./records/bud-look";
import type { CoolerStock } from "./records/cooler-lot";
import type { CoolerMoveDraft } from "./records/cooler-move";
import type { Crop } from "./records/crop";
import type { BloomCurve } from "./records/curve";
import type { CutDraft } from "./records/cut";
import type { Farm } from "./records/farm-settings";
import type { FirstCutDraft } from "./records/first-cut";
import type { LossDraft } from "./records/loss";
import type { Piece } from "./records/piece";
import type { Planting } from "./records/planting";
import type { PromisedStems } from "./records/promised-stems";
import type { PurchaseDraft } from "./records/purchase";
import type { Recipe } from "./records/recipe";
import type { ReviewDraft } from "./records/review";
import type { StandingOrderDraft } from "./records/standing-order";
import type { StemLine } from "./records/stem-line";
import type { OwnTraits } from "./records/variety";
import type { WeatherDay } from "./records/weather-day";
import type { Colour } from "./words";

/**
 * The farm's records as people write them: by name, with no ids. A bed, crop or recipe is known by its name, a variety by crop and
 * name, a booking by client and day. Spreadsheets are read into this shape and written from it.
 */

/** `id` is the record of the farm that this one stands in place of; absent where it is new, or known by its name alone. */
type InPlaceOf = { readonly id?: number };

/** A crop. One that is on the farm already is replaced by this one, number by number. */
export type CropRecord = Omit<Crop, "id"> & InPlaceOf;

/** How a sheet names a planting of a variety that it names beside it; of several that are alike in this, the first is meant. */
export type PlantingName = { readonly bed: string; readonly seasonYear: number; readonly plantedOn: Day };

/**
 * A bloom curve of a crop, of one variety (`variety` null: of the whole crop), or of one planting of the variety (`planting` absent: of all of them).
 * There is one curve for each of these and a treatment: one that is on the farm already is replaced.
 */
export type CurveRecord = Omit<BloomCurve, "id" | "cropId" | "varietyId" | "plantingId"> &
  InPlaceOf & {
    readonly crop: string;
    readonly variety: string | null;
    readonly planting?: PlantingName;
  };

/** A recipe with all its lines. One that is on the farm already is replaced, lines and all. */
export type RecipeRecord = Omit<Recipe, "id"> & InPlaceOf;

/** What names a variety. The same one may come many times, with plantings and cuts, and may be on the farm already: it is one variety. */
export type VarietyNamed = { readonly crop: string; readonly variety: string; readonly colour: Colour } & InPlaceOf;

/** A variety with what it says of itself. One that is on the farm already says this from now on. */
export type VarietyRecord = VarietyNamed & OwnTraits;

/** A bed. */
export type BedRecord = Omit<Bed, "id"> & InPlaceOf;

/** A planting; its bed and crop are on the farm or among the records, its variety may be new. */
export type PlantingRecord = Omit<Planting, "id" | "bedId" | "varietyId"> & VarietyNamed & { readonly bed: string };

/** Pieces of a booking, their recipe by name. */
export type PieceRecord = Omit<Piece, "recipeId"> & { readonly recipe: string };

/** Stems asked for directly, the crop by name; null when any crop of the role will do. */
export type StemLineRecord = Omit<StemLine, "cropId"> & { readonly crop: string | null };

/** Stems promised to a booking, the crop by name. */
export type PromiseRecord = Omit<PromisedStems, "cropId"> & { readonly crop: string | null };

/** A booking with all it asks for and all that is promised to it. */
export type BookingRecord = Omit<BookingDraft, "unacceptableCropIds" | "pieces" | "stemLines" | "promises"> &
  InPlaceOf & {
    readonly unacceptableCrops: readonly string[];
    readonly pieces: readonly PieceRecord[];
    readonly stemLines: readonly StemLineRecord[];
    readonly promises: readonly PromiseRecord[];
  };

/** Stems in the cooler; the variety may be new. */
export type CoolerStockRecord = Omit<CoolerStock, "id" | "varietyId"> & VarietyNamed;

/** Stems that left the cooler; the booking they were for by client and day, both null when none is named. */
export type CoolerMoveRecord = Omit<CoolerMoveDraft, "varietyId" | "bookingId"> &
  VarietyNamed & { readonly client: string | null; readonly eventOn: Day | null };

/** What was ordered from a supplier; the booking it is for by client and day, both null when it is for anybody. */
export type PurchaseRecord = Omit<PurchaseDraft, "varietyId" | "bookingId"> &
  VarietyNamed & { readonly client: string | null; readonly eventOn: Day | null };

/** A standing order, its crop and its piece by name; null where it names none. */
export type OrderRecord = Omit<StandingOrderDraft, "cropId" | "recipeId"> &
  InPlaceOf & { readonly crop: string | null; readonly recipe: string | null };

/** A cut in a bed of the farm or of the records; the booking it was cut for by client and day, both null when it was cut for nobody yet. */
export type CutRecord = Omit<CutDraft, "bedId" | "varietyId" | "bookingId"> &
  VarietyNamed & { readonly bed: string; readonly client: string | null; readonly eventOn: Day | null };

/** A look at the buds of a bed of the farm or of the records. */
export type BudLookRecord = Omit<BudLookDraft, "bedId" | "varietyId"> & VarietyNamed & { readonly bed: string };

/** What was left of plants in a bed of the farm or of the records. */
export type LossRecord = Omit<LossDraft, "bedId" | "varietyId"> & VarietyNamed & { readonly bed: string };
/** A first cut of a past season, of a crop of the farm or of one variety of it. */
export type FirstCutRecord = Omit<FirstCutDraft, "cropId" | "varietyId"> &
  InPlaceOf & { readonly crop: string; readonly variety: string | null };

/** What became of the stems of an event, the booking by client and day. */
export type ReviewRecord = Omit<ReviewDraft, "bookingId"> &
  InPlaceOf & { readonly client: string; readonly eventOn: Day };

/**
 * Records to add to a farm, every value parsed and every name known to the farm or to the records themselves. What is absent is left
 * as it is. `farm` holds every setting: those that were not given keep the value they had.
 */
export type FarmRecords = {
  readonly farm?: Farm;
  readonly crops?: readonly CropRecord[];
  readonly curves?: readonly CurveRecord[];
  readonly recipes?: readonly RecipeRecord[];
  readonly varieties?: readonly VarietyRecord[];
  readonly beds?: readonly BedRecord[];
  readonly plantings?: readonly PlantingRecord[];
  readonly bookings?: readonly BookingRecord[];
  readonly coolerStock?: readonly CoolerStockRecord[];
  readonly coolerMoves?: readonly CoolerMoveRecord[];
  readonly purchases?: readonly PurchaseRecord[];
  readonly standingOrders?: readonly OrderRecord[];
  /** What was cut. A cut of the same day, bed, variety and booking is replaced. */
  readonly cuts?: readonly CutRecord[];
  /** What the buds looked like. A look of the same day, bed and variety is replaced. */
  readonly budLooks?: readonly BudLookRecord[];
  /** What was left of plants. A loss of the same day, bed, variety and cause is replaced. */
  readonly losses?: readonly LossRecord[];
  /** First cuts of past seasons. One of the same crop, variety, treatment, season and planting day is replaced. */
  readonly firstCuts?: readonly FirstCutRecord[];
  /** What became of the stems of events. A review of the same booking and role is replaced. */
  readonly reviews?: readonly ReviewRecord[];
  /** Recorded days. One that the farm has already is replaced. */
  readonly weather?: readonly WeatherDay[];
};
