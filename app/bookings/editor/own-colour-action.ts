"use server";

import { updateFarm } from "#db/write/farm";
import { action } from "../../action";
import { readOwnColour } from "./own-colour-values";

/** Has the farm remember which of our colours a name of its own is, in place of what it said before. */
export const rememberColour = action((values, { farm }) => readOwnColour(values, farm), updateFarm);
