import { knownFarm } from "#lib/sheets/known-farm";
import { readFarmSheets } from "#lib/sheets/read-farm-sheets";
import { bed, booking, crop, day, planting, recipe, snapshot, variety } from "../small-farm";

/** A farm with a few of each: what the sheets of these tests are read onto. */
export const FARM = snapshot({
  crops: [crop({ id: 1, name: "Dahlia", tender: true }), crop({ id: 2, name: "Foxglove", roles: ["line"] })],
  varieties: [variety({ id: 1, cropId: 1, name: "Maple Row", colour: "plum" })],
  recipes: [recipe({ id: 1, name: "Bridal bouquet" })],
  beds: [bed({ id: 1, name: "D8" })],
  plantings: [planting({ id: 1, bedId: 1, varietyId: 1 })],
  bookings: [booking({ id: 1, client: "Ash & Wren", eventOn: day("2027-09-20") })],
  coolerStock: [{ id: 1, varietyId: 1, cutOn: day("2027-08-01"), stemCount: 40 }],
});

export const KNOWN = knownFarm(FARM);

/** Reads sheets given as name and text. */
export const read = (sheets: Record<string, string>) =>
  readFarmSheets(
    Object.entries(sheets).map(([name, text]) => ({ name, text })),
    KNOWN,
  );

/** The problems as "beds.csv:3 length_m: …". */
export const problemLines = (sheets: Record<string, string>) =>
  read(sheets).problems.map(({ file, line, column, message }) => `${file}:${line} ${column ?? "row"}: ${message}`);
