import { allOf } from "#lib/domain/listed";
import type { RecipeLine } from "#lib/domain/records/recipe";
import { LINE_COLOURS, LINE_COLOURS_WORDS } from "#lib/domain/words";
import { inTenths } from "./numbers";

/** The lines of a recipe: "6 filler and 8 foliage in any colour". Those of the same colours stand together. */
export const linesInWords = (lines: readonly RecipeLine[]): string =>
  LINE_COLOURS.flatMap((colours) => {
    const alike = lines.filter((line) => line.colours === colours);
    if (alike.length === 0) return [];
    const stems = alike.map(
      ({ role, stemsPerPiece, asks }) =>
        `${inTenths(stemsPerPiece)} ${role}${asks.length ? ` (${asks.join(", ")})` : ""}`,
    );
    return [`${allOf(stems)} in ${LINE_COLOURS_WORDS[colours]}`];
  }).join("; ");
