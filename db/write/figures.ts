import type { FarmDatabase } from "#db/client";
import { bloomCurve } from "#db/schema/curves";
import { curveRow } from "#db/schema/nested";
import type { FigureRows } from "#lib/domain/built-in-figures";
import { known } from "./known";
import { replaceCrop } from "./put-crops";
import { changeRow } from "./put-row";
import { Refusals, refuse } from "./refusal";
import { type Written, write } from "./write";

/**
 * Replaces crops and bloom curves by these rows, as one change under the title given. Gives the number of rows. Refused, with every reason, when
 * there is none, or a row is no longer on the farm.
 */
export const putFigures = (database: FarmDatabase, title: string, { crops, curves }: FigureRows): Written =>
  write(database, () => {
    if (crops.length + curves.length === 0) refuse("", "these figures are settled already: look at the page again");
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
    refusals.end();
    return { title, result: crops.length + curves.length };
  });
