import { z } from "zod";
import { COLOURS } from "../words";
import { field, open, recordSchema, rowId } from "./field";
import { colour as colourWord, word } from "./kinds";
import { nameOf } from "./names";

const name = field(word, z.string().min(1, "a variety needs a name"), { label: "Variety", heading: "variety" });
const colour = field(colourWord, z.enum(COLOURS), { label: "Colour" });

export const VARIETY = { cropId: rowId("Crop"), name, colour };

/** A variety a row: the place for varieties that no planting names. All three columns are needed. */
export const VARIETY_SHEET = { crop: nameOf("Crop"), variety: name, colour };

/** How a sheet names the variety of a row. `colour` absent or empty: that of the variety, on the farm or elsewhere in the upload. */
export const VARIETY_NAMES = { ...VARIETY_SHEET, colour: open(colour) };

/** A variety: a crop with a name and a colour. "Dahlia · Maple Row · plum". */
export const varietySchema = recordSchema({ id: rowId("Id"), ...VARIETY });
export type Variety = z.infer<typeof varietySchema>;
