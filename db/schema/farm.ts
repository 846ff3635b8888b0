import { integer, real, sqliteTable, text } from "drizzle-orm/sqlite-core";
import { DECIMAL_MARKS } from "#lib/domain/read-number";
import { UNITS } from "#lib/domain/words";
import { DATE_ORDERS } from "#lib/domain/writing";
import {
  checks,
  holds,
  isAboveZero,
  isFromZero,
  isList,
  isListOrNull,
  isMonthDay,
  isNamed,
  isShare,
  isWholeFrom,
  isYesNo,
  oneOf,
} from "./checks";
import { list, rowId, yesNo } from "./columns";

/** The farm's settings: one row. Fields are named as in the domain's Farm, columns as on the farm sheet. */
export const farm = sqliteTable(
  "farm",
  {
    id: rowId(),
    name: text("name").notNull(),
    isInvented: yesNo("is_invented").notNull(),
    zone: text("zone").notNull(),
    units: text("units").notNull(),
    decimalMark: text("decimal_mark").notNull().default("point"),
    dateOrder: text("date_order").notNull().default("ask"),
    ownColours: list("own_colours").notNull().default([]),
    pickingWeekdays: list("picking_weekdays").notNull(),
    leadDays: integer("lead_days").notNull(),
    orderDaysAhead: integer("order_days_ahead").notNull(),
    spareShare: real("spare_share").notNull(),

    firstAutumnP10: text("frost_first_autumn_p10").notNull(),
    firstAutumnP50: text("frost_first_autumn_p50").notNull(),
    firstAutumnP90: text("frost_first_autumn_p90").notNull(),
    lastSpringP10: text("frost_last_spring_p10").notNull(),
    lastSpringP50: text("frost_last_spring_p50").notNull(),
    lastSpringP90: text("frost_last_spring_p90").notNull(),

    station: text("climate_station"),
    latitudeDegrees: real("climate_latitude_degrees"),
    monthlyHighsC: list("climate_monthly_highs_c"),
    monthlyLowsC: list("climate_monthly_lows_c"),

    confirmed: real("weight_confirmed").notNull(),
    held: real("weight_held").notNull(),
    enquiry: real("weight_enquiry").notNull(),

    wageCentsPerHour: integer("wage_cents_per_hour").notNull(),
    digClumpsPerHour: real("dig_clumps_per_hour").notNull(),
    divideClumpsPerHour: real("divide_clumps_per_hour").notNull(),
    replantTubersPerHour: real("replant_tubers_per_hour").notNull(),
    storageCentsPerClump: integer("storage_cents_per_clump").notNull(),
    storageLossShare: real("storage_loss_share").notNull(),
    divisionsPerClump: real("divisions_per_clump").notNull(),
    tuberCents: integer("tuber_cents").notNull(),
    tubersWantedShare: real("tubers_wanted_share").notNull(),
    leafDepthMetres: real("leaf_depth_metres").notNull(),
    leafCentsPerCubicMetre: integer("leaf_cents_per_cubic_metre").notNull(),
    tarpCentsPerSquareMetre: integer("tarp_cents_per_square_metre").notNull(),
    coverHoursPerSquareMetre: real("cover_hours_per_square_metre").notNull(),
    winterSurvivalShare: real("winter_survival_share").notNull(),
    freeBedCentsPerSquareMetre: integer("free_bed_cents_per_square_metre").notNull(),
    leafCubicMetresAtHand: real("leaf_cubic_metres_at_hand"),
    tarpSquareMetresAtHand: real("tarp_square_metres_at_hand"),
    hoursAtHand: real("hours_at_hand"),
    keepShareAtMost: real("keep_share_at_most"),
  },
  () =>
    checks(
      "farm",
      holds("one_row", "id = 1"),
      isNamed("name"),
      isYesNo("is_invented"),
      oneOf("units", UNITS),
      oneOf("decimal_mark", DECIMAL_MARKS),
      oneOf("date_order", DATE_ORDERS),
      isList("own_colours"),
      isList("picking_weekdays"),
      ...["lead_days", "order_days_ahead"].map((column) => isWholeFrom(column, 0)),
      isShare("spare_share"),
      ...["p10", "p50", "p90"].flatMap((chance) => [
        isMonthDay(`frost_first_autumn_${chance}`),
        isMonthDay(`frost_last_spring_${chance}`),
      ]),
      holds(
        "autumn_frost_in_order",
        "frost_first_autumn_p10 <= frost_first_autumn_p50 AND frost_first_autumn_p50 <= frost_first_autumn_p90",
      ),
      holds(
        "spring_frost_in_order",
        "frost_last_spring_p90 <= frost_last_spring_p50 AND frost_last_spring_p50 <= frost_last_spring_p10",
      ),
      isListOrNull("climate_monthly_highs_c"),
      isListOrNull("climate_monthly_lows_c"),
      holds(
        "climate_whole",
        "(climate_station IS NULL) = (climate_latitude_degrees IS NULL) AND " +
          "(climate_station IS NULL) = (climate_monthly_highs_c IS NULL) AND " +
          "(climate_station IS NULL) = (climate_monthly_lows_c IS NULL)",
      ),
      holds(
        "weights_in_order",
        "0 < weight_enquiry AND weight_enquiry < weight_held AND weight_held < weight_confirmed AND weight_confirmed <= 1",
      ),
      ...[
        "wage_cents_per_hour",
        "storage_cents_per_clump",
        "tuber_cents",
        "leaf_cents_per_cubic_metre",
        "tarp_cents_per_square_metre",
        "free_bed_cents_per_square_metre",
      ].map((column) => isWholeFrom(column, 0)),
      ...["dig_clumps_per_hour", "divide_clumps_per_hour", "replant_tubers_per_hour"].map(isAboveZero),
      ...["storage_loss_share", "tubers_wanted_share", "winter_survival_share", "keep_share_at_most"].map(isShare),
      ...[
        "divisions_per_clump",
        "leaf_depth_metres",
        "cover_hours_per_square_metre",
        "leaf_cubic_metres_at_hand",
        "tarp_square_metres_at_hand",
        "hours_at_hand",
      ].map(isFromZero),
    ),
);
