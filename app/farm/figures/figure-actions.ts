"use server";

import { setFigure } from "#db/write/farm";
import { action } from "../../action";
import { figureWords, readFigure } from "./figure-values";

/** Keeps one figure of the farm. */
export const saveFigure = action(readFigure, (database, { farm, name }) =>
  setFigure(database, farm, figureWords(name, farm)),
);
