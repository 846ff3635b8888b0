import { z } from "zod";
import { HEAD_SIZES, OUT_OF_WATER, STEM_ASKS, STEM_LENGTHS } from "../words";
import { field, open } from "./field";
import { choice, listOf } from "./kinds";

/** What a stem of a crop is like. Where nobody has told one of them, the stem is taken to do for whatever is asked of it. */
export const STEM_TRAITS = {
  headSize: open(field(choice(HEAD_SIZES), z.enum(HEAD_SIZES), { label: "Size of the head" }), { empty: "not told" }),
  stemLength: open(
    field(choice(STEM_LENGTHS), z.enum(STEM_LENGTHS), {
      label: "Length of the stem",
      hint: "Short: not for tall pieces. A long one can be cut short.",
    }),
    { empty: "not told" },
  ),
  outOfWater: open(
    field(choice(OUT_OF_WATER), z.enum(OUT_OF_WATER), {
      label: "Out of water",
      hint: "Through the hours that it is worn.",
      meanings: { holds: "holds out of water", wilts: "wilts out of water" },
    }),
    { empty: "not told" },
  ),
};

/** What a line asks of its stems. Empty: nothing. */
export const ASKS = field(listOf(choice(STEM_ASKS)), z.array(z.enum(STEM_ASKS)), {
  absent: [],
  label: "Asks of the stem",
  hint: "Several heads: any of them. Out of water: it holds as long as it is worn.",
});
