import type { Day } from "#lib/domain/day";
import type { CoolerStockRecord, PlantingRecord, VarietyRecord } from "#lib/domain/farm-records";
import type { Farm } from "#lib/domain/records/farm-settings";
import { ById, type Snapshot } from "#lib/domain/snapshot";

/** What is on the farm before sheets are read: the names they may refer to, and what must not be recorded twice. */
export type KnownNames = {
  readonly farm: Farm;
  readonly crops: readonly string[];
  readonly recipes: readonly string[];
  readonly beds: readonly string[];
  readonly varieties: readonly VarietyRecord[];
  readonly plantings: readonly KnownPlanting[];
  readonly bookings: readonly { readonly client: string; readonly eventOn: Day }[];
  readonly coolerStock: readonly CoolerStockRecord[];
};

/** A planting as far as it tells one from another. */
export type KnownPlanting = Pick<
  PlantingRecord,
  "bed" | "crop" | "variety" | "seasonYear" | "treatment" | "plantedOn" | "plantCount"
>;

/** The names that a farm's snapshot holds. */
export function knownNames(snapshot: Snapshot): KnownNames {
  const crops = new ById("crop", snapshot.crops);
  const beds = new ById("bed", snapshot.beds);
  const varieties = new ById("variety", snapshot.varieties);
  const namesOf = (varietyId: number): VarietyRecord => {
    const { cropId, name, colour } = varieties.get(varietyId);
    return { crop: crops.get(cropId).name, variety: name, colour };
  };
  return {
    farm: snapshot.farm,
    crops: snapshot.crops.map((crop) => crop.name),
    recipes: snapshot.recipes.map((recipe) => recipe.name),
    beds: snapshot.beds.map((bed) => bed.name),
    varieties: snapshot.varieties.map((variety) => namesOf(variety.id)),
    plantings: snapshot.plantings.map(({ bedId, varietyId, seasonYear, treatment, plantedOn, plantCount }) => ({
      bed: beds.get(bedId).name,
      ...namesOf(varietyId),
      seasonYear,
      treatment,
      plantedOn,
      plantCount,
    })),
    bookings: snapshot.bookings.map(({ client, eventOn }) => ({ client, eventOn })),
    coolerStock: snapshot.coolerStock.map(({ varietyId, cutOn, stemCount }) => ({
      ...namesOf(varietyId),
      cutOn,
      stemCount,
    })),
  };
}
