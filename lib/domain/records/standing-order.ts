import { z } from "zod";
import { WEEKDAYS } from "../day";
import { daySchema } from "../day-schema";
import { ROLE_WORDS } from "../trade-words";
import { COLOURS, ROLES } from "../words";
import { cents, field, number, open, recordSchema, rowId } from "./field";
import { choice, colour, day, listOf, weekday, word } from "./kinds";
import { nameOf } from "./names";

/** Who buys every week. */
const ORDER_KINDS = ["subscription", "market", "florist"] as const;

const before = {
  buyer: field(word, z.string().trim().min(1, "name the buyer").max(120, "a name has at most 120 letters"), {
    label: "Buyer",
  }),
  kind: field(choice(ORDER_KINDS), z.enum(ORDER_KINDS), {
    absent: "florist",
    label: "It is a",
    meanings: { subscription: "subscription", market: "market day", florist: "florist’s list" },
  }),
  weekday: field(weekday, z.int().min(1).max(WEEKDAYS.length), { label: "Goes out on" }),
  firstOn: field(day, daySchema, { label: "From", heading: "from" }),
  lastOn: field(day, daySchema, { label: "To", heading: "to" }),
};

const what = {
  role: open(
    field(choice(ROLES, ROLE_WORDS), z.enum(ROLES), {
      label: "Role of the stems",
      hint: "Left open where a piece is named.",
    }),
  ),
};

const much = {
  askedCount: number({
    above: 0,
    most: 10_000,
    label: "How many each time",
    hint: "Stems, or pieces where a piece is named.",
    heading: "count",
  }),
  stemCents: cents({ label: "A stem brings" }),
  colours: field(listOf(colour), z.array(z.enum(COLOURS)), {
    absent: [],
    label: "Colours",
    hint: "Leave it empty if any colour will do.",
  }),
};

/** A standing order as a form writes it. Stems of a role, of one crop alone where it is named; or, with `recipeId`, so many pieces. */
export const STANDING_ORDER = {
  ...before,
  ...what,
  cropId: open(rowId("Crop")),
  recipeId: open(rowId("Piece")),
  ...much,
};

/** A standing order, a row. Absent or empty: `kind` florist, `crop` any of the role, `recipe` stems and no pieces, any colour. */
export const ORDER_SHEET = { ...before, ...what, crop: open(nameOf("Crop")), recipe: open(nameOf("Piece")), ...much };

type Asks = { readonly role: unknown; readonly recipeId: unknown; readonly firstOn: string; readonly lastOn: string };

/** What is wrong with the fields of an order together, each with the field that mends it; empty when nothing is. */
export const oddOrder = ({
  role,
  recipeId,
  firstOn,
  lastOn,
}: Asks): { field: "role" | "lastOn"; message: string }[] => [
  ...((role === null) === (recipeId === null)
    ? [{ field: "role" as const, message: "choose the role of the stems, or a piece, and not both" }]
    : []),
  ...(lastOn < firstOn ? [{ field: "lastOn" as const, message: "the last day is before the first" }] : []),
];

const check = (
  order: Asks,
  context: { addIssue: (issue: { code: "custom"; path: string[]; message: string }) => void },
) => {
  for (const { field, message } of oddOrder(order)) context.addIssue({ code: "custom", path: [field], message });
};

/** A standing order before it has an id. */
export const standingOrderDraftSchema = recordSchema(STANDING_ORDER).superRefine(check);
export type StandingOrderDraft = z.infer<typeof standingOrderDraftSchema>;

/** Another buyer, every week: on a weekday from the first day to the last, so many stems or pieces, at a price a stem. */
export const standingOrderSchema = recordSchema({ id: rowId("Id"), ...STANDING_ORDER }).superRefine(check);
export type StandingOrder = z.infer<typeof standingOrderSchema>;
