import { z } from "zod";
import { ROLE_WORDS } from "../trade-words";
import { COLOURS, ROLES } from "../words";
import { field, number, open, recordSchema, rowId } from "./field";
import { choice, colour as colourWord, listOf, word } from "./kinds";
import { nameOf } from "./names";
import { STEM_TRAITS } from "./stem-traits";

const name = field(word, z.string().min(1, "a variety needs a name"), { label: "Variety", heading: "variety" });
const colour = field(colourWord, z.enum(COLOURS), { label: "Colour" });

const { headSize, stemLength, outOfWater } = STEM_TRAITS;
const AS_CROP = { empty: "as the crop" };

/** Days that a variety's stems keep, in place of the crop's. */
const ownDays = (label: string, hint: string) =>
  open(number({ least: 0, most: 120, of: "days", unit: "days", label, hint }));

/** What a variety may say of itself in place of what its crop says. Absent or empty: as the crop. */
export const OWN_TRAITS = {
  roles: field(listOf(choice(ROLES, ROLE_WORDS)), z.array(z.enum(ROLES)), {
    absent: [],
    label: "Roles of its own",
    hint: "None ticked: those of the crop.",
  }),
  headSize: open(headSize, AS_CROP),
  stemLength: open(stemLength, AS_CROP),
  outOfWater: open(outOfWater, AS_CROP),
  holdDays: ownDays("Hold of its own", "In water. Left empty: as the crop."),
  stretchDays: ownDays("Hold at a stretch of its own", "Left empty: as the crop."),
};

export const VARIETY = { cropId: rowId("Crop"), name, colour, ...OWN_TRAITS };

/** How a sheet names the variety of a row. `colour` absent or empty: that of the variety, on the farm or elsewhere in the upload. */
export const VARIETY_NAMES = { crop: nameOf("Crop"), variety: name, colour: open(colour) };

/** A variety a row: the place for varieties that no planting names, and for what a variety says of itself. */
export const VARIETY_SHEET = { ...VARIETY_NAMES, colour, ...OWN_TRAITS };

/** A variety: a crop with a name and a colour, "Dahlia · Maple Row · plum", and what it is otherwise than its crop. */
export const varietySchema = recordSchema({ id: rowId("Id"), ...VARIETY });
export type Variety = z.infer<typeof varietySchema>;

/** What a variety says of itself. */
export type OwnTraits = Pick<Variety, keyof typeof OWN_TRAITS>;

/** A variety that is in all as its crop. */
export const AS_ITS_CROP: OwnTraits = {
  roles: [],
  headSize: null,
  stemLength: null,
  outOfWater: null,
  holdDays: null,
  stretchDays: null,
};
