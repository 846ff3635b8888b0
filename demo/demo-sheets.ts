import { readdirSync, readFileSync } from "node:fs";
import { CATALOGUE } from "#lib/domain/catalogue/crops";
import { DEFAULT_RECIPES } from "#lib/domain/catalogue/recipes";
import { newFarm } from "#lib/domain/new-farm";
import type { Snapshot } from "#lib/domain/snapshot";
import type { SheetText } from "#lib/sheets/farm-sheets";
import { knownFarm } from "#lib/sheets/known-farm";
import type { SheetFile } from "#lib/sheets/open-files";
import { type Reading, readFarmSheets } from "#lib/sheets/read-farm-sheets";

/** What the demo farm is started from, before its sheets are read: the settings, crops and recipes of any new farm. */
export const DEMO_START = {
  farm: { ...newFarm("The demo farm"), wornLaterDays: 0 },
  crops: CATALOGUE,
  recipes: DEFAULT_RECIPES,
};

const FOLDER = new URL("./", import.meta.url);

/** The CSV files of this folder, for the season they are written for. */
export const demoFiles = (): SheetText[] =>
  readdirSync(FOLDER)
    .filter((name) => name.endsWith(".csv"))
    .sort()
    .map((name) => ({ name, text: readFileSync(new URL(name, FOLDER), "utf8") }));

/**
 * The invented farm's sheets, read by the reader that every user's sheets go through. Anything wrong in them is among the problems.
 */
export const readDemoSheets = (files: readonly SheetFile[] = demoFiles()): Reading =>
  readFarmSheets(files, knownFarm(STARTED));

/** The farm before its sheets are read. */
const STARTED: Snapshot = {
  farm: DEMO_START.farm,
  crops: DEMO_START.crops.map(({ curves: _, ...crop }, index) => ({ ...crop, id: index + 1 })),
  recipes: DEMO_START.recipes.map((recipe, index) => ({ ...recipe, id: index + 1 })),
  curves: [],
  varieties: [],
  beds: [],
  plantings: [],
  bookings: [],
  coolerStock: [],
  coolerMoves: [],
  purchases: [],
  standingOrders: [],
  cuts: [],
  budLooks: [],
  losses: [],
  firstCuts: [],
  reviews: [],
  weather: null,
};
