import { z } from "zod";
import { ROLE_WORDS } from "../trade-words";
import { COLOURS, ROLES } from "../words";
import { field, keptSchema, number, open, recordSchema, rowId } from "./field";
import { choice, colour, listOf, yesNo } from "./kinds";
import { BOOKING_NAMES, nameOf } from "./names";
import { ASKS } from "./stem-traits";

const role = field(choice(ROLES, ROLE_WORDS), z.enum(ROLES), { label: "Role" });
const line = {
  cropOnly: field(yesNo, z.boolean(), { absent: false, label: "No other in its place" }),
  asks: ASKS,
  colours: field(listOf(colour), z.array(z.enum(COLOURS)), { absent: [], label: "Colours" }),
  stemCount: number({ above: 0, most: 10_000, of: "stems", label: "Stems", heading: "stems" }),
};

export const STEM_LINE = { role, cropId: open(rowId("Crop")), ...line };

/**
 * Stems asked for directly, a row. Absent or empty: `crop` any that has the role, `crop_only` no (others of the role may stand in),
 * `colours` every colour, `asks` any stem.
 */
export const STEM_SHEET = { ...BOOKING_NAMES, role, crop: open(nameOf("Crop")), ...line };

const namesCrop = (line: { readonly cropOnly: boolean; readonly cropId: number | null }): boolean =>
  !line.cropOnly || line.cropId !== null;
const check = { path: ["cropId"], message: "name the crop, or allow others in its place" };

/**
 * Stems asked for directly. A named crop is preferred and others of the role may stand in for it, unless `cropOnly`.
 * An empty list of colours accepts every colour.
 */
export const stemLineSchema = recordSchema(STEM_LINE).refine(namesCrop, check);
export type StemLine = z.infer<typeof stemLineSchema>;

/** Such a line as an earlier version may have kept it. */
export const keptStemLineSchema = keptSchema(STEM_LINE).refine(namesCrop, check);
