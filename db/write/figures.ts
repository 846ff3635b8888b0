import type { FarmDatabase } from "#db/client";
import { bloomCurve } from "#db/schema/curves";
import { curveRow } from "#db/schema/nested";
import type { FigureRows } from "#lib/domain/built-in-figures";
import { known } from "./known";
import { replaceCrop } from "./put-crops";
import { replaceRecipe } from "./put-recipes";
import { changeRow } from "./put-row";
import { Refusals, refuse, refuseOverfull } from "./refusal";
import { type Written, write } from "./write";

/**
 * Replaces crops, bloom curves and recipes by these rows, as one change under the title given. Gives the number of rows. Refused, with every reason, when
 * there is none, or a row is no longer on the farm, or a booking would have more stems than a plan can reckon with.
 */
export const putFigures = (database: FarmDatabase, title: string, { crops, curves, recipes }: FigureRows): Written =>
  write(database, () => {
    const count = crops.length + curves.length + recipes.length;
    if (count === 0) refuse("", "these figures are settled already: look at the page again");
    const refusals = new Refusals();
    for (const { id, ...draft } of crops)
      refusals.gather(`crops[${id}]`, () => {
        known(database, "crop", id);
        replaceCrop(database, id, draft);
      });
    for (const row of curves)
      refusals.gather(`curves[${row.id}]`, () => {
        known(database, "bloom_curve", row.id);
        changeRow(database, bloomCurve, row.id, curveRow(row));
      });
    for (const { id, ...draft } of recipes)
      refusals.gather(`recipes[${id}]`, () => {
        known(database, "recipe", id);
        replaceRecipe(database, id, draft);
      });
    refusals.end();
    refuseOverfull(database);
    return { title, result: count };
  });
