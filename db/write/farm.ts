import { eq } from "drizzle-orm";
import type { FarmDatabase } from "#db/client";
import { hasFarm } from "#db/read/read";
import { bed, coolerStock } from "#db/schema/beds";
import { booking } from "#db/schema/bookings";
import { coolerMove } from "#db/schema/cooler-moves";
import { variety } from "#db/schema/crops";
import { cut } from "#db/schema/cuts";
import { farm } from "#db/schema/farm";
import { firstCut } from "#db/schema/first-cuts";
import { farmRow } from "#db/schema/nested";
import { standingOrder } from "#db/schema/orders";
import { purchase } from "#db/schema/purchases";
import { weatherYear } from "#db/schema/weather";
import { whatIf } from "#db/schema/what-ifs";
import type { CatalogueCrop, CatalogueRecipe } from "#lib/domain/catalogue-types";
import { climateColumns } from "#lib/domain/records/climate";
import type { Farm } from "#lib/domain/records/farm-settings";
import { insertCrop, putCurveRow } from "./put-crops";
import { putRecipeByName } from "./put-recipes";
import { Refusals, refuse } from "./refusal";
import { type Written, write } from "./write";

/** The one row of the farm's settings. */
const FARM_ID = 1;

/** What a new farm starts from: its settings, and the built-in crops and recipes. */
export type FarmStart = {
  readonly farm: Farm;
  readonly crops: readonly CatalogueCrop[];
  readonly recipes: readonly CatalogueRecipe[];
};

/** Starts the farm. Refused when there is one already. */
export const startFarm = (database: FarmDatabase, start: FarmStart): Written =>
  write(database, () => {
    if (hasFarm(database)) refuse("farm", "a farm has been started here already");
    database
      .insert(farm)
      .values({ id: FARM_ID, ...farmRow(start.farm) })
      .run();
    const refusals = new Refusals();
    start.crops.forEach(({ curves, ...crop }, index) => {
      refusals.gather(`crops[${index}]`, () => {
        const cropId = insertCrop(database, crop);
        for (const curve of curves) putCurveRow(database, { ...curve, cropId, varietyId: null, plantingId: null });
      });
    });
    for (const recipe of start.recipes) putRecipeByName(database, recipe);
    refusals.end();
    return { title: `started the farm ${start.farm.name}`, result: FARM_ID };
  });

/** Replaces the farm's settings. Refused when the farm has not been started. */
export const updateFarm = (database: FarmDatabase, settings: Farm): Written =>
  setFigure(database, settings, "changed the farm's settings");

/** Replaces the farm's settings, of which one figure is another; `title` says which in the history. Refused when the farm has not been started. */
export const setFigure = (database: FarmDatabase, settings: Farm, title: string): Written =>
  write(database, () => {
    putFarm(database, settings);
    return { title, result: FARM_ID };
  });

/** Replaces the farm's settings inside a change that is open. */
export function putFarm(database: FarmDatabase, settings: Farm): void {
  const { changes } = database.update(farm).set(farmRow(settings)).where(eq(farm.id, FARM_ID)).run();
  if (changes === 0) refuse("farm", "the farm has not been started yet");
}

/**
 * Empties the farm for a grower to begin with: beds, plantings, bookings, standing orders, cuts, cooler, varieties with their own curves and what-ifs go. Crops with
 * their curves, recipes, settings, recorded weather and the first cuts that were kept of whole crops stay; of an invented farm the weather, those first cuts, the climate, the frosts
 * and the Saturdays expected are invented too, and go. The farm gets
 * the name `name` and is no longer an invented one. Can be undone like any change.
 */
export const emptyFarm = (database: FarmDatabase, name: string): Written =>
  write(database, () => {
    if (!hasFarm(database)) refuse("farm", "the farm has not been started yet");
    for (const table of [whatIf, cut, coolerMove, purchase, standingOrder, booking, coolerStock, bed, variety])
      database.delete(table).run();
    const wasInvented = database.select().from(farm).where(eq(farm.isInvented, true)).get() !== undefined;
    if (wasInvented) for (const table of [weatherYear, firstCut]) database.delete(table).run();
    const invented = wasInvented
      ? { ...climateColumns(null), expectedSaturdayCount: 0, expectedFrom: "a number" as const, killingFrosts: [] }
      : {};
    database
      .update(farm)
      .set({ ...invented, name, isInvented: false })
      .where(eq(farm.id, FARM_ID))
      .run();
    return { title: `emptied the farm, now ${name}`, result: FARM_ID };
  });
