"use server";

import { setFigure } from "#db/write/farm";
import type { Farm } from "#lib/domain/records/farm-settings";
import { withWinterFiguresKept, withWinterFiguresTaken } from "#lib/domain/winter-figures";
import { action } from "../../action";

/** Takes the built-in figures of the winter that changed; those that the grower changed herself stay. */
export const takeWinterFigures = action(
  (_, { farm }) => ({ ok: true, parsed: withWinterFiguresTaken(farm) }),
  (database, settings: Farm) => setFigure(database, settings, "took the built-in figures of the winter"),
);

/** Keeps the farm's figures of the winter, not to be asked about them again. */
export const keepWinterFigures = action(
  (_, { farm }) => ({ ok: true, parsed: withWinterFiguresKept(farm) }),
  (database, settings: Farm) => setFigure(database, settings, "kept the farm's own figures of the winter"),
);
