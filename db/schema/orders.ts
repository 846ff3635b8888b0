import { index, integer, real, sqliteTable, text } from "drizzle-orm/sqlite-core";
import { ROLES } from "#lib/domain/words";
import { recipe } from "./bookings";
import { checks, holds, isAboveZero, isDay, isList, isNamed, isWholeFrom, oneOf } from "./checks";
import { list, rowId } from "./columns";
import { crop } from "./crops";

/** Standing orders: who buys every week. */
export const standingOrder = sqliteTable(
  "standing_order",
  {
    id: rowId(),
    buyer: text("buyer").notNull(),
    kind: text("kind").notNull(),
    weekday: integer("weekday").notNull(),
    firstOn: text("first_on").notNull(),
    lastOn: text("last_on").notNull(),
    role: text("role"),
    cropId: integer("crop_id").references(() => crop.id, { onDelete: "restrict" }),
    recipeId: integer("recipe_id").references(() => recipe.id, { onDelete: "restrict" }),
    colours: list("colours").notNull(),
    askedCount: real("asked_count").notNull(),
    stemCents: integer("stem_cents").notNull(),
  },
  (table) => [
    index("standing_order_crop").on(table.cropId),
    index("standing_order_recipe").on(table.recipeId),
    ...checks(
      "standing_order",
      isNamed("buyer"),
      oneOf("kind", ["subscription", "market", "florist"]),
      holds("weekday", "weekday BETWEEN 1 AND 7 AND weekday = CAST(weekday AS INTEGER)"),
      isDay("first_on"),
      isDay("last_on"),
      holds("days_in_order", "first_on <= last_on"),
      oneOf("role", ROLES),
      holds("stems_or_pieces", "(role IS NULL) <> (recipe_id IS NULL)"),
      isList("colours"),
      isAboveZero("asked_count"),
      isWholeFrom("stem_cents", 0),
    ),
  ],
);
