"use server";

import { addBed, removeBed, updateBed } from "#db/write/beds";
import { carryPlantings } from "#db/write/plantings";
import { BED, bedDraftSchema } from "#lib/domain/records/bed";
import { carriedPlantings } from "#lib/plan/winter/carried-plantings";
import { action, idIn, readEntry, refusal } from "../action";
import { readCarryOver } from "./carry-over-values";

/** Adds a bed and opens it, or changes one. */
export const saveBed = action(
  (values, { farm, beds }) =>
    readEntry(values, "bedId", beds, (before) => values.record(BED, farm, { before, schema: bedDraftSchema })),
  (database, { id, draft }) => (id === null ? addBed(database, draft) : updateBed(database, id, draft)),
  (bedId, { id }) => (id === null ? `/beds/${bedId}` : null),
);

/** Removes a bed with its plantings of every season; the undo on the next page brings all of it back. */
export const deleteBed = action(idIn("bedId"), removeBed, () => "/beds");

/** Copies the plantings of one season into another. */
export const carryOver = action(readCarryOver, (database, { fromSeason, toSeason }, farm) => {
  const plantings = carriedPlantings(farm, fromSeason, toSeason);
  return plantings.length === 0
    ? refusal("fromSeason", `nothing of ${fromSeason} is missing in ${toSeason}`)
    : carryPlantings(database, fromSeason, toSeason, plantings);
});
