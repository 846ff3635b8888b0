"use server";

import { setFigure } from "#db/write/farm";
import type { Parsed } from "#lib/domain/problem";
import type { Farm } from "#lib/domain/records/farm-settings";
import { changedWinterFigures, withWinterFiguresKept, withWinterFiguresTaken } from "#lib/domain/winter-figures";
import { action } from "../../action";

/** Takes the built-in figures of the winter that changed; those that the grower changed herself stay. */
export const takeWinterFigures = action(
  (_, { farm }) => settled(farm, withWinterFiguresTaken),
  (database, settings: Farm) => setFigure(database, settings, "took the built-in figures of the winter"),
);

/** Keeps the farm's figures of the winter, not to be asked about them again. */
export const keepWinterFigures = action(
  (_, { farm }) => settled(farm, withWinterFiguresKept),
  (database, settings: Farm) => setFigure(database, settings, "kept the farm's own figures of the winter"),
);

const settled = (farm: Farm, settle: (farm: Farm) => Farm): Parsed<Farm> =>
  changedWinterFigures(farm).length === 0
    ? { ok: false, problems: [{ place: "", message: "these figures are settled already: look at the page again" }] }
    : { ok: true, parsed: settle(farm) };
