"use server";

import { z } from "zod";
import { updateFarm } from "#db/write/farm";
import { sayOfSeason } from "#db/write/plantings";
import { SEASON_ALONE } from "#lib/domain/records/planting";
import { plantingsOfCrop } from "#lib/plan/road/grown";
import { ownSeasonInWords } from "#lib/plan/words/own-season-words";
import { action } from "../action";

/** Lets the plan go by what the season has shown, or by the curves alone. */
export const followSeason = action(
  (values, { farm }) =>
    values.parse(
      z.enum(["yes", "no"]).transform((follows) => ({ ...farm, followsSeason: follows === "yes" })),
      values.text("follows"),
    ),
  updateFarm,
);

/** Says of all plantings of a crop in a season, or of every crop, how late and how heavy they are, that season only; both fields empty take back what was said. */
export const saySeason = action(
  (values, farm) => {
    const seasonYear = values.hiddenNumber("seasonYear");
    const cropId = values.text("cropId") === "" ? null : values.hiddenNumber("cropId");
    const plantings = plantingsOfCrop(farm, seasonYear, cropId);
    if (plantings.length === 0) values.refuse("cropId", "nothing of this crop is planted in this season");
    const said = values.record(SEASON_ALONE, farm.farm);
    if (!said.ok) return said;
    const name = farm.crops.find(({ id }) => id === cropId)?.name ?? "Every crop";
    const words = ownSeasonInWords(said.parsed) ?? "as the curve says again";
    const title = `${name}: ${words}, in ${seasonYear} only`;
    return { ok: true, parsed: { title, plantingIds: plantings.map(({ id }) => id), said: said.parsed } };
  },
  (database, { title, plantingIds, said }) => sayOfSeason(database, title, plantingIds, said),
);
